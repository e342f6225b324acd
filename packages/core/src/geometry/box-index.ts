import Flatbush from 'flatbush';
import type { LonLat } from '../model/site.js';
import { planeAt } from './plane.js';

/** Static index over boxes in degrees. */
export interface BoxIndex {
  /** Numbers of the boxes that meet the given box, ascending. */
  readonly search: (west: number, south: number, east: number, north: number) => number[];
}

/** Where an index is kept: shared between threads, or not. */
export type IndexRoom = ArrayBufferConstructor | SharedArrayBufferConstructor;

/** An index as bytes that another thread, or a later run, can search too; null for no boxes. */
export type PackedIndex = ArrayBufferLike | null;

export function indexFrom(packed: PackedIndex): BoxIndex {
  if (packed === null) return { search: () => [] };
  const index = Flatbush.from(packed);
  return { search: (w, s, e, n) => index.search(w, s, e, n).sort((a, b) => a - b) };
}

/** Squares of half-width `radiusM(i)` metres around positions in degrees. */
export function packSquares(
  lons: ArrayLike<number>,
  lats: ArrayLike<number>,
  radiusM: (i: number) => number,
  room: IndexRoom = ArrayBuffer,
): PackedIndex {
  if (lons.length === 0) return null;
  const index = new Flatbush(lons.length, 16, Float64Array, room);
  let plane = planeAt(0, lats[0] as number);
  for (let i = 0; i < lons.length; i++) {
    const lon = lons[i] as number;
    const lat = lats[i] as number;
    // within a hundredth of a degree the scale is the same to 0.04 %: far below what a box must be good for
    if (Math.abs(lat - plane.lat) > 0.01) plane = planeAt(lon, lat);
    const dLon = radiusM(i) / plane.metresPerDegreeLon;
    const dLat = radiusM(i) / plane.metresPerDegreeLat;
    index.add(lon - dLon, lat - dLat, lon + dLon, lat + dLat);
  }
  index.finish();
  return index.data;
}

/**
 * Index over squares of half-width `radiusM[i]` metres around `positions[i]`, to be searched by boxes in degrees.
 * @param positions longitude and latitude, degrees.
 * @param radiusM one for each position, metres.
 */
export function indexAround(positions: readonly LonLat[], radiusM: ArrayLike<number>): BoxIndex {
  const lons = positions.map(([lon]) => lon);
  const lats = positions.map(([, lat]) => lat);
  return indexFrom(packSquares(lons, lats, (i) => radiusM[i] as number));
}

/** Box of a path: [west, south, east, north] in degrees. */
export function boxOf(path: readonly LonLat[]): [west: number, south: number, east: number, north: number] {
  let west = Infinity;
  let south = Infinity;
  let east = -Infinity;
  let north = -Infinity;
  for (const [lon, lat] of path) {
    if (lon < west) west = lon;
    if (lon > east) east = lon;
    if (lat < south) south = lat;
    if (lat > north) north = lat;
  }
  return [west, south, east, north];
}

/** Boxes of paths, each widened by `marginM` metres. */
export function packPaths(
  paths: readonly (readonly LonLat[])[],
  marginM: number,
  room: IndexRoom = ArrayBuffer,
): PackedIndex {
  if (paths.length === 0) return null;
  const index = new Flatbush(paths.length, 16, Float64Array, room);
  for (const path of paths) {
    const [west, south, east, north] = boxOf(path);
    const plane = planeAt(west, (south + north) / 2);
    const dLon = marginM / plane.metresPerDegreeLon;
    const dLat = marginM / plane.metresPerDegreeLat;
    index.add(west - dLon, south - dLat, east + dLon, north + dLat);
  }
  index.finish();
  return index.data;
}
