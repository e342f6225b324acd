import type { ScoredSite } from '../risk/scored-site.js';
import { segmentId } from '../risk/segment-result.js';

/** Where a row of the scores lies on its line: stations from the outlet end, metres. */
export interface SegmentSpan {
  readonly row: number;
  readonly id: string;
  readonly drainId: string;
  readonly startM: number;
  readonly endM: number;
}

/** Every segment of a scored site, line after line, outlet end first. */
export function* segmentSpans({ columns, site }: ScoredSite): Iterable<SegmentSpan> {
  let line = -1;
  let drainId = '';
  let startM = 0;
  for (let row = 0; row < columns.count; row++) {
    if (columns.line[row] !== line) {
      line = columns.line[row] as number;
      drainId = site.drains[line]?.id ?? '';
      startM = 0;
    }
    const endM = startM + (columns.lengthM[row] as number);
    yield { row, id: segmentId(drainId, columns.segment[row] as number), drainId, startM, endM };
    startM = endM;
  }
}
