/** Cells of one row, and the line of the text on which it begins (1 is the first). */
export interface CsvRow {
  readonly line: number;
  readonly cells: readonly string[];
}

const BYTE_ORDER_MARK = '\uFEFF';

/** Separator of the heading: spreadsheets of some countries write semicolons, some tabs. */
function separatorOf(text: string): string {
  const heading = text.slice(0, Math.max(0, text.search(/[\r\n]|$/)));
  const many = (separator: string): number => heading.split(separator).length;
  return [',', ';', '\t'].reduce((best, other) => (many(other) > many(best) ? other : best));
}

/** Rows of a CSV text (RFC 4180) with any of the usual separators and line ends; empty rows are left out. */
export function csvRows(given: string): CsvRow[] {
  const text = given.startsWith(BYTE_ORDER_MARK) ? given.slice(1) : given;
  const separator = separatorOf(text);
  const rows: CsvRow[] = [];
  let cells: string[] = [];
  let cell = '';
  let quoted = false;
  let line = 1;
  let startLine = 1;
  const endRow = (): void => {
    cells.push(cell);
    if (cells.some((c) => c.trim() !== '')) rows.push({ line: startLine, cells: cells.map((c) => c.trim()) });
    cells = [];
    cell = '';
  };
  for (let i = 0; i < text.length; i++) {
    const c = text[i] as string;
    if (quoted) {
      if (c === '\n') line++;
      if (c !== '"') cell += c;
      else if (text[i + 1] === '"') {
        cell += c;
        i++;
      } else quoted = false;
    } else if (c === '"' && cell.trim() === '') {
      cell = '';
      quoted = true;
    } else if (c === separator) {
      cells.push(cell);
      cell = '';
    } else if (c === '\n' || c === '\r') {
      if (c === '\r' && text[i + 1] === '\n') i++;
      endRow();
      startLine = ++line;
    } else cell += c;
  }
  endRow();
  return rows;
}
