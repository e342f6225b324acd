import type { Geometry } from 'geojson';
import type { Format, RawRecord, RawRow, RawTable } from '../take/raw-table.js';
import type { TextPieces } from './text-pieces.js';

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
export function columnsOf(records: Iterable<RawRecord>): string[] {
  const columns = new Set<string>();
  for (const record of records) {
    if ('broken' in record) continue;
    for (const name in record.properties) columns.add(name);
  }
  return [...columns];
}

function crsOf(root: Json): string | null {
  const crs = root['crs'];
  const name = isObject(crs) && isObject(crs['properties']) ? crs['properties']['name'] : null;
  return typeof name === 'string' ? name : null;
}

const featuresIn = (root: unknown): unknown[] =>
  isObject(root) && Array.isArray(root['features']) ? root['features'] : [root];

const recordOf = (value: unknown): RawRecord => rowOfFeature(value) ?? { broken: 'not a feature' };

/** Rows of parsed GeoJSON; what is no feature is counted as broken. */
export function featureTable(file: string, format: Format, root: unknown): RawTable {
  const records = featuresIn(root).map(recordOf);
  return { file, format, columns: columnsOf(records), records, crs: isObject(root) ? crsOf(root) : null };
}

/**
 * Rows of a collection that comes as several, each whole in itself.
 * @throws SyntaxError where one of them is not JSON.
 */
export function collectionsTable(file: string, collections: TextPieces): RawTable {
  const columns = new Set<string>();
  let crs: string | null = null;
  for (const text of collections()) {
    const part = featureTable(file, 'geojson', JSON.parse(text));
    for (const name of part.columns) columns.add(name);
    crs ??= part.crs;
  }
  function* records(): Iterable<RawRecord> {
    for (const text of collections()) yield* featuresIn(JSON.parse(text)).map(recordOf);
  }
  return {
    file,
    format: 'geojson',
    columns: [...columns],
    records: { [Symbol.iterator]: () => records()[Symbol.iterator]() },
    crs,
  };
}

function* linesOf(pieces: Iterable<string>): Iterable<string> {
  let rest = '';
  for (const piece of pieces) {
    rest += piece;
    if (!piece.includes('\n')) continue;
    const lines = rest.split('\n');
    rest = lines.pop() as string;
    yield* lines;
  }
  yield rest;
}

/** One feature a line, with or without the record separator of RFC 8142. */
export function lineTable(file: string, pieces: TextPieces): RawTable {
  function* all(): Iterable<RawRecord> {
    for (const line of linesOf(pieces())) {
      const plain = line.replaceAll(RECORD, '').replace('\uFEFF', '').trim();
      if (plain === '') continue;
      let row: RawRow | null = null;
      try {
        row = rowOfFeature(JSON.parse(plain));
      } catch {
        // said below
      }
      yield row ?? { broken: 'not a feature on one line' };
    }
  }
  const records = { [Symbol.iterator]: () => all()[Symbol.iterator]() };
  return { file, format: 'ndjson', columns: columnsOf(records), records, crs: null };
}
