import type { QuoteOption, QuoteResult } from '../model/quote.js';
import { type CsvCell, csvText } from '../prices/csv.js';

const HEADING = ['option', 'code', 'text', 'quantity', 'unit', 'price', 'total', 'currency', 'basis'];

const money = (text: string | null): CsvCell => (text === null ? null : Number(text));

function rowsOf(
  { name, items, subtotal, margin, tax, total, missing }: QuoteOption,
  currency: string,
): CsvCell[][] {
  const sum = (text: string, amount: string): CsvCell[] => [
    name,
    null,
    text,
    null,
    null,
    null,
    money(amount),
    currency,
    null,
  ];
  return [
    ...items.map((item): CsvCell[] => [
      name,
      item.code,
      item.text,
      item.quantity,
      item.unit,
      money(item.price),
      money(item.total),
      currency,
      item.total === null ? 'no price in the list' : item.basis,
    ]),
    sum('subtotal', subtotal),
    sum('margin', margin),
    sum('tax', tax),
    sum(missing.length > 0 ? 'total without what has no price' : 'total', total),
  ];
}

/** The quantity lists of a quote, one row an item, for a spreadsheet. */
export const quoteCsv = ({ options, currency }: QuoteResult): string =>
  csvText([HEADING, ...options.flatMap((option) => rowsOf(option, currency))]);
