import type { RankResult } from '../model/result.js';
import type { Site } from '../model/site.js';
import { judgement } from '../tables/judgement.js';
import type { RankOptions } from './context.js';
import { ScoredSite } from './scored-site.js';

/**
 * Scores every segment of a site's drain lines and ranks them, worst first.
 * @param site as `readSite` gives it.
 * @param options the date, and what differs from the usual.
 * @throws RangeError for options that make no sense; bad data never throws.
 */
export function rank(site: Site, options: RankOptions): RankResult {
  return new ScoredSite(site, options).result(options);
}

/** Score limits between the bands, for keys and legends. */
export const bandLimits: Readonly<Record<'watch' | 'inspect' | 'act', number>> = judgement.bandLimits.value;
