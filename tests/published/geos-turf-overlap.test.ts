import { booleanPointInPolygon, circle, distance, lineIntersect } from '@turf/turf';
import initGeosJs from 'geos-wasm';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Interval, lengthWithin } from '../../packages/core/src/geometry/intervals.js';
import { type Circle, stretchesInside } from '../../packages/core/src/geometry/overlap.js';
import { lonLatOf, planeAt } from '../../packages/core/src/geometry/plane.js';
import type { Polyline } from '../../packages/core/src/geometry/polyline.js';
import { seeded } from '../scenes/seeded.js';

/**
 * Length of a line inside circles against two other programs: GEOS (C++, as geos-wasm) in the plane, and Turf on the
 * sphere. Neither knows a true circle: both are given polygons.
 *
 * Accounted for:
 * - polygon for circle. The circle lies between its inscribed and its circumscribed n-gon, so the true length lies
 *   between the two lengths that GEOS finds; nothing else is allowed but rounding. The radii differ by the factor
 *   cos(pi / n): 0.12 % for 64 corners, 0.0075 % for 256.
 * - sphere for ellipsoid (Turf). A metre of Turf's sphere is M / R of a metre north and N / R of one east (M, N the
 *   radii of curvature of WGS 84, R = 6,371,008.8 m), so both its circle and its lengths are scaled by something
 *   between the two.
 */
const ROUNDING_M = 1e-7;
const SPHERE_M = 6_371_008.8;

type Point = readonly [x: number, y: number];
interface Pair {
  readonly path: readonly Point[];
  readonly circles: readonly Circle[];
}

const random = seeded(20_260_301);
const between = (low: number, high: number): number => low + (high - low) * random();

/** A bent line of two to six points and circles about it, all within 60 m. */
function pair(circles: number): Pair {
  const points = 2 + Math.floor(random() * 5);
  return {
    path: Array.from({ length: points }, () => [between(-60, 60), between(-60, 60)] as const),
    circles: Array.from({ length: circles }, () => ({
      x: between(-40, 40),
      y: between(-40, 40),
      radiusM: between(1, 30),
    })),
  };
}

const PAIRS = Array.from({ length: 500 }, () => pair(1));
const THREES = Array.from({ length: 100 }, () => pair(3));

function polylineFrom(path: readonly Point[]): Polyline {
  const s = [0];
  path.slice(1).forEach(([x, y], i) => {
    const [x0, y0] = path[i] as Point;
    s.push((s[i] as number) + Math.hypot(x - x0, y - y0));
  });
  return {
    x: Float64Array.from(path, ([x]) => x),
    y: Float64Array.from(path, ([, y]) => y),
    s: Float64Array.from(s),
  };
}

/** Our length; `scale` widens or narrows the circles. */
function ours({ path, circles }: Pair, scale = 1): number {
  const inside: Interval[] = stretchesInside(
    polylineFrom(path),
    circles.map((c) => ({ ...c, radiusM: scale * c.radiusM })),
  );
  return lengthWithin(inside, 0, Number.POSITIVE_INFINITY);
}

const ring = ({ x, y, radiusM }: Circle, corners: number, widen: number): string => {
  const points = Array.from({ length: corners }, (_, i) => {
    const angle = (2 * Math.PI * i) / corners;
    return `${x + widen * radiusM * Math.cos(angle)} ${y + widen * radiusM * Math.sin(angle)}`;
  });
  return `((${[...points, points[0]].join(', ')}))`;
};

let geos: Awaited<ReturnType<typeof initGeosJs>>;
beforeAll(async () => {
  geos = await initGeosJs();
});

function geometryOf(wkt: string): number {
  const reader = geos.GEOSWKTReader_create();
  const bytes = wkt.length + 1;
  const text = geos.Module._malloc(bytes);
  geos.Module.stringToUTF8(wkt, text, bytes);
  const geometry = geos.GEOSWKTReader_read(reader, text);
  geos.Module._free(text);
  geos.GEOSWKTReader_destroy(reader);
  return geometry;
}

/** GEOS: length of the line inside the union of polygons for the circles. */
function byGeos({ path, circles }: Pair, corners: number, widen: number): number {
  const line = geometryOf(`LINESTRING (${path.map(([x, y]) => `${x} ${y}`).join(', ')})`);
  const rings = circles.map((c) => ring(c, corners, widen)).join(', ');
  const many = geometryOf(`MULTIPOLYGON (${rings})`);
  // the union only where there are several: of one polygon it is the polygon
  const area = circles.length > 1 ? geos.GEOSUnaryUnion(many) : many;
  const inside = geos.GEOSIntersection(line, area);
  const value = geos.Module._malloc(8);
  geos.GEOSLength(inside, value);
  const length = geos.Module.getValue(value, 'double');
  for (const geometry of new Set([line, many, area, inside])) geos.GEOSGeom_destroy(geometry);
  geos.Module._free(value);
  return length;
}

