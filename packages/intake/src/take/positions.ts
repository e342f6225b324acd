import { textOf } from '@rootreach/core';
import type { Geometry, Position } from 'geojson';
import type { ColumnMap } from '../columns/column-map.js';
import { fromHexWkb } from '../positions/ewkb.js';
import { projectionOf, type ToLonLat } from '../positions/projection.js';
import { isMissing } from '../values/missing.js';
import type { Reason } from './intake-report.js';
import { cellOf, type RawRow } from './raw-table.js';

/** Degrees with a tenth of a millimetre: what lies behind is noise of the conversion. */
const DECIMALS = 1e9;
/** Numbers beyond this are metres or feet of a grid. */
const DEGREES_END = 400;

export type Placed = { readonly geometry: Geometry } | { readonly why: Reason; readonly value: string };

/** A geometry as it was found, its grid, and the cells it was read from. */
interface Found {
  readonly geometry: Exclude<Geometry, { type: 'GeometryCollection' }>;
  readonly crs: string | null;
  readonly said?: string;
}

/** What has the members of a geometry with coordinates: RFC 7946, 3.1. */
function geometryIn(value: unknown): Found['geometry'] | null {
  const { type, coordinates } = (value ?? {}) as { type?: unknown; coordinates?: unknown };
  return typeof type === 'string' && Array.isArray(coordinates) ? (value as Found['geometry']) : null;
}

const rounded = (degrees: number): number => Math.round(degrees * DECIMALS) / DECIMALS;

function parsed(text: string): unknown {
  try {
    const value = JSON.parse(text) as { type?: unknown; geometry?: unknown } | null;
    return value?.type === 'Feature' ? value.geometry : value;
  } catch {
    return null;
  }
}

/** Finds and converts the positions of the rows of one file. */
export class Placing {
  private readonly grids = new Map<string, ToLonLat | null>();

  constructor(private readonly map: ColumnMap) {}

  private gridOf(code: string): ToLonLat | null {
    let grid = this.grids.get(code);
    if (grid === undefined) {
      grid = projectionOf(code)?.toLonLat ?? null;
      this.grids.set(code, grid);
    }
    return grid;
  }

  private found(row: RawRow): Found | null {
    const { position, crs } = this.map;
    const given = (value: unknown): Found | null => {
      const geometry = geometryIn(value);
      return geometry === null ? null : { geometry, crs };
    };
    if (position.from === 'geometry') return given(row.geometry);
    if (position.from === 'none') return null;
    if (position.from === 'columns') {
      const [x, y] = [cellOf(row, position.x), cellOf(row, position.y)];
      if (isMissing(x) || isMissing(y)) return null;
      const said = `${textOf(x)}, ${textOf(y)}`;
      return { geometry: { type: 'Point', coordinates: [Number(x), Number(y)] }, crs, said };
    }
    const cell = cellOf(row, position.column);
    if (typeof cell !== 'string') return null;
    if (position.from === 'geojson-cell') return given(parsed(cell));
    const read = fromHexWkb(cell.trim());
    if (read === null) return null;
    const found = given(read.geometry);
    return found && { ...found, crs: crs ?? (read.srid === null ? null : `EPSG:${read.srid}`) };
  }

  /** The row's geometry in longitude and latitude, or why it has none that can be used. */
  place(row: RawRow): Placed {
    const found = this.found(row);
    if (found === null) return { why: 'no-position', value: '' };
    let why: Reason | null = null;
    let value = '';
    const one = (position: unknown): Position => {
      let [x, y] = (Array.isArray(position) ? position : []).map((n) =>
        typeof n === 'number' ? n : Number.NaN,
      );
      x ??= Number.NaN;
      y ??= Number.NaN;
      if (this.map.latitudeFirst) [x, y] = [y, x];
      const isDegrees = found.crs === null || found.crs === 'EPSG:4326';
      const grid = isDegrees ? null : this.gridOf(found.crs as string);
      const isOnGrid = Math.abs(x) > DEGREES_END || Math.abs(y) > DEGREES_END;
      if (!Number.isFinite(x) || !Number.isFinite(y)) why = 'no-position';
      else if (grid) [x, y] = grid(x, y) as [number, number];
      else if (isOnGrid) why = 'grid-unknown';
      if (why === null && !(Math.abs(x) <= 180 && Math.abs(y) <= 90)) why = 'off-the-globe';
      // longitude 0, latitude 0 is where empty cells land
      if (why === null && x === 0 && y === 0) why = 'no-position';
      if (why !== null) value ||= found.said ?? textOf(position);
      return [rounded(x), rounded(y)];
    };
    const all = (coordinates: unknown): unknown =>
      Array.isArray(coordinates) && typeof coordinates[0] !== 'number'
        ? coordinates.map(all)
        : one(coordinates);
    const geometry = { ...found.geometry, coordinates: all(found.geometry.coordinates) } as Geometry;
    return why === null ? { geometry } : { why, value };
  }
}
