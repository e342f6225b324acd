/** What a spreadsheet may take for the start of a formula, also in its wide forms. */
const FORMULA_START = /^[=+\-@\t\r\n＝＋－＠]/u;
/** The same behind a character at which a spreadsheet set to other customs ends a cell, quotes or not. */
const FORMULA_INSIDE = /([;\t\r\n][\s"]*)(?=[=+\-@＝＋－＠])/gu;
/** What has to stand between quotes; semicolons and tabs too, since some spreadsheets split there. */
const NEEDS_QUOTES = /[",;\t\r\n]/;

/** What one cell of a table to be written may hold; null leaves it empty. */
export type CsvCell = string | number | null;

function cellText(cell: CsvCell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return String(cell);
  const inside = cell.replace(FORMULA_INSIDE, "$1'");
  const safe = FORMULA_START.test(inside) ? `'${inside}` : inside;
  return NEEDS_QUOTES.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** Rows as RFC 4180 has them, lines ended by CR LF; no text can start a formula. */
export function csvText(rows: readonly (readonly CsvCell[])[]): string {
  return rows.map((row) => `${row.map(cellText).join(',')}\r\n`).join('');
}
