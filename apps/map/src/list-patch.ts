/** How one list comes out of another: for each place the number of the old row, or -1 - k for new row k. */
export interface ListPatch<T> {
  readonly from: Int32Array;
  readonly made: readonly T[];
}

/** What to send of a list of which the other side holds `before`: rows that are not the same objects. */
export function listPatch<T extends object>(before: readonly T[], now: readonly T[]): ListPatch<T> {
  const made: T[] = [];
  let places: Map<T, number> | null = null;
  const from = Int32Array.from(now, (row, i) => {
    if (before[i] === row) return i;
    places ??= new Map(before.map((one, at) => [one, at]));
    const at = places.get(row);
    return at === undefined ? -made.push(row) : at;
  });
  return { from, made };
}

/** The list that a patch makes of the one before. */
export function patchedList<T>(before: readonly T[], { from, made }: ListPatch<T>): readonly T[] {
  return Array.from(from, (at) => (at < 0 ? made[-1 - at] : before[at]) as T);
}

/** True where a patch changes nothing. */
export const isEmptyPatch = ({ from, made }: ListPatch<unknown>, before: readonly unknown[]): boolean =>
  made.length === 0 && from.length === before.length && from.every((at, i) => at === i);
