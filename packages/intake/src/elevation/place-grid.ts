import { type ElevationGrid, planeFor } from '@rootreach/core';
import { projectionOf } from '../positions/projection.js';
import {
  type ElevationOptions,
  type ElevationReading,
  faulty,
  type HeightUnit,
} from './elevation-reading.js';

/** Rows and columns of a grid in its own coordinates. */
export interface RawGrid {
  readonly columns: number;
  readonly rows: number;
  /** Middle of the cell in a column and row, both counted from 0, the first row north; whole or not. */
  readonly placeOf: (column: number, row: number) => readonly [x: number, y: number];
  /** What the file itself says; null where it does not. */
  readonly reference: string | null;
  readonly heightUnit: HeightUnit | null;
  readonly format: 'ascii-grid' | 'geotiff';
}

/** A part of a grid: columns and rows from the first to the one before the last. */
export interface CellWindow {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** More are not held at once. */
const MOST_CELLS = 4_000_000;
/** Steps in degrees are smaller than this, metres and feet are not. */
const DEGREES_BELOW = 0.05;
/** Cells to spare about a box. */
const SPARE = 2;
const SPARE_SHARE = 0.02;

/** A foot, exact, and the survey foot. */
const METRES_PER: Readonly<Record<HeightUnit, number>> = { m: 1, ft: 0.3048, 'us-ft': 1200 / 3937 };

type ToLonLat = (x: number, y: number) => readonly [number, number];

function looksLikeDegrees({ placeOf, columns, rows }: RawGrid): boolean {
  const [x0, y0] = placeOf(0, 0);
  const [x1, y1] = placeOf(columns - 1, rows - 1);
  const inside = [x0, x1].every((x) => Math.abs(x) <= 180) && [y0, y1].every((y) => Math.abs(y) <= 90);
  return inside && Math.abs(x1 - x0) / (columns - 1) < DEGREES_BELOW;
}

/** Into longitude and latitude, or why not. */
function wayHome(
  raw: RawGrid,
  options: ElevationOptions,
): { name: string; toLonLat: ToLonLat } | ElevationReading {
  const { originAt } = options;
  if (originAt !== undefined) {
    const plane = planeFor([originAt]);
    const toLonLat: ToLonLat = (x, y) => [
      originAt[0] + x / plane.metresPerDegreeLon,
      originAt[1] + y / plane.metresPerDegreeLat,
    ];
    return { name: 'metres from a place', toLonLat };
  }
  const text = options.reference ?? raw.reference;
  if (text === null) {
    if (looksLikeDegrees(raw)) return { name: 'degrees, taken as WGS 84', toLonLat: (x, y) => [x, y] };
    return faulty('no-reference', raw.placeOf(0, 0).join(', '));
  }
  const projection = projectionOf(text);
  return projection === null
    ? faulty('unknown-reference', text)
    : { name: projection.name, toLonLat: projection.toLonLat };
}

/** Column and row of a place, as if the grid were straight between its corners. */
function cellAt(raw: RawGrid, toLonLat: ToLonLat, lon: number, lat: number): [column: number, row: number] {
  const [ox, oy] = toLonLat(...raw.placeOf(0, 0));
  const [ax, ay] = toLonLat(...raw.placeOf(raw.columns - 1, 0));
  const [bx, by] = toLonLat(...raw.placeOf(0, raw.rows - 1));
  const det = (ax - ox) * (by - oy) - (ay - oy) * (bx - ox);
  const u = ((lon - ox) * (by - oy) - (lat - oy) * (bx - ox)) / det;
  const v = ((ax - ox) * (lat - oy) - (ay - oy) * (lon - ox)) / det;
  return [u * (raw.columns - 1), v * (raw.rows - 1)];
}

/** The part of a grid that is wanted; null where none of it is. */
function windowOf(raw: RawGrid, toLonLat: ToLonLat, around: ElevationOptions['around']): CellWindow | null {
  if (around === undefined) return { left: 0, top: 0, right: raw.columns, bottom: raw.rows };
  const { west, south, east, north } = around;
  const cells = [west, east].flatMap((lon) => [south, north].map((lat) => cellAt(raw, toLonLat, lon, lat)));
  const range = (values: readonly number[], count: number): [number, number] => {
    const spare = SPARE + SPARE_SHARE * (Math.max(...values) - Math.min(...values));
    const from = Math.floor(Math.min(...values) - spare);
    const to = Math.ceil(Math.max(...values) + spare) + 1;
    return [Math.max(0, from), Math.min(count, to)];
  };
  const [left, right] = range(
    cells.map(([column]) => column),
    raw.columns,
  );
  const [top, bottom] = range(
    cells.map(([, row]) => row),
    raw.rows,
  );
  return right - left < 2 || bottom - top < 2 ? null : { left, top, right, bottom };
}

/**
 * Puts a grid into its place on earth and its heights into metres.
 * @param heights of a part of the grid, row by row; null or not finite where not known.
 */
export async function placeGrid(
  raw: RawGrid,
  options: ElevationOptions,
  heights: (window: CellWindow) => Promise<ArrayLike<number | null>>,
): Promise<ElevationReading> {
  if (raw.columns < 2 || raw.rows < 2) return faulty('odd-header', `${raw.columns} x ${raw.rows} cells`);
  const home = wayHome(raw, options);
  if ('kind' in home) return home;
  const window = windowOf(raw, home.toLonLat, options.around);
  if (window === null) return faulty('elsewhere', home.toLonLat(...raw.placeOf(0, 0)).join(', '));
  const columns = window.right - window.left;
  const rows = window.bottom - window.top;
  if (columns * rows > MOST_CELLS) return faulty('too-many-cells', `${columns} x ${rows} cells`);
  const found = await heights(window);
  if (found.length < columns * rows) return faulty('too-few-heights', `${found.length} of ${columns * rows}`);
  const heightUnit = options.heightUnit ?? raw.heightUnit ?? 'm';
  const elevationsM = Array.from({ length: columns * rows }, (_, i): number | null => {
    const height = found[i] ?? null;
    return height === null || !Number.isFinite(height) ? null : height * METRES_PER[heightUnit];
  });
  const unknownCells = elevationsM.filter((height) => height === null).length;
  if (unknownCells === elevationsM.length) return faulty('no-heights', `${columns} x ${rows} cells`);
  const corner = (column: number, row: number): [number, number] => {
    const [lon, lat] = home.toLonLat(...raw.placeOf(column, row));
    return [lon, lat];
  };
  const grid: ElevationGrid = {
    columns,
    rows,
    corners: {
      northWest: corner(window.left, window.top),
      northEast: corner(window.right - 1, window.top),
      southWest: corner(window.left, window.bottom - 1),
      southEast: corner(window.right - 1, window.bottom - 1),
    },
    elevationsM,
  };
  if (!Object.values(grid.corners).flat().every(Number.isFinite)) {
    return faulty('unknown-reference', `${home.name}: ${raw.placeOf(0, 0).join(', ')}`);
  }
  return {
    kind: 'grid',
    grid,
    format: raw.format,
    reference: home.name,
    heightUnit,
    heightUnitFrom: options.heightUnit ? 'given' : raw.heightUnit ? 'file' : 'assumed',
    unknownCells,
  };
}
