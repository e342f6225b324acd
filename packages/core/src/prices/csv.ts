/** What a spreadsheet may take for the start of a formula, also in its wide forms. */
const FORMULA_START = /^[=+\-@\t\r\n＝＋－＠]/u;
/** What has to stand between quotes; semicolons and tabs too, since some spreadsheets split there. */
const NEEDS_QUOTES = /[",;\t\r\n]/;

/** What one cell of a table to be written may hold; null leaves it empty. */
export type CsvCell = string | number | null;

function cellText(cell: CsvCell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return String(cell);
  const safe = FORMULA_START.test(cell) ? `'${cell}` : cell;
  return NEEDS_QUOTES.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** Rows as RFC 4180 has them, lines ended by CR LF; no text can start a formula. */
export function csvText(rows: readonly (readonly CsvCell[])[]): string {
  return rows.map((row) => `${row.map(cellText).join(',')}\r\n`).join('');
}
