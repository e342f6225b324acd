import type { LonLat } from '../model/site.js';

/** WGS 84 ellipsoid: equatorial radius in metres and flattening (NGA.STND.0036). */
const A = 6_378_137;
const F = 1 / 298.257223563;
const E2 = F * (2 - F);
const RADIANS = Math.PI / 180;

/**
 * A flat metric plane that is true along one drain line: metres per degree from the WGS 84 radii of curvature
 * at the line's middle latitude. Against the geodesic a straight line is off by less than 0.3 ppm out to 5 km and
 * a bent yard line by 5-10 ppm; one plane for a whole town would be off by up to 0.4 % ten kilometres from its
 * centre.
 */
export interface Plane {
  readonly lon: number;
  readonly lat: number;
  readonly metresPerDegreeLon: number;
  readonly metresPerDegreeLat: number;
}

/** Plane with its origin at `lon`, `lat` and its scale taken at that latitude. Degrees. */
export function planeAt(lon: number, lat: number): Plane {
  const sin = Math.sin(lat * RADIANS);
  const w2 = 1 - E2 * sin * sin;
  const n = A / Math.sqrt(w2);
  return {
    lon,
    lat,
    metresPerDegreeLon: n * Math.cos(lat * RADIANS) * RADIANS,
    metresPerDegreeLat: ((n * (1 - E2)) / w2) * RADIANS,
  };
}

/**
 * Plane for a path: origin in the middle of its box.
 * @param path at least one place, degrees.
 */
export function planeFor(path: readonly LonLat[]): Plane {
  let west = Infinity;
  let east = -Infinity;
  let south = Infinity;
  let north = -Infinity;
  for (const [lon, lat] of path) {
    if (lon < west) west = lon;
    if (lon > east) east = lon;
    if (lat < south) south = lat;
    if (lat > north) north = lat;
  }
  return planeAt((west + east) / 2, (south + north) / 2);
}

/**
 * Metres east of the plane's origin.
 * @param plane to be used near the path that it was made for.
 * @param lon degrees.
 */
export const xOf = (plane: Plane, lon: number): number => (lon - plane.lon) * plane.metresPerDegreeLon;
/**
 * Metres north of the plane's origin.
 * @param plane to be used near the path that it was made for.
 * @param lat degrees.
 */
export const yOf = (plane: Plane, lat: number): number => (lat - plane.lat) * plane.metresPerDegreeLat;

/**
 * Back to degrees.
 * @param plane that the metres are of.
 * @param x metres east.
 * @param y metres north.
 */
export function lonLatOf(plane: Plane, x: number, y: number): [lon: number, lat: number] {
  return [plane.lon + x / plane.metresPerDegreeLon, plane.lat + y / plane.metresPerDegreeLat];
}
