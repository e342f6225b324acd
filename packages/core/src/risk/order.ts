import type { Drain } from '../model/site.js';
import { nthSmallest } from './nth-smallest.js';
import type { ScoreColumns } from './score-all.js';

/**
 * Rows worst first: known severe trouble, then the expected entries, then the line's id and the segment's
 * number, so that the order of the input does not matter.
 * @param severe rows where trouble is known that only digging can mend.
 * @param most how many rows are wanted.
 */
export function worstFirst(
  columns: ScoreColumns,
  drains: readonly Drain[],
  severe: ReadonlySet<number>,
  most: number,
): number[] {
  const { count, expected } = columns;
  const wanted = Math.min(most, count);
  if (wanted === 0) return [];
  const limit = nthSmallest(expected, count - wanted);
  const rows: number[] = [];
  for (let row = 0; row < count; row++) {
    if ((expected[row] as number) >= limit || severe.has(row)) rows.push(row);
  }
  const idOf = (row: number): string => drains[columns.line[row] as number]?.id ?? '';
  rows.sort((a, b) => {
    if (severe.has(a) !== severe.has(b)) return severe.has(a) ? -1 : 1;
    const by = (expected[b] as number) - (expected[a] as number);
    if (by !== 0) return by;
    const [idA, idB] = [idOf(a), idOf(b)];
    if (idA !== idB) return idA < idB ? -1 : 1;
    return (columns.segment[a] as number) - (columns.segment[b] as number);
  });
  return rows.slice(0, wanted);
}
