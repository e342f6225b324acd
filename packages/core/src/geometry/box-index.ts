import Flatbush from 'flatbush';
import type { LonLat } from '../model/site.js';
import { planeAt } from './plane.js';

/** Static index over boxes in degrees. */
export interface BoxIndex {
  /** Numbers of the boxes that meet the given box, ascending. */
  readonly search: (west: number, south: number, east: number, north: number) => number[];
}

const EMPTY: BoxIndex = { search: () => [] };

/** Index over squares of half-width `radiusM[i]` metres around `positions[i]`. */
export function indexAround(positions: readonly LonLat[], radiusM: ArrayLike<number>): BoxIndex {
  if (positions.length === 0) return EMPTY;
  const index = new Flatbush(positions.length);
  let plane = planeAt(0, (positions[0] as LonLat)[1]);
  for (let i = 0; i < positions.length; i++) {
    const [lon, lat] = positions[i] as LonLat;
    // within a hundredth of a degree the scale is the same to 0.04 %: far below what a box must be good for
    if (Math.abs(lat - plane.lat) > 0.01) plane = planeAt(lon, lat);
    const dLon = (radiusM[i] as number) / plane.metresPerDegreeLon;
    const dLat = (radiusM[i] as number) / plane.metresPerDegreeLat;
    index.add(lon - dLon, lat - dLat, lon + dLon, lat + dLat);
  }
  index.finish();
  return { search: (w, s, e, n) => index.search(w, s, e, n).sort((a, b) => a - b) };
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

/** Index over the boxes of paths, each widened by `marginM` metres. */
export function indexPaths(paths: readonly (readonly LonLat[])[], marginM: number): BoxIndex {
  if (paths.length === 0) return EMPTY;
  const index = new Flatbush(paths.length);
  for (const path of paths) {
    const [west, south, east, north] = boxOf(path);
    const plane = planeAt(west, (south + north) / 2);
    const dLon = marginM / plane.metresPerDegreeLon;
    const dLat = marginM / plane.metresPerDegreeLat;
    index.add(west - dLon, south - dLat, east + dLon, north + dLat);
  }
  index.finish();
  return { search: (w, s, e, n) => index.search(w, s, e, n).sort((a, b) => a - b) };
}
