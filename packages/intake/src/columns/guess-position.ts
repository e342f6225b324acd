import { looksLikeWkb } from '../positions/ewkb.js';
import type { RawRow } from '../take/raw-table.js';
import type { PositionUse } from './column-map.js';
import { cellNames, eastNames, latNames, lonNames, northNames } from './field-names.js';
import { headerOf, isCalled } from './header.js';
import { shareOf, valuesOf } from './sample.js';

export interface GuessedPosition {
  readonly position: PositionUse;
  readonly latitudeFirst: boolean;
  /** Numbers of a grid rather than degrees. */
  readonly onGrid: boolean;
  readonly why: string;
}

/** Degrees go no further. */
const DEGREES = 180;

function column(
  columns: readonly string[],
  names: readonly string[],
  fits: (column: string) => boolean,
): string | null {
  for (const name of names) {
    const found = columns.find((one) => isCalled(headerOf(one).words, name) && fits(one));
    if (found !== undefined) return found;
  }
  return null;
}

const isNumber = (value: unknown): boolean => Number.isFinite(Number(value));

function pair(rows: readonly RawRow[], columns: readonly string[]): GuessedPosition | null {
  const within = (limit: number) => (name: string) =>
    shareOf(valuesOf(rows, name), (value) => isNumber(value) && Math.abs(Number(value)) <= limit) > 0.9;
  const lon = column(columns, lonNames, within(DEGREES));
  const lat = column(columns, latNames, within(DEGREES));
  if (lon !== null && lat !== null) {
    const swapped = shareOf(valuesOf(rows, lat), (v) => Math.abs(Number(v)) > 90) > 0.5;
    return {
      position: { from: 'columns', x: lon, y: lat },
      latitudeFirst: swapped,
      onGrid: false,
      why: swapped ? `${lon} and ${lat} hold each other's values` : `${lon} and ${lat}`,
    };
  }
  const numbers = (name: string) => shareOf(valuesOf(rows, name), isNumber) > 0.9;
  const x = column(columns, eastNames, numbers);
  const y = column(columns, northNames, numbers);
  if (x === null || y === null) return null;
  return {
    position: { from: 'columns', x, y },
    latitudeFirst: false,
    onGrid: true,
    why: `${x} and ${y}, on a grid`,
  };
}

function cell(rows: readonly RawRow[], columns: readonly string[]): GuessedPosition | null {
  const holds = (test: (text: string) => boolean) => (name: string) =>
    shareOf(valuesOf(rows, name), (value) => typeof value === 'string' && test(value)) > 0.5;
  const geojson = column(
    columns,
    cellNames,
    holds((text) => /^\s*\{.*"coordinates"/.test(text)),
  );
  const found = { latitudeFirst: false, onGrid: false };
  if (geojson !== null) {
    return { ...found, position: { from: 'geojson-cell', column: geojson }, why: `GeoJSON in ${geojson}` };
  }
  const wkb = column(columns, cellNames, holds(looksLikeWkb));
  if (wkb === null) return null;
  return { ...found, position: { from: 'wkb-cell', column: wkb }, why: `well-known binary in ${wkb}` };
}

/** First position of a geometry, however deep it lies; null where it is no pair of numbers. */
function firstOf(coordinates: unknown): readonly number[] | null {
  if (!Array.isArray(coordinates)) return null;
  const [x, y] = coordinates;
  if (typeof x !== 'number') return firstOf(x);
  return typeof y === 'number' ? (coordinates as number[]) : null;
}

function fromGeometry(rows: readonly RawRow[]): GuessedPosition | null {
  const first = rows
    .map(({ geometry }) => (geometry && 'coordinates' in geometry ? firstOf(geometry.coordinates) : null))
    .filter((position) => position !== null);
  if (first.length < rows.length / 2 || first.length === 0) return null;
  const share = (test: (p: readonly number[]) => boolean) => first.filter(test).length / first.length;
  const onGrid = share(([x = 0, y = 0]) => Math.abs(x) > 400 || Math.abs(y) > 400) > 0.5;
  const swapped = !onGrid && share(([x = 0, y = 0]) => Math.abs(y) > 90 && Math.abs(x) <= 90) > 0.5;
  const why = swapped ? 'geometry, latitude first' : 'geometry';
  return { position: { from: 'geometry' }, latitudeFirst: swapped, onGrid, why };
}

/** Where the positions of a file are, degrees before grids, columns before cells. */
export function guessPosition(rows: readonly RawRow[], columns: readonly string[]): GuessedPosition {
  return (
    fromGeometry(rows) ??
    pair(rows, columns) ??
    cell(rows, columns) ?? {
      position: { from: 'none' },
      latitudeFirst: false,
      onGrid: false,
      why: 'no position found',
    }
  );
}
