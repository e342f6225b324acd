import type { PriceIssue, PriceList, PriceRow, PriceUnit } from '../model/prices.js';
import { yearOf } from '../units/calendar.js';
import { type CsvRow, csvRows } from './csv-rows.js';
import { demoPrices } from './demo-prices.js';
import { priceListOf } from './price-list-of.js';

const COLUMNS = ['code', 'text', 'unit', 'price', 'currency', 'dated', 'note'] as const;
type Column = (typeof COLUMNS)[number];
const NEEDED: readonly Column[] = ['code', 'unit', 'price'];
const USUAL_CURRENCY = 'USD';

let items: ReadonlySet<string> | undefined;

/** Codes of all that is ever priced: those of the built-in list. */
function knownItems(): ReadonlySet<string> {
  items ??= new Set(demoPrices().rows.map(({ code }) => code));
  return items;
}

/** How people write the units. */
const UNITS: Readonly<Record<string, PriceUnit>> = {
  m: 'm',
  m2: 'm2',
  'm²': 'm2',
  m3: 'm3',
  'm³': 'm3',
  ft: 'ft',
  foot: 'ft',
  lf: 'ft',
  ft2: 'ft2',
  'ft²': 'ft2',
  sf: 'ft2',
  'sq ft': 'ft2',
  yd2: 'yd2',
  'yd²': 'yd2',
  sy: 'yd2',
  'sq yd': 'yd2',
  ft3: 'ft3',
  'cu ft': 'ft3',
  yd3: 'yd3',
  'yd³': 'yd3',
  cy: 'yd3',
  'cu yd': 'yd3',
  ton: 'ton',
  piece: 'piece',
  each: 'piece',
  ea: 'piece',
  hour: 'hour',
  hr: 'hour',
  h: 'hour',
  job: 'job',
};

/** A number as people write prices: `1,250.00`, `$12.50`, `12,50` where nothing else is a decimal point. */
function priceText(given: string): string | null {
  const bare = given.replace(/^[$€£]\s*/, '').replace(/\s/g, '');
  const plain = /^\d{1,3}(,\d{3})+(\.\d+)?$/.test(bare)
    ? bare.replaceAll(',', '')
    : bare.replace(/^(\d+),(\d{1,2})$/, '$1.$2');
  return /^\d{1,9}(\.\d{1,6})?$/.test(plain) ? plain : null;
}

class Reader {
  readonly issues: PriceIssue[] = [];
  readonly rows: PriceRow[] = [];
  private readonly firstLines = new Map<string, number>();
  currency: string | null = null;

  constructor(private readonly columns: ReadonlyMap<Column, number>) {}

  private cell({ cells }: CsvRow, column: Column): string {
    const at = this.columns.get(column);
    // the quote that keeps a spreadsheet from taking a text for a formula is no part of it
    return at === undefined ? '' : (cells[at] ?? '').replace(/^'(?=[=+\-@])/, '');
  }

  read(row: CsvRow): void {
    const { line } = row;
    const item = this.cell(row, 'code');
    if (item === '') {
      this.issues.push({ line, code: 'no-code' });
      return;
    }
    const firstLine = this.firstLines.get(item);
    if (firstLine !== undefined) {
      this.issues.push({ line, code: 'listed-twice', item, firstLine });
      return;
    }
    this.firstLines.set(item, line);
    if (!knownItems().has(item)) this.issues.push({ line, code: 'unknown-item', item });
    const price = priceText(this.cell(row, 'price'));
    const unit = UNITS[this.cell(row, 'unit').toLowerCase()];
    if (price === null) this.issues.push({ line, code: 'bad-price', item, got: this.cell(row, 'price') });
    if (unit === undefined) this.issues.push({ line, code: 'bad-unit', item, got: this.cell(row, 'unit') });
    if (price === null || unit === undefined || !this.sameCurrency(row, item)) return;
    const dated = this.dateOf(row, item);
    this.rows.push({
      code: item,
      text: this.cell(row, 'text'),
      unit,
      price,
      dated,
      note: this.cell(row, 'note'),
    });
  }

  private sameCurrency(row: CsvRow, item: string): boolean {
    const got = this.cell(row, 'currency').toUpperCase();
    if (got === '' || got === this.currency) return true;
    if (this.currency !== null) {
      this.issues.push({ line: row.line, code: 'other-currency', item, got });
      return false;
    }
    this.currency = got;
    return true;
  }

  private dateOf(row: CsvRow, item: string): string | null {
    const got = this.cell(row, 'dated');
    if (got === '') return null;
    if (yearOf(got) !== undefined) return got;
    this.issues.push({ line: row.line, code: 'bad-date', item, got });
    return null;
  }
}

/**
 * A firm's own price list from plain CSV: `code,text,unit,price,currency,dated,note`, in any order of columns; a row
 * that cannot be used is left out and said.
 * @returns the list, and what is wrong with it as values: it never throws for bad input.
 */
export function readPriceList(text: string): {
  readonly list: PriceList;
  readonly issues: readonly PriceIssue[];
} {
  const [heading, ...rows] = csvRows(text);
  const none = priceListOf(USUAL_CURRENCY, []);
  if (heading === undefined) return { list: none, issues: [{ line: 1, code: 'nothing-in-it' }] };
  const names = heading.cells.map((cell) => cell.toLowerCase());
  const columns = new Map(
    COLUMNS.map((column) => [column, names.indexOf(column)] as const).filter(([, at]) => at >= 0),
  );
  const absent = NEEDED.filter((column) => !columns.has(column));
  if (absent.length > 0) {
    return {
      list: none,
      issues: absent.map((column) => ({ line: heading.line, code: 'no-such-column', column })),
    };
  }
  const reader = new Reader(columns);
  for (const row of rows) reader.read(row);
  if (rows.length === 0) reader.issues.push({ line: heading.line, code: 'nothing-in-it' });
  return { list: priceListOf(reader.currency ?? USUAL_CURRENCY, reader.rows), issues: reader.issues };
}
