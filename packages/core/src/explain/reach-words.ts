import type { Reach } from '../model/result.js';

/** Closer to the way in than this is at it, metres. */
const AT_IT_M = 0.05;

/** How the reader's page writes lengths: `44 ft`, `34 to 44 ft`. */
export interface LengthWriter {
  readonly length: (lengthM: number) => string;
  readonly span: (fromM: number, toM: number) => string;
}

/**
 * Where a crew finds a stretch, in its own order: `from cleanout CO1, upstream, 34 to 44 ft`.
 * @param reach of a segment.
 * @param writer how the reader's page writes metres.
 */
export function wordReach({ fromName, direction, atM, toM }: Reach, { length, span }: LengthWriter): string {
  const stretch = atM < AT_IT_M ? `first ${length(toM)}` : span(atM, toM);
  return `from ${fromName}, ${direction}, ${stretch}`;
}
