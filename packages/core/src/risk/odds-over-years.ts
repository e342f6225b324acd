import type { Chance } from '../model/result.js';
import type { Site } from '../model/site.js';
import type { RankOptions } from './context.js';
import { rank } from './rank.js';

/** Chance that roots have come into a segment by some years from now. */
export interface OddsPoint {
  readonly yearsAhead: number;
  readonly chance: Chance;
}

/** How far an owner of a house thinks ahead, and where the curve bends (judgement). */
const YEARS_AHEAD: readonly number[] = [1, 2, 3, 5, 7, 10, 15, 20, 25];
const NOW: OddsPoint = { yearsAhead: 0, chance: { low: 0, likely: 0, high: 0 } };

/**
 * The odds of one segment over the years if nothing is done: the ranking worked out again for each horizon, so that
 * trees grow and the clock runs as they do there. The first point is today, at nought.
 * @param site as read.
 * @param segmentId `main/4`, as in a result.
 * @param options as for `rank`; its horizon does not count.
 * @param yearsAhead years from today that are wanted, rising.
 * @returns null where there is no such segment.
 * @throws RangeError for options or years that make no sense.
 */
export function oddsOverYears(
  site: Site,
  segmentId: string,
  options: Omit<RankOptions, 'horizonYears' | 'top' | 'only'>,
  yearsAhead: readonly number[] = YEARS_AHEAD,
): readonly OddsPoint[] | null {
  const points = [NOW];
  for (const horizonYears of yearsAhead) {
    const [segment] = rank(site, { ...options, horizonYears, only: segmentId }).segments;
    if (segment === undefined) return null;
    points.push({ yearsAhead: horizonYears, chance: segment.chance });
  }
  return points;
}
