import type { PriceList } from '../model/prices.js';
import { csvText } from './csv.js';

/** A price list as plain CSV that a spreadsheet opens and `readPriceList` reads back. */
export function writePriceList({ currency, rows }: PriceList): string {
  return csvText([
    ['code', 'text', 'unit', 'price', 'currency', 'dated', 'note'],
    ...rows.map(({ code, text, unit, price, dated, note }) => [
      code,
      text,
      unit,
      price,
      currency,
      dated,
      note,
    ]),
  ]);
}
