import type { LonLat } from '../model/site.js';
import { type Plane, xOf, yOf } from './plane.js';

/** A path in plane metres with the running length at each vertex. */
export interface Polyline {
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Station of each vertex; the last one is the length. */
  readonly s: Float64Array;
}

/**
 * A path in plane metres with its running length.
 * @param path places in degrees.
 * @param plane as `planeFor` gives it.
 * @param reversed start at the last place.
 */
export function polylineOf(path: readonly LonLat[], plane: Plane, reversed: boolean): Polyline {
  const n = path.length;
  const x = new Float64Array(n);
  const y = new Float64Array(n);
  const s = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const [lon, lat] = path[reversed ? n - 1 - i : i] as LonLat;
    x[i] = xOf(plane, lon);
    y[i] = yOf(plane, lat);
    if (i > 0) {
      const dx = (x[i] as number) - (x[i - 1] as number);
      const dy = (y[i] as number) - (y[i - 1] as number);
      s[i] = (s[i - 1] as number) + Math.sqrt(dx * dx + dy * dy);
    }
  }
  return { x, y, s };
}

export const lengthOf = (line: Polyline): number => line.s[line.s.length - 1] as number;

/** Index of the edge that holds station `s`. */
function edgeAt(line: Polyline, s: number): number {
  let i = 1;
  const last = line.s.length - 1;
  while (i < last && (line.s[i] as number) < s) i++;
  return i - 1;
}

/** Point at a station, clamped to the line's ends. */
export function pointAt(line: Polyline, station: number): [x: number, y: number] {
  const i = edgeAt(line, station);
  const s0 = line.s[i] as number;
  const s1 = line.s[i + 1] as number;
  const t = s1 > s0 ? Math.min(1, Math.max(0, (station - s0) / (s1 - s0))) : 0;
  const x0 = line.x[i] as number;
  const y0 = line.y[i] as number;
  return [x0 + t * ((line.x[i + 1] as number) - x0), y0 + t * ((line.y[i + 1] as number) - y0)];
}

/**
 * Nearest point of a line to a place between two stations.
 * @param line in plane metres.
 * @param x metres east.
 * @param y metres north.
 * @param from station to begin at, metres; the start where not given.
 * @param to station to end at, metres; the end where not given.
 * @returns its station and its distance from the place, both in metres.
 */
export function nearestOn(
  line: Polyline,
  x: number,
  y: number,
  from = 0,
  to = Infinity,
): { station: number; distance: number } {
  let best = Infinity;
  let station = from;
  for (let i = 0; i + 1 < line.s.length; i++) {
    const s0 = line.s[i] as number;
    const s1 = line.s[i + 1] as number;
    if (s1 < from || s0 > to || s1 <= s0) continue;
    const ux = ((line.x[i + 1] as number) - (line.x[i] as number)) / (s1 - s0);
    const uy = ((line.y[i + 1] as number) - (line.y[i] as number)) / (s1 - s0);
    const along = (x - (line.x[i] as number)) * ux + (y - (line.y[i] as number)) * uy;
    const lo = Math.max(0, from - s0);
    const hi = Math.min(s1, to) - s0;
    const a = Math.min(hi, Math.max(lo, along));
    const dx = x - ((line.x[i] as number) + a * ux);
    const dy = y - ((line.y[i] as number) + a * uy);
    const d2 = dx * dx + dy * dy;
    if (d2 < best) {
      best = d2;
      station = s0 + a;
    }
  }
  return { station, distance: Math.sqrt(best) };
}

/** The part of the line between two stations, as points in plane metres. */
export function sliceOf(line: Polyline, from: number, to: number): [x: number, y: number][] {
  const points = [pointAt(line, from)];
  for (let i = 1; i + 1 < line.s.length; i++) {
    const s = line.s[i] as number;
    if (s > from && s < to) points.push([line.x[i] as number, line.y[i] as number]);
  }
  points.push(pointAt(line, to));
  return points;
}
