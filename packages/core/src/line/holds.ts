import type { Segment } from './segments.js';

/** Two stations closer than this are one place: rounding must not move a joint to the next segment, metres. */
export const SAME_STATION_M = 1e-6;

/**
 * True where a station belongs to a segment: what lies on the border belongs to the segment that begins there.
 * @param last the segment is the uppermost of its line and holds its end too.
 */
export function holds({ fromM, toM }: Segment, stationM: number, last: boolean): boolean {
  return stationM >= fromM - SAME_STATION_M && (last || stationM < toM - SAME_STATION_M);
}
