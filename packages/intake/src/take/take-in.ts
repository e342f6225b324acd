import type { TextInput } from '@rootreach/core';
import type { Feature } from 'geojson';
import type { ColumnMap } from '../columns/column-map.js';
import { type GuessedMap, guessMap, SAMPLE_ROWS } from '../columns/guess-map.js';
import { openPieces, type PiecedFile } from '../formats/open-pieces.js';
import { openTables, type SourceFile } from '../formats/open-table.js';
import type { IntakeReport } from './intake-report.js';
import { firstRows, type RawTable } from './raw-table.js';
import { Taker } from './taker.js';

/** What is told of a file, so that it need not be guessed. */
export interface TakeInOptions {
  /** How to read the columns, instead of a guess. */
  readonly map?: ColumnMap;
  /** Grid of the positions where the file does not name it: `EPSG:2263`. */
  readonly crs?: string;
}

/** One table taken in: GeoJSON that the core reads, what became of the rows, and the columns as they were read. */
export interface TakenIn {
  readonly input: TextInput;
  readonly report: IntakeReport;
  readonly map: ColumnMap;
}

/** How a table's columns are to be read: as told, else as guessed. */
function mapFor(table: RawTable, options: TakeInOptions): GuessedMap {
  const crs = options.crs ?? table.crs;
  if (options.map === undefined) return guessMap(firstRows(table, SAMPLE_ROWS), table.columns, crs);
  const map = options.crs === undefined ? options.map : { ...options.map, crs: options.crs };
  return { map, guesses: [{ what: 'kind', taken: map.what, why: 'the column map', sure: true }] };
}

/** A table being taken in, row by row. */
interface Taking {
  readonly features: Iterable<Feature>;
  /** What became of the rows so far. */
  readonly report: () => IntakeReport;
  readonly map: ColumnMap;
}

function taking(table: RawTable, options: TakeInOptions): Taking {
  const guessed = mapFor(table, options);
  const taker = new Taker(table.file, table.format, guessed);
  function* features(): Iterable<Feature> {
    for (const record of table.records) {
      if ('broken' in record) taker.broken(record.broken);
      else yield* taker.take(record);
    }
  }
  return { features: features(), report: () => taker.report(), map: guessed.map };
}

const collection = (features: readonly Feature[]): string =>
  JSON.stringify({ type: 'FeatureCollection', features });

function takeTable(table: RawTable, options: TakeInOptions): TakenIn {
  const { features, report, map } = taking(table, options);
  const text = collection([...features]);
  return { input: { name: table.file, text }, report: report(), map };
}

/**
 * Takes a town's file in: CSV, GeoJSON, one feature a line, zipped shapefile, KML, KMZ, GPX.
 * @param source name and bytes.
 * @param options what is told of it, so that it need not be guessed.
 * @throws Unreadable where the file cannot be taken apart at all.
 */
export async function takeIn(source: SourceFile, options: TakeInOptions = {}): Promise<TakenIn[]> {
  const tables = await openTables(source);
  return tables.map((table) => takeTable(table, options));
}

/** A file taken in piece by piece. */
export interface TakenInPieces {
  /** GeoJSON of some features each; to be walked over once. */
  readonly texts: Iterable<string>;
  /** What became of the rows that the texts were made of so far. */
  readonly report: () => IntakeReport;
  readonly map: ColumnMap;
}

/** Features of one text: its numbers are cleared up cheaply where it is read. */
const FEATURES_AT_ONCE = 5000;

/**
 * Takes in a file too large to be held as a whole. The features are those of `takeIn`.
 * @param file name and bytes, to be read more than once.
 * @param options what is told of it, so that it need not be guessed.
 * @returns null where the format must be read whole: archives, KML, GPX.
 * @throws SyntaxError where a part of a GeoJSON file is not JSON.
 */
export function takeInPieces(file: PiecedFile, options: TakeInOptions = {}): TakenInPieces | null {
  const table = openPieces(file);
  if (table === null) return null;
  const { features, report, map } = taking(table, options);
  function* texts(): Iterable<string> {
    let some: Feature[] = [];
    for (const feature of features) {
      some.push(feature);
      if (some.length < FEATURES_AT_ONCE) continue;
      yield collection(some);
      some = [];
    }
    if (some.length > 0) yield collection(some);
  }
  return { texts: texts(), report, map };
}

/**
 * Names of all columns of a file, to choose from.
 * @throws Unreadable as `takeIn` does.
 */
export async function columnsIn(source: SourceFile): Promise<string[]> {
  const tables = await openTables(source);
  return [...new Set(tables.flatMap(({ columns }) => columns))];
}
