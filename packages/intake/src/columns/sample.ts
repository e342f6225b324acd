import { cellOf, type RawRow } from '../take/raw-table.js';
import { isMissing } from '../values/missing.js';
import { sizeOf } from '../values/size.js';

/** Values of a column that say something, from the rows sampled. */
export function valuesOf(rows: readonly RawRow[], column: string): unknown[] {
  return rows.map((row) => cellOf(row, column)).filter((value) => !isMissing(value));
}

/** Sizes in a column above nothing, lowest first; the middle of a class. */
export function sortedSizes(values: readonly unknown[]): number[] {
  return values
    .map(sizeOf)
    .filter((size) => size !== null)
    .map(({ low, high }) => (high === null ? low : (low + high) / 2))
    .filter((size) => size > 0)
    .sort((a, b) => a - b);
}

/** The value that a share of the sorted values lies below. */
export const quantile = (sorted: readonly number[], share: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;

/** Share of values that a test holds for; 0 for none. */
export const shareOf = (values: readonly unknown[], test: (value: unknown) => boolean): number =>
  values.length === 0 ? 0 : values.filter(test).length / values.length;
