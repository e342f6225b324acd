import type { SegmentResult } from '@rootreach/core';
import { length, span, type Units } from './lengths.js';

/** Closer to the way in than this is at it, metres. */
const AT_IT_M = 0.05;

/** Where a crew finds a segment: `34 to 44 ft upstream from cleanout CO1`. */
export function whereOf({ reach }: SegmentResult, units: Units): string {
  const stretch =
    reach.atM < AT_IT_M ? `first ${length(reach.toM, units)}` : span(reach.atM, reach.toM, units);
  return `${stretch} ${reach.direction} from ${reach.fromName}`;
}

/** Name of a segment's line, or its id. */
export const lineName = ({ drainName, drainId }: SegmentResult): string => drainName ?? `line ${drainId}`;