describe.each([
  ['one circle', PAIRS],
  ['three circles, overlapping or not', THREES],
] as const)('length of a line inside %s, against GEOS', (_, pairs) => {
  it.each([64, 256])('lies between the inscribed and the circumscribed polygon of %d corners', (corners) => {
    const shrink = Math.cos(Math.PI / corners);
    let widest = 0;
    let meeting = 0;
    let off = 0;
    for (const scene of pairs) {
      const [low, high] = [byGeos(scene, corners, 1), byGeos(scene, corners, 1 / shrink)];
      const got = ours(scene);
      const shown = `${JSON.stringify(scene)}: ${low} <= ${got} <= ${high}`;
      expect(got, shown).toBeGreaterThanOrEqual(low - ROUNDING_M);
      expect(got, shown).toBeLessThanOrEqual(high + ROUNDING_M);
      if (high > 0) meeting++;
      if (high - low > widest) widest = high - low;
      off = Math.max(off, Math.abs(got - (low + high) / 2));
    }
    console.info(
      `GEOS, ${corners} corners, ${pairs.length} pairs, ${meeting} meeting: brackets up to ${widest.toFixed(3)} m ` +
        `wide, ours up to ${off.toFixed(3)} m from their middle`,
    );
    expect(meeting).toBeGreaterThan(pairs.length / 3);
  });
});

/** Turf: length on its sphere of the line inside its polygon of 256 corners about the circle. */
function byTurf({ path, circles }: Pair, lon: number, lat: number): number {
  const plane = planeAt(lon, lat);
  const { x, y, radiusM } = circles[0] as Circle;
  const area = circle(lonLatOf(plane, x, y), radiusM, { units: 'meters', steps: 256 });
  let length = 0;
  for (let i = 0; i + 1 < path.length; i++) {
    const [a, b] = [path[i] as Point, path[i + 1] as Point].map(([px, py]) => lonLatOf(plane, px, py)) as [
      [number, number],
      [number, number],
    ];
    const along = ([px, py]: readonly number[]): number =>
      Math.hypot((px as number) - a[0], (py as number) - a[1]) / Math.hypot(b[0] - a[0], b[1] - a[1]);
    const at = (t: number): [number, number] => [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])];
    const edge = { type: 'LineString' as const, coordinates: [a, b] };
    const cuts = lineIntersect(edge, area).features.map((f) => along(f.geometry.coordinates));
    const stops = [0, ...cuts.sort((p, q) => p - q), 1];
    for (let k = 0; k + 1 < stops.length; k++) {
      const [t0, t1] = [stops[k] as number, stops[k + 1] as number];
      if (!booleanPointInPolygon(at((t0 + t1) / 2), area)) continue;
      length += distance(at(t0), at(t1), { units: 'meters' });
    }
  }
  return length;
}

describe('length of a line inside a circle, against Turf', () => {
  // over the 120 m of a scene the meridians draw together by 2e-5 of their distance at 60 degrees: a ten-thousandth
  const CURVED = 1e-4;

  it.each([0, 45, 60])('agrees at latitude %d once the sphere is allowed for', (lat) => {
    const plane = planeAt(-93, lat);
    const onSphere = (Math.PI / 180) * SPHERE_M;
    const east = plane.metresPerDegreeLon / (onSphere * Math.cos((Math.PI / 180) * lat));
    const north = plane.metresPerDegreeLat / onSphere;
    const [least, most] = [Math.min(east, north), Math.max(east, north)];
    const shrink = Math.cos(Math.PI / 256);
    let sum = 0;
    let turfSum = 0;
    for (const scene of PAIRS) {
      const got = byTurf(scene, -93, lat);
      const low = (ours(scene, least * shrink * (1 - CURVED)) / most) * (1 - CURVED);
      const high = (ours(scene, most * (1 + CURVED)) / least) * (1 + CURVED);
      const shown = `${JSON.stringify(scene)}: ${low} <= ${got} <= ${high}`;
      expect(got, shown).toBeGreaterThanOrEqual(low - ROUNDING_M);
      expect(got, shown).toBeLessThanOrEqual(high + ROUNDING_M);
      sum += ours(scene);
      turfSum += got;
    }
    const off = 100 * (turfSum / sum - 1);
    console.info(
      `Turf at ${lat} deg, ${PAIRS.length} pairs: ${off.toFixed(3)} % off in all; ` +
        `sphere off by ${(100 * (east - 1)).toFixed(2)} % east, ${(100 * (north - 1)).toFixed(2)} % north`,
    );
    // in all the error of the sphere, at most, in the radius; the scale of lengths cancels it in part
    expect(Math.abs(off)).toBeLessThan(100 * Math.max(most - 1, 1 - least) + 0.05);
  });
});
