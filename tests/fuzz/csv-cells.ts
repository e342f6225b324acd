/**
 * Rows of a table as a spreadsheet reads them: quotes count only at the start of a cell, whatever stands behind the
 * closing one is taken along, any line end ends a row.
 */
export function csvCells(text: string, delimiter: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 0;
  const plainEnd = new RegExp(`[\\r\\n${delimiter}]`, 'g');
  while (at < text.length) {
    let cell = '';
    if (text[at] === '"') {
      const quoted = /"((?:[^"]|"")*)"?/y;
      quoted.lastIndex = at;
      const found = quoted.exec(text);
      cell = (found?.[1] ?? '').replaceAll('""', '"');
      at += found?.[0].length ?? 1;
    }
    plainEnd.lastIndex = at;
    const end = plainEnd.exec(text)?.index ?? text.length;
    row.push(cell + text.slice(at, end));
    at = end + 1;
    if (text[end] === delimiter) continue;
    if (text[end] === '\r' && text[at] === '\n') at += 1;
    rows.push(row);
    row = [];
  }
  if (row.length > 0) rows.push(row);
  return rows;
}
