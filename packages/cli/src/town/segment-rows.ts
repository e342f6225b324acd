import { closedFormChance, type ScoredSite, segmentSpans } from '@rootreach/core';
import { csv } from '../print/csv.js';

/** Rows put together before they are written. */
const ROWS_AT_ONCE = 5000;

const HEAD = [
  'segment',
  'line',
  'start_m',
  'end_m',
  'band',
  'score',
  'chance_low',
  'chance_likely',
  'chance_high',
];

const rounded = (value: number, places: number): number => Number(value.toFixed(places));

/** Every segment as a row of CSV, in the order of the lines; in pieces, so that a town needs no memory for it. */
export function* segmentRows(scored: ScoredSite): Iterable<string> {
  yield csv([HEAD]);
  let rows: (string | number)[][] = [];
  for (const { row, id, drainId, startM, endM } of segmentSpans(scored)) {
    const { low, likely, high } = closedFormChance(scored.columns, row);
    rows.push([
      id,
      drainId,
      rounded(startM, 3),
      rounded(endM, 3),
      scored.bandOf(row),
      rounded(100 * likely, 2),
      rounded(low, 4),
      rounded(likely, 4),
      rounded(high, 4),
    ]);
    if (rows.length === ROWS_AT_ONCE) {
      yield csv(rows);
      rows = [];
    }
  }
  yield csv(rows);
}
