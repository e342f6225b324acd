/** True where two values hold the same: plain objects, lists, columns of numbers, and what is neither by itself. */
export function isSameValue(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Object.getPrototypeOf(a) !== Object.getPrototypeOf(b)) return false;
  if (Array.isArray(a) || ArrayBuffer.isView(a)) {
    const [left, right] = [a as ArrayLike<unknown>, b as ArrayLike<unknown>];
    if (left.length !== right.length) return false;
    for (let i = 0; i < left.length; i++) if (!isSameValue(left[i], right[i])) return false;
    return true;
  }
  const names = Object.keys(a);
  if (names.length !== Object.keys(b).length) return false;
  const [left, right] = [a as Record<string, unknown>, b as Record<string, unknown>];
  return names.every((name) => Object.hasOwn(right, name) && isSameValue(left[name], right[name]));
}

/**
 * The rows of now, each the very object of before where it holds the same: what hangs on it need not be worked out
 * again. The list itself is that of before where nothing changed.
 */
export function keepSame<T extends { readonly id: string }>(
  before: readonly T[],
  now: readonly T[],
): readonly T[] {
  if (before === now) return before;
  let byId: Map<string, T> | null = null;
  const earlier = (row: T, i: number): T | undefined => {
    if (before[i]?.id === row.id) return before[i];
    byId ??= new Map(before.map((one) => [one.id, one]));
    return byId.get(row.id);
  };
  let changed = before.length !== now.length;
  const kept = now.map((row, i) => {
    const old = earlier(row, i);
    const same = old !== undefined && isSameValue(old, row) ? old : row;
    if (same !== before[i]) changed = true;
    return same;
  });
  return changed ? kept : before;
}
