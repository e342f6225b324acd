import {
  type LonLat,
  nearestOn,
  type Polyline,
  planeFor,
  polylineOf,
  type SegmentResult,
  type Site,
  stretchesInside,
  type TreeZones,
} from '@rootreach/core';
import type { CrewInput } from './crew-input.js';

/** The stretch on its own plane, metres from its lower end. */
export interface Stretch {
  readonly polyline: Polyline;
  readonly xy: (position: LonLat) => readonly [x: number, y: number];
}

export function stretchOf({ geometry }: SegmentResult): Stretch {
  const path = geometry.coordinates.map(([lon, lat]): LonLat => [lon as number, lat as number]);
  const plane = planeFor(path);
  return {
    polyline: polylineOf(path, plane, false),
    xy: ([lon, lat]) => [
      (lon - plane.lon) * plane.metresPerDegreeLon,
      (lat - plane.lat) * plane.metresPerDegreeLat,
    ],
  };
}

/** Limits by one tree: distances from the stem, and the stretches inside twelve trunk widths by station of the line. */
export interface TreeLimit {
  readonly tree: TreeZones;
  readonly nearestM: number;
  readonly insideM: readonly (readonly [fromM: number, toM: number])[];
  readonly insideNoDig: boolean;
}

const NO_DIG = 3;
const HAND_DIG = 12;

/** Trees within twelve trunk widths of the stretch, the nearest first. */
export function treeLimits({ result, segment }: CrewInput): TreeLimit[] {
  const { polyline, xy } = stretchOf(segment);
  return result.trees
    .map((tree): TreeLimit => {
      const [x, y] = xy([tree.lon, tree.lat]);
      const circle = (trunks: number) => [{ x, y, radiusM: trunks * tree.stemDiameterM }];
      const nearestM = nearestOn(polyline, x, y).distance;
      return {
        tree,
        nearestM,
        insideM: stretchesInside(polyline, circle(HAND_DIG)).map(
          ([from, to]) => [segment.startM + from, segment.startM + to] as const,
        ),
        insideNoDig: nearestM < NO_DIG * tree.stemDiameterM,
      };
    })
    .filter(({ insideM }) => insideM.length > 0)
    .sort((a, b) => a.nearestM - b.nearestM);
}

export interface NearUtility {
  readonly name: string | null;
  readonly nearestM: number;
  /** Station of the line where they are nearest. */
  readonly atM: number;
}

/** A utility farther away than this is no business of this trench, metres (judgement). */
const FAR_M = 6;
/** Steps along a utility's path at which its distance is taken, metres. */
const STEP_M = 0.1;

/** Points along a path, no farther apart than a hand. */
function pointsAlong(path: readonly (readonly [number, number])[]): (readonly [number, number])[] {
  return path.flatMap(([x0, y0], i) => {
    const next = path[i + 1];
    if (next === undefined) return [[x0, y0] as const];
    const steps = Math.max(1, Math.ceil(Math.hypot(next[0] - x0, next[1] - y0) / STEP_M));
    return Array.from(
      { length: steps },
      (_, k) => [x0 + ((next[0] - x0) * k) / steps, y0 + ((next[1] - y0) * k) / steps] as const,
    );
  });
}

/** Utilities drawn near the stretch, the nearest first. */
export function utilitiesNear(site: Site, segment: SegmentResult): NearUtility[] {
  const { polyline, xy } = stretchOf(segment);
  return site.obstacles
    .filter(({ type }) => type === 'utility')
    .flatMap(({ name, shape }) => {
      const paths = shape.type === 'area' ? shape.rings : [shape.path];
      const nearest = paths
        .flatMap((path) => pointsAlong(path.map(xy)))
        .map(([x, y]) => nearestOn(polyline, x, y))
        .sort((a, b) => a.distance - b.distance)[0];
      if (nearest === undefined || nearest.distance > FAR_M) return [];
      return [{ name, nearestM: nearest.distance, atM: segment.startM + nearest.station }];
    })
    .sort((a, b) => a.nearestM - b.nearestM);
}
