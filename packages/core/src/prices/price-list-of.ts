import type { PriceList, PriceRow } from '../model/prices.js';

/** A list from its rows: dates from the oldest to the newest; invented where any note says so. */
export function priceListOf(currency: string, rows: readonly PriceRow[]): PriceList {
  const dates = rows.flatMap(({ dated }) => (dated === null ? [] : [dated])).sort();
  const [from, to] = [dates[0], dates[dates.length - 1]];
  return {
    currency,
    invented: rows.some(({ note }) => /^invented\b/i.test(note)),
    dated: from === undefined || to === undefined ? null : { from, to },
    rows,
  };
}
