import type { Unit } from '../values/units.js';

/** What a column of a tree table can mean. */
export type TreeField =
  | 'id'
  | 'genus'
  | 'species'
  | 'common'
  | 'code'
  | 'trunk'
  | 'girth'
  | 'canopyDiameter'
  | 'canopyRadius'
  | 'height'
  | 'condition'
  | 'planted'
  | 'street';
/** What a column of a pipe table can mean. */
export type DrainField =
  | 'id'
  | 'name'
  | 'material'
  | 'size'
  | 'installed'
  | 'depth'
  | 'condition'
  | 'carries'
  | 'street';
/** What a column of a tree or pipe table can mean. */
export type Field = TreeField | DrainField;

/** The column that holds something, by its name in the file. */
export interface ColumnUse {
  readonly column: string;
  /** Unit of bare numbers in it. */
  readonly unit?: Unit;
}

/** Where the positions are. */
export type PositionUse =
  | { readonly from: 'geometry' }
  | { readonly from: 'columns'; readonly x: string; readonly y: string }
  | { readonly from: 'geojson-cell' | 'wkb-cell'; readonly column: string }
  | { readonly from: 'none' };

/** How the columns of one file are read: guessed, shown, and kept as a file to edit. */
export interface ColumnMap {
  readonly schema: 1;
  readonly kind: 'rootreach-columns';
  readonly what: 'tree' | 'drain';
  readonly position: PositionUse;
  /** `EPSG:2263`, where positions are on a grid; null for longitude and latitude. */
  readonly crs: string | null;
  /** True where the first number of a position is the latitude. */
  readonly latitudeFirst: boolean;
  readonly columns: Readonly<Partial<Record<Field, ColumnUse>>>;
}
