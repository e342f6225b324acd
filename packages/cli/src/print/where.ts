import { type SegmentResult, type Units, wordReach } from '@rootreach/core';
import { length, span } from './lengths.js';

/** Where a crew finds a segment: `from cleanout CO1, upstream, 34 to 44 ft`. */
export const whereOf = ({ reach }: SegmentResult, units: Units): string =>
  wordReach(reach, { length: (m) => length(m, units), span: (from, to) => span(from, to, units) });

/** Name of a segment's line, or its id. */
export const lineName = ({ drainName, drainId }: SegmentResult): string => drainName ?? `line ${drainId}`;
