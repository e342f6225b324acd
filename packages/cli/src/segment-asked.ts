import { type RankResult, rank, type SegmentResult, type Site } from '@rootreach/core';
import { CannotDo } from './cannot-do.js';
import type { Scoring } from './common-options.js';
import { nearest } from './nearest.js';

export interface AskedSegment {
  readonly result: RankResult;
  readonly segment: SegmentResult;
}

/** Stops where no line has the name that stands before the last stroke. */
function needLineOf(wanted: string, site: Site): void {
  const ids = site.drains.map(({ id }) => id);
  if (ids.includes(wanted.slice(0, wanted.lastIndexOf('/')))) return;
  if (ids.includes(wanted)) {
    throw new CannotDo(`'${wanted}' is a whole line; name a segment of it, such as ${wanted}/1`);
  }
  const close = nearest(wanted.replace(/\/[^/]*$/, ''), ids).map((id) => `${id}/1`);
  const hint = close.length > 0 ? `nearest: ${close.join(', ')}` : `there is, for instance, ${ids[0]}/1`;
  throw new CannotDo(`there is no segment '${wanted}'; ${hint}`);
}

/** The segment asked for, or the worst one, with a result that holds it alone. */
export function askedSegment(site: Site, scoring: Scoring, wanted: string | undefined): AskedSegment {
  if (wanted !== undefined) needLineOf(wanted, site);
  const result = rank(site, { ...scoring, ...(wanted === undefined ? { top: 1 } : { only: wanted }) });
  const [segment] = result.segments;
  if (segment !== undefined) return { result, segment };
  if (wanted === undefined) throw new CannotDo('there is no stretch of line to speak of in what was read');
  const first = `${wanted.slice(0, wanted.lastIndexOf('/'))}/1`;
  const ofLine = rank(site, { ...scoring, only: first }).lines[0]?.segments ?? [];
  throw new CannotDo(`there is no segment '${wanted}'; nearest: ${nearest(wanted, ofLine).join(', ')}`);
}
