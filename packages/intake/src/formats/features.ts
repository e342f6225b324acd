import type { Geometry } from 'geojson';
import type { Format, RawRow, RawTable } from '../take/raw-table.js';

/** Record separator of RFC 8142. */
const RECORD = String.fromCharCode(0x1e);

type Json = Readonly<Record<string, unknown>>;

const isObject = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** What could be a geometry: whether its coordinates make sense is looked at where they are used. */
const geometryOf = (value: unknown): Geometry | null =>
  isObject(value) && typeof value['type'] === 'string' ? (value as unknown as Geometry) : null;

/** A feature as a row; null where it is none. */
export function rowOfFeature(value: unknown): RawRow | null {
  if (!isObject(value) || value['type'] !== 'Feature') return null;
  const properties = isObject(value['properties']) ? value['properties'] : {};
  const geometry = geometryOf(value['geometry']);
  const id = value['id'];
  return {
    properties: id === undefined || 'id' in properties ? properties : { id, ...properties },
    geometry,
  };
}

/** Columns in the order in which they first turn up. */
export function columnsOf(rows: readonly RawRow[]): string[] {
  const columns = new Set<string>();
  for (const { properties } of rows) for (const name in properties) columns.add(name);
  return [...columns];
}

function crsOf(root: Json): string | null {
  const crs = root['crs'];
  const name = isObject(crs) && isObject(crs['properties']) ? crs['properties']['name'] : null;
  return typeof name === 'string' ? name : null;
}

/** Rows of parsed GeoJSON; what is no feature is counted as broken. */
export function featureTable(file: string, format: Format, root: unknown): RawTable {
  const list = isObject(root) && Array.isArray(root['features']) ? (root['features'] as unknown[]) : [root];
  const rows: RawRow[] = [];
  const broken: { row: number; why: string }[] = [];
  list.forEach((value, index) => {
    const row = rowOfFeature(value);
    if (row) rows.push(row);
    else broken.push({ row: index + 1, why: 'not a feature' });
  });
  return { file, format, columns: columnsOf(rows), rows, crs: isObject(root) ? crsOf(root) : null, broken };
}

/** One feature a line, with or without the record separator of RFC 8142. */
export function lineTable(file: string, text: string): RawTable {
  const rows: RawRow[] = [];
  const broken: { row: number; why: string }[] = [];
  text.split('\n').forEach((line, index) => {
    const plain = line.replaceAll(RECORD, '').replace('\uFEFF', '').trim();
    if (plain === '') return;
    let row: RawRow | null = null;
    try {
      row = rowOfFeature(JSON.parse(plain));
    } catch {
      // said below
    }
    if (row) rows.push(row);
    else broken.push({ row: index + 1, why: 'not a feature on one line' });
  });
  return { file, format: 'ndjson', columns: columnsOf(rows), rows, crs: null, broken };
}
