import { distance } from '@turf/turf';
import { Geodesic } from 'geographiclib-geodesic';
import { describe, expect, it } from 'vitest';
import { lonLatOf, planeFor, xOf, yOf } from '../../packages/core/src/geometry/plane.js';
import { lengthOf, polylineOf } from '../../packages/core/src/geometry/polyline.js';
import type { LonLat } from '../../packages/core/src/model/site.js';

/**
 * Karney, C. F. F. (2013): Algorithms for geodesics. Journal of Geodesy 87:43-55, as the package
 * geographiclib-geodesic, which solves the geodesic on WGS 84 to nanometres.
 *
 * Tolerance: 0.3 parts in a million (1.5 mm in 5 km), what `planeFor` claims. Against the geodesic a plane true at
 * the line's middle latitude leaves a term of the second order in length over earth radius, (5/6371)^2 = 0.6 ppm
 * times a twelfth or so and the squared tangent of the latitude. At 50 m that term is nothing and what is left is
 * the rounding of degrees, 15 digits of 180, about 1e-14 x 1e7 m over 50 m.
 */
const TOLERANCE_PPM: Readonly<Record<number, number>> = { 50: 0.001, 5000: 0.3 };

const BEARINGS = Array.from({ length: 72 }, (_, i) => 5 * i);
const LATITUDES = [0, 30, 45, 60, 70];
const LENGTHS_M = [50, 5000];
const CASES = LATITUDES.flatMap((lat) => LENGTHS_M.map((lengthM) => [lat, lengthM] as const));
const LON = 12.345;

/** The end of a geodesic from (LON, lat). */
function destination(lat: number, bearing: number, lengthM: number): LonLat {
  const { lon2, lat2 } = Geodesic.WGS84.Direct(lat, LON, bearing, lengthM);
  return [lon2 as number, lat2 as number];
}

const planeLength = (path: readonly LonLat[]): number => lengthOf(polylineOf(path, planeFor(path), false));

describe('distances in the plane of a line against the geodesic', () => {
  it.each(CASES)('at latitude %f over %f m, all round', (lat, lengthM) => {
    let worst = 0;
    let at = 0;
    for (const bearing of BEARINGS) {
      const got = planeLength([[LON, lat], destination(lat, bearing, lengthM)]);
      const ppm = 1e6 * (got / lengthM - 1);
      if (Math.abs(ppm) > Math.abs(worst)) [worst, at] = [ppm, bearing];
    }
    console.info(`geodesic, ${lengthM} m at ${lat} deg: worst ${worst.toExponential(1)} ppm, bearing ${at}`);
    expect(Math.abs(worst), `${worst} ppm at bearing ${at}`).toBeLessThan(TOLERANCE_PPM[lengthM] as number);
  });

  // a leg off the middle latitude is stretched east-west by tan(latitude) x (its distance north of the middle) over
  // the earth's radius: the plane of a bent line is true to that, a few millimetres in the first two of these
  it.each([
    [45, 180, 240],
    [60, 180, 240],
    [45, 2500, 2500],
  ])('agree at latitude %d for a line bent after %d m that goes on for %d m', (lat, firstM, secondM) => {
    const corner = destination(lat, 20, firstM);
    const { lon2, lat2 } = Geodesic.WGS84.Direct(corner[1], corner[0], 100, secondM);
    const path: LonLat[] = [[LON, lat], corner, [lon2 as number, lat2 as number]];
    const ppm = 1e6 * (planeLength(path) / (firstM + secondM) - 1);
    const allowed = 1e6 * Math.tan((Math.PI / 180) * lat) * (firstM / 2 / 6_371_000);
    console.info(
      `geodesic, bent line at ${lat} deg: ${ppm.toFixed(2)} ppm, allowed ${allowed.toFixed(1)} ppm`,
    );
    expect(Math.abs(ppm), `${ppm} ppm`).toBeLessThan(allowed);
  });

  // rounding: a degree of the plane holds 1e5 m to some 1e-10
  it('come back to the degrees they were taken from', () => {
    const from: LonLat = [LON, 60];
    const to = destination(60, 77, 5000);
    const plane = planeFor([from, to]);
    const back = lonLatOf(plane, xOf(plane, to[0]), yOf(plane, to[1]));
    expect(Math.abs(back[0] - to[0])).toBeLessThan(1e-12);
    expect(Math.abs(back[1] - to[1])).toBeLessThan(1e-12);
  });
});

describe('distances on a sphere, for comparison', () => {
  // a sphere of the mean radius cannot fit both the curvature along and across the meridian: the worst bearing is
  // off by 0.2-0.6 %, ten thousand times the plane's error; this is why the plane is used
  it.each(LATITUDES)('are off by 0.2 to 0.6 per cent somewhere round latitude %f', (lat) => {
    const errors = BEARINGS.map((bearing) => {
      const to = destination(lat, bearing, 5000);
      return 1000 * distance([LON, lat], [...to], { units: 'kilometers' }) - 5000;
    });
    const worst = Math.max(...errors.map(Math.abs)) / 5000;
    console.info(`sphere, 5 km at ${lat} deg: worst ${(100 * worst).toFixed(2)} %`);
    expect(worst).toBeGreaterThan(0.002);
    expect(worst).toBeLessThan(0.006);
  });
});
