import Papa from 'papaparse';
import type { RawTable } from '../take/raw-table.js';

/** Rows of a table with a header line; delimiter and quotes as found. */
export function csvTable(file: string, text: string): RawTable {
  const read = Papa.parse<Record<string, unknown>>(text.replace(/^\uFEFF/, ''), {
    header: true,
    skipEmptyLines: 'greedy',
    // a name that is no use as a key on a plain object
    transformHeader: (name) => (name === '__proto__' ? 'proto' : name.trim()),
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
