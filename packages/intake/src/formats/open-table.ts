import type { RawTable } from '../take/raw-table.js';
import { filesIn, isArchive } from './archive.js';
import { csvTable } from './csv.js';
import { featureTable, lineTable } from './features.js';
import { gpxTable, kmlTable } from './markup.js';
import { shapeTables } from './shapefile.js';

/** A file as it came: its name and what is in it. */
export interface SourceFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** Why a file cannot be taken apart, in plain words. */
export class Unreadable extends Error {}

const RECORD = String.fromCharCode(0x1e);

const ending = (name: string): string => /\.([a-z0-9]+)$/i.exec(name)?.[1]?.toLowerCase() ?? '';

/** Text of UTF-8, UTF-16 with its mark, or else of the old western code page. */
export function textOf(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

/** A record separator (RFC 8142) or the mark of UTF-8 may stand first. */
const startsObject = (text: string): boolean =>
  text.slice(0, 200).replaceAll(RECORD, '').replace('\uFEFF', '').trimStart().startsWith('{');

function jsonTable(name: string, text: string): RawTable {
  try {
    return featureTable(name, 'geojson', JSON.parse(text.replace(/^\uFEFF/, '')));
  } catch {
    const lines = lineTable(name, () => [text]);
    const records = [...lines.records];
    const broken = records.filter((record) => 'broken' in record).length;
    if (broken < records.length && 2 * broken <= records.length) return lines;
    throw new Unreadable('not JSON, and not one feature a line');
  }
}

async function packedTables({ name, bytes }: SourceFile): Promise<RawTable[]> {
  const packed = filesIn(bytes, [
    '.shp',
    '.dbf',
    '.prj',
    '.cpg',
    '.kml',
    '.csv',
    '.geojson',
    '.json',
    '.gpx',
  ]);
  if (packed.some((one) => one.name.toLowerCase().endsWith('.shp'))) return shapeTables(name, packed);
  const inside = packed.filter((one) => !/\.(dbf|prj|cpg)$/i.test(one.name));
  if (inside.length === 0) throw new Unreadable('nothing in the archive that can be read');
  const tables = await Promise.all(
    inside.map((one) => openTables({ name: `${name}/${one.name}`, bytes: one.bytes })),
  );
  return tables.flat();
}

/** How a file that is no archive is written, by its ending and by how it begins. */
export function contentOf(
  name: string,
  head: () => string,
): 'shape' | 'kml' | 'gpx' | 'json' | 'lines' | 'csv' {
  switch (ending(name)) {
    case 'shp':
    case 'dbf':
      return 'shape';
    case 'kml':
      return 'kml';
    case 'gpx':
      return 'gpx';
    case 'geojson':
    case 'json':
      return 'json';
    case 'ndjson':
    case 'geojsonl':
    case 'geojsons':
    case 'jsonl':
      return 'lines';
    default:
      return startsObject(head()) ? 'json' : 'csv';
  }
}

/**
 * Takes a file apart into rows, by its ending and by what is in it.
 * @throws Unreadable where it is none of CSV, GeoJSON, one feature a line, zipped shapefile, KML, KMZ, GPX.
 */
export async function openTables(source: SourceFile): Promise<RawTable[]> {
  const { name, bytes } = source;
  if (isArchive(bytes)) return packedTables(source);
  const text = textOf(bytes);
  switch (contentOf(name, () => text)) {
    case 'shape':
      throw new Unreadable('a shapefile is several files: zip its .shp, .dbf and .prj together');
    case 'kml':
      return [await kmlTable(name, text)];
    case 'gpx':
      return [await gpxTable(name, text)];
    case 'json':
      return [jsonTable(name, text)];
    case 'lines':
      return [lineTable(name, () => [text])];
    case 'csv':
      return [csvTable(name, () => [text])];
  }
}
