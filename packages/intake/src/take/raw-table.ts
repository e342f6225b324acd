import { textOf } from '@rootreach/core';
import type { Geometry } from 'geojson';

/** One row or feature of somebody's file, as it stands there. */
export interface RawRow {
  readonly properties: Readonly<Record<string, unknown>>;
  readonly geometry: Geometry | null;
}

/** What could not be taken apart, and why. */
export interface BrokenRow {
  readonly broken: string;
}

export type RawRecord = RawRow | BrokenRow;

/** What kind of file a table came from. */
export type Format = 'csv' | 'geojson' | 'ndjson' | 'shapefile' | 'kml' | 'gpx';

/** A file taken apart into rows. */
export interface RawTable {
  readonly file: string;
  readonly format: Format;
  readonly columns: readonly string[];
  /** In the order of the file; each walk over them reads the file anew where it is read in pieces. */
  readonly records: Iterable<RawRecord>;
  /** Reference system that the file names. */
  readonly crs: string | null;
}

/** The first rows of a table that could be taken apart, as many as wanted. */
export function firstRows({ records }: Pick<RawTable, 'records'>, most: number): RawRow[] {
  const rows: RawRow[] = [];
  for (const record of records) {
    if (rows.length >= most) break;
    if (!('broken' in record)) rows.push(record);
  }
  return rows;
}

/** The cell of a row; an object or a list in it as its JSON, since it may have a `toString` of its own. */
export function cellOf({ properties }: RawRow, column: string): unknown {
  const value = Object.hasOwn(properties, column) ? properties[column] : undefined;
  return typeof value === 'object' && value !== null && !(value instanceof Date) ? textOf(value) : value;
}
