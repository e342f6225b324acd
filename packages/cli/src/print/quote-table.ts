import type { PricedLine, QuoteOption, QuoteResult } from '@rootreach/core';
import { shortCautions } from './cautions.js';
import { moneyText } from './money.js';
import { priceNote } from './price-note.js';
import { printable } from './printable.js';
import type { Page } from './rank-table.js';
import { siteTitle } from './site-title.js';
import { wrap } from './wrap.js';

const NO_PRICE = 'no price';
const GAP = '  ';
/** Room that numbers and units take beside the text of an item; the text has what is left. */
const NUMBERS_WIDTH = 35;
const LEAST_TEXT = 30;
const MOST_TEXT = 60;

const padded = (cells: readonly string[], widths: readonly number[], texts = 1): string =>
  cells
    .map((cell, i) => (i < texts ? cell.padEnd(widths[i] as number) : cell.padStart(widths[i] as number)))
    .join(GAP)
    .trimEnd();

const widthsOf = (rows: readonly (readonly string[])[]): number[] =>
  (rows[0] ?? []).map((_, i) => Math.max(...rows.map((row) => (row[i] ?? '').length)));

const cut = (text: string, most: number): string =>
  text.length <= most ? text : `${text.slice(0, most - 3)}...`;

/** Sums below the lines, of an option. */
function sumsOf({ subtotal, margin, tax, total }: QuoteOption, { terms }: QuoteResult): [string, string][] {
  const percent = (share: number): string => `${Number((100 * share).toFixed(3))} %`;
  const taxed = terms.taxOn === 'materials' ? ' on materials' : '';
  return [
    ...(terms.margin > 0 || terms.tax > 0 ? [['lines', subtotal] as [string, string]] : []),
    ...(terms.margin > 0 ? [[`margin ${percent(terms.margin)}`, margin] as [string, string]] : []),
    ...(terms.tax > 0 ? [[`tax ${percent(terms.tax)}${taxed}`, tax] as [string, string]] : []),
    ['TOTAL', total],
  ];
}

/** Group of an item, for the side-by-side view. */
const GROUPS: readonly (readonly [name: string, of: (line: PricedLine) => boolean])[] = [
  ['labour and digger', ({ code }) => code.endsWith('-hours')],
  ['getting there, visits', ({ from, code }) => from.unit === 'job' && !code.startsWith('lining')],
  ['pipe, fittings, stone', ({ isMaterial, code }) => isMaterial && !code.startsWith('lining')],
  ['ground made good', ({ code }) => code.startsWith('reinstate') || code === 'saw-cut'],
  ['digging, soil, roots, the rest', () => true],
];

const groupOf = (line: PricedLine): string => GROUPS.find(([, of]) => of(line))?.[0] ?? '';

/** Cents of decimal text; exact up to any sum that is ever quoted. */
const cents = (amount: string): number => Math.round(Number(amount) * 100);

function besideRows(result: QuoteResult): string[][] {
  const { options, currency } = result;
  const named = GROUPS.map(([name]) => name);
  const sum = (option: QuoteOption, name: string): number =>
    option.items
      .filter((line) => groupOf(line) === name)
      .reduce((all, { total }) => all + cents(total ?? '0'), 0);
  const groups = named
    .map((name) => [name, ...options.map((option) => (sum(option, name) / 100).toFixed(2))])
    .filter(([, ...amounts]) => amounts.some((amount) => amount !== '0.00'));
  const [first] = options;
  const sums = first === undefined ? [] : sumsOf(first, result).map(([name]) => name);
  const below = sums.map((name, i) => [
    name,
    ...options.map((option) => sumsOf(option, result)[i]?.[1] ?? ''),
  ]);
  const rows = [...groups, ...below].map(([name = '', ...amounts]) => [
    name,
    ...amounts.map((amount) => moneyText(amount, currency)),
  ]);
  const lacking = options.some(({ missing }) => missing.length > 0);
  const told = options.map(({ missing }) =>
    missing.length > 0 ? `${missing.length} prices missing` : 'complete',
  );
  return lacking ? [...rows, ['', ...told]] : rows;
}

function beside(result: QuoteResult, { style }: Page): string[] {
  const head = ['', ...result.options.map((_, i) => `option ${i + 1}`)];
  const rows = besideRows(result);
  const widths = widthsOf([head, ...rows]);
  return [style.faint(padded(head, widths)), ...rows.map((row) => padded(row, widths))];
}

const UNITS: Readonly<Record<string, string>> = { piece: 'pc', hour: 'h', m2: 'm2', m3: 'm3' };

function listOf(option: QuoteOption, number: number, result: QuoteResult, { style, width }: Page): string[] {
  const rows = option.items.map(({ text, quantity, unit, price, total }) => [
    cut(text, Math.min(MOST_TEXT, Math.max(LEAST_TEXT, width - NUMBERS_WIDTH))),
    quantity.toFixed(2).replace(/\.00$/, ''),
    UNITS[unit] ?? unit,
    price === null ? NO_PRICE : Number(price).toFixed(2),
    total === null ? '' : moneyText(total, result.currency),
  ]);
  const sums = sumsOf(option, result).map(([name, amount]) => [
    name,
    '',
    '',
    '',
    moneyText(amount, result.currency),
  ]);
  const widths = widthsOf([...rows, ...sums]);
  const row = ([text = '', quantity = '', unit = '', ...money]: readonly string[]): string =>
    [
      text.padEnd(widths[0] as number),
      quantity.padStart(widths[1] as number),
      unit.padEnd(widths[2] as number),
      ...money.map((cell, i) => cell.padStart(widths[3 + i] as number)),
    ]
      .join(GAP)
      .trimEnd();
  const lacking = option.missing.map(({ code }) => code);
  return [
    style.strong(wrap(`Option ${number}: ${option.name}`, width)),
    wrap(`${option.scope}.`, width),
    ...[...rows, ...sums].map(row),
    ...(lacking.length === 0
      ? []
      : [wrap(`NOT IN THE TOTAL, no price in the list: ${lacking.join(', ')}.`, width)]),
  ];
}

/** A quote: options side by side, then the quantity list of each. */
export function quoteTable(given: QuoteResult, page: Page): string {
  const result = printable(given);
  const { style, width } = page;
  const lines = [
    style.strong(wrap(siteTitle(result.site), width)),
    wrap(`Quote of ${result.asOf}.`, width),
    wrap(priceNote({ invented: result.pricesInvented, dated: result.pricesDated }), width),
    '',
    ...result.options.map(({ name }, i) => wrap(`option ${i + 1}: ${name}`, width, 10)),
    '',
    ...beside(result, page),
    ...result.options.flatMap((option, i) => ['', ...listOf(option, i + 1, result, page)]),
    '',
    style.faint(
      wrap(
        'Quantities from the drawing; each line and tax rounded to the cent, halves up; the total is their sum.',
        width,
      ),
    ),
    wrap(shortCautions(result.cautions), width),
  ];
  return `${lines.join('\n')}\n`;
}
