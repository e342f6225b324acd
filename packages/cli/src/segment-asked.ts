import { type RankResult, rank, type SegmentResult, type Site } from '@rootreach/core';
import { CannotDo } from './cannot-do.js';
import type { Scoring } from './common-options.js';
import { nearest } from './nearest.js';

export interface AskedSegment {
  readonly result: RankResult;
  readonly segment: SegmentResult;
}

/** Rows among which the worst of a line is looked for. */
const MOST_LOOKED_AT = 3000;

/** Stops where no line has the name that stands before the last stroke. */
function needLineOf(wanted: string, ids: readonly string[]): void {
  if (ids.includes(wanted.slice(0, wanted.lastIndexOf('/')))) return;
  const close = nearest(wanted.replace(/\/[^/]*$/, ''), ids).map((id) => `${id}/1`);
  const hint = close.length > 0 ? `nearest: ${close.join(', ')}` : `there is, for instance, ${ids[0]}/1`;
  throw new CannotDo(`there is no segment '${wanted}'; ${hint}`);
}

/** Id of a line's worst segment. */
function worstOfLine(site: Site, scoring: Scoring, line: string): string {
  const { segments } = rank(site, { ...scoring, top: MOST_LOOKED_AT });
  return segments.find(({ drainId }) => drainId === line)?.id ?? `${line}/1`;
}

/** The segment asked for, the worst of the line asked for, or the worst of all, with a result that holds it alone. */
export function askedSegment(site: Site, scoring: Scoring, asked: string | undefined): AskedSegment {
  const lines = site.drains.map(({ id }) => id);
  const wanted = asked !== undefined && lines.includes(asked) ? worstOfLine(site, scoring, asked) : asked;
  if (wanted !== undefined) needLineOf(wanted, lines);
  const result = rank(site, { ...scoring, ...(wanted === undefined ? { top: 1 } : { only: wanted }) });
  const [segment] = result.segments;
  if (segment !== undefined) return { result, segment };
  if (wanted === undefined) throw new CannotDo('there is no stretch of line to speak of in what was read');
  const first = `${wanted.slice(0, wanted.lastIndexOf('/'))}/1`;
  const ofLine = rank(site, { ...scoring, only: first }).lines[0]?.segments ?? [];
  throw new CannotDo(`there is no segment '${wanted}'; nearest: ${nearest(wanted, ofLine).join(', ')}`);
}
