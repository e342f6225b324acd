import Papa from 'papaparse';
import type { RawTable } from '../take/raw-table.js';

/**
 * Names of columns that can be keys of plain objects, no two alike: left to the reader of the table, names that stand
 * twice are told on the console.
 */
function keyNames(): (given: string, at: number) => string {
  const keys: string[] = [];
  return (given, at) => {
    // the reader asks twice for each column
    const known = keys[at];
    if (known !== undefined) return known;
    const name = given === '__proto__' ? 'proto' : given.trim();
    let key = name;
    for (let more = 1; keys.includes(key); more++) key = `${name}_${more}`;
    keys[at] = key;
    return key;
  };
}

/** Rows of a table with a header line; delimiter and quotes as found. */
export function csvTable(file: string, text: string): RawTable {
  const read = Papa.parse<Record<string, unknown>>(text.replace(/^\uFEFF/, ''), {
    header: true,
    skipEmptyLines: 'greedy',
    transformHeader: keyNames(),
  });
  const broken = read.errors
    .filter(({ row, type }) => row !== undefined && type !== 'Delimiter')
    .map(({ row, message }) => ({ row: (row as number) + 1, why: message.toLowerCase() }));
  const columns = (read.meta.fields ?? []).filter((name) => name !== '');
  return {
    file,
    format: 'csv',
    columns,
    rows: read.data.map((properties) => ({ properties, geometry: null })),
    crs: null,
    broken,
  };
}
