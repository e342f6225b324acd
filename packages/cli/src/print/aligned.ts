/** Rows and columns as text, each column as wide as its widest cell. */
export function aligned(rows: readonly (readonly string[])[]): string[] {
  const widths = (rows[0] ?? []).map((_, c) => Math.max(...rows.map((row) => row[c]?.length ?? 0)));
  return rows.map((row) =>
    row
      .map((cell, c) => (c === 0 ? cell.padEnd(widths[c] as number) : cell.padStart(widths[c] as number)))
      .join('  ')
      .trimEnd(),
  );
}
