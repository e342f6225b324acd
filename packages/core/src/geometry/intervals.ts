/** Closed stretches [from, to] along a line, in metres of station. */
export type Interval = readonly [from: number, to: number];

/** Sorted, non-overlapping union. */
export function unionOf(intervals: readonly Interval[]): Interval[] {
  const sorted = [...intervals].sort((a, b) => a[0] - b[0]);
  const merged: [number, number][] = [];
  for (const [from, to] of sorted) {
    const last = merged[merged.length - 1];
    if (last && from <= last[1]) last[1] = Math.max(last[1], to);
    else merged.push([from, to]);
  }
  return merged;
}

/** Metres of the union that lie between two stations. */
export function lengthWithin(union: readonly Interval[], from: number, to: number): number {
  let sum = 0;
  for (const [a, b] of union) sum += Math.max(0, Math.min(b, to) - Math.max(a, from));
  return sum;
}
