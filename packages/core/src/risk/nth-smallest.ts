/**
 * The value that would stand at place `n` (from 0) if the values were sorted, by quickselect (Hoare 1961): a town's
 * two million scores need not be sorted to know where the worst begin. The values are copied, not moved.
 * @throws RangeError where there is no such place.
 */
export function nthSmallest(values: Float64Array, n: number): number {
  if (!(Number.isInteger(n) && n >= 0 && n < values.length)) {
    throw new RangeError(`n must be a place from 0 to ${values.length - 1}, got ${n}`);
  }
  const row = values.slice();
  const at = (i: number): number => row[i] as number;
  let low = 0;
  let high = row.length - 1;
  while (low < high) {
    const pivot = at((low + high) >> 1);
    let i = low;
    let j = high;
    while (i <= j) {
      while (at(i) < pivot) i++;
      while (at(j) > pivot) j--;
      if (i > j) break;
      const swap = at(i);
      row[i++] = at(j);
      row[j--] = swap;
    }
    if (n <= j) high = j;
    else if (n >= i) low = i;
    else break;
  }
  return at(n);
}
