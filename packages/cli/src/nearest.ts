/** Letters that must be put in, taken out or changed to turn one word into another. */
function editDistance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const changed = (row[j - 1] as number) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(changed, (row[j] as number) + 1, (next[j - 1] as number) + 1));
    }
    row = next;
  }
  return row[b.length] as number;
}

const MOST_LETTERS = 80;

/** Words most like the given one, the most alike first; none that has little in common with it. */
export function nearest(word: string, known: readonly string[], most = 3): string[] {
  const wanted = word.slice(0, MOST_LETTERS).toLowerCase();
  return known
    .map((name) => ({ name, distance: editDistance(wanted, name.slice(0, MOST_LETTERS).toLowerCase()) }))
    .filter(({ name, distance }) => distance <= Math.max(2, Math.min(wanted.length, name.length) / 2))
    .sort((a, b) => a.distance - b.distance)
    .slice(0, most)
    .map(({ name }) => name);
}
