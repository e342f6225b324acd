/**
 * Fewest insertions, deletions, replacements and swaps of neighbours that turn one word into the other
 * (optimal string alignment); stops with `most + 1` when it must be more than `most`.
 */
export function editDistance(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let best = Math.min(at(last, j) + 1, at(row, j - 1) + 1, at(last, j - 1) + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        best = Math.min(best, at(before, j - 2) + 1);
      }
      row.push(best);
    }
    if (Math.min(...row) > most) return most + 1;
    before = last;
    last = row;
  }
  return at(last, b.length);
}

const at = (row: readonly number[], index: number): number => row[index] ?? Number.POSITIVE_INFINITY;

/** How many slips we mend: none in short words, one from five letters, two from nine. */
export const slipsAllowed = (word: string): number => (word.length >= 9 ? 2 : word.length >= 5 ? 1 : 0);
