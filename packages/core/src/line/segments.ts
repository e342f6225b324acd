/** A stretch of line that is scored, ranked and dug as one. Stations in metres from the outlet end. */
export interface Segment {
  readonly fromM: number;
  readonly toM: number;
}

/** Cuts closer together than this make no segment of their own, metres (judgement). */
const LEAST_M = 0.1;

/**
 * Cuts a line at its fittings and then into equal parts no longer than `mostM`.
 * @param cutsM stations of fittings and access points, any order.
 */
export function segmentsOf(lengthM: number, cutsM: readonly number[], mostM: number): Segment[] {
  const cuts = [0];
  for (const cut of [...cutsM].sort((a, b) => a - b)) {
    if (cut - (cuts[cuts.length - 1] as number) >= LEAST_M && lengthM - cut >= LEAST_M) cuts.push(cut);
  }
  cuts.push(lengthM);
  const segments: Segment[] = [];
  for (let i = 0; i + 1 < cuts.length; i++) {
    const from = cuts[i] as number;
    const end = cuts[i + 1] as number;
    const span = end - from;
    // a hair of slack, so that 9 m in 3 m parts is three parts on any machine
    const parts = Math.max(1, Math.ceil(span / mostM - 1e-9));
    // the last part ends at the cut itself, not a rounding away from it
    const border = (k: number): number => (k === parts ? end : from + (span * k) / parts);
    for (let k = 0; k < parts; k++) segments.push({ fromM: border(k), toM: border(k + 1) });
  }
  return segments;
}
