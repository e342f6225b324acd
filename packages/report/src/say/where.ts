import type { SegmentResult, Site, Units } from '@rootreach/core';
import type { Words } from '../words/words.js';
import { bareLength, length, unitOf } from './lengths.js';

/** Closer to the way in than this is at it, metres. */
const AT_IT_M = 0.05;
/** A stretch no longer than this is a point, metres. */
const POINT_M = 0.15;

/** From one place to another, both to the same precision: `17 to 26 ft`. */
export function spanSaid(fromM: number, toM: number, units: Units, words: Words): string {
  if (toM - fromM < POINT_M) return length(fromM, units);
  if (fromM < AT_IT_M) return words.first(length(toM, units));
  return words.span(bareLength(fromM, units, toM), bareLength(toM, units), unitOf(units));
}

/** A way in by its kind and id, or the end of the line where there is none. */
export function wayInSaid(from: string, site: Site, words: Words): string {
  const fitting = site.fittings.find(({ id }) => id === from);
  if (fitting !== undefined) return words.wayIn(words.fittings[fitting.type], fitting.id);
  if (from === 'upper end') return words.ends.upper;
  return words.ends.outlet;
}

/** Where a crew finds a stretch: `17 to 26 ft up the pipe from the outlet`. */
export function whereSaid({ reach }: SegmentResult, site: Site, units: Units, words: Words): string {
  const span = spanSaid(reach.atM, reach.toM, units, words);
  return words.stretch(span, words.direction[reach.direction], wayInSaid(reach.from, site, words));
}
