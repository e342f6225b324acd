import type { TextInput } from '@rootreach/core';
import type { ColumnMap } from '../columns/column-map.js';
import { type GuessedMap, guessMap } from '../columns/guess-map.js';
import { openTables, type SourceFile } from '../formats/open-table.js';
import type { IntakeReport } from './intake-report.js';
import type { RawTable } from './raw-table.js';
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
export function mapFor(
  table: Pick<RawTable, 'rows' | 'columns' | 'crs'>,
  options: TakeInOptions,
): GuessedMap {
  const crs = options.crs ?? table.crs;
  if (options.map === undefined) return guessMap(table.rows, table.columns, crs);
  const map = options.crs === undefined ? options.map : { ...options.map, crs: options.crs };
  return { map, guesses: [{ what: 'kind', taken: map.what, why: 'the column map', sure: true }] };
}

function takeTable(table: RawTable, options: TakeInOptions): TakenIn {
  const guessed = mapFor(table, options);
  const taker = new Taker(table.file, table.format, guessed);
  for (const { row, why } of table.broken) taker.broken(row, why);
  const features = table.rows.flatMap((row) => taker.take(row));
  return {
    input: { name: table.file, text: JSON.stringify({ type: 'FeatureCollection', features }) },
    report: taker.report(),
    map: guessed.map,
  };
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

/**
 * Names of all columns of a file, to choose from.
 * @throws Unreadable as `takeIn` does.
 */
export async function columnsIn(source: SourceFile): Promise<string[]> {
  const tables = await openTables(source);
  return [...new Set(tables.flatMap(({ columns }) => columns))];
}
