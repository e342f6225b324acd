import { textOf } from '@rootreach/core';
import type { Geometry } from 'geojson';

/** One row or feature of somebody's file, as it stands there. */
export interface RawRow {
  readonly properties: Readonly<Record<string, unknown>>;
  readonly geometry: Geometry | null;
}

/** What kind of file a table came from. */
export type Format = 'csv' | 'geojson' | 'ndjson' | 'shapefile' | 'kml' | 'gpx';

/** A file taken apart into rows. */
export interface RawTable {
  readonly file: string;
  readonly format: Format;
  readonly columns: readonly string[];
  readonly rows: readonly RawRow[];
  /** Reference system that the file names. */
  readonly crs: string | null;
  /** Rows that could not be taken apart: number from 1, and why. */
  readonly broken: readonly { readonly row: number; readonly why: string }[];
}

/** The cell of a row; an object or a list in it as its JSON, since it may have a `toString` of its own. */
export function cellOf({ properties }: RawRow, column: string): unknown {
  const value = Object.hasOwn(properties, column) ? properties[column] : undefined;
  return typeof value === 'object' && value !== null && !(value instanceof Date) ? textOf(value) : value;
}
