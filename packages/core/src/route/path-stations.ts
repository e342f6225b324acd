import type { Point } from '../geometry/disc-less-strip.js';

/** Length of a path, metres. */
export function pathLength(points: readonly Point[]): number {
  let sum = 0;
  for (let i = 0; i + 1 < points.length; i++) {
    const [a, b] = [points[i], points[i + 1]] as [Point, Point];
    sum += Math.hypot(b[0] - a[0], b[1] - a[1]);
  }
  return sum;
}

/** Place on a path at a station, within its ends. */
export function pointOnPath(points: readonly Point[], stationM: number): Point {
  let s = 0;
  for (let i = 0; i + 1 < points.length; i++) {
    const [a, b] = [points[i], points[i + 1]] as [Point, Point];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (stationM <= s + length && length > 0) {
      const t = Math.max(0, (stationM - s) / length);
      return [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])];
    }
    s += length;
  }
  return points[points.length - 1] as Point;
}

/** The part of a path between two stations. */
export function sliceOfPath(points: readonly Point[], fromM: number, toM: number): Point[] {
  const slice: Point[] = [pointOnPath(points, fromM)];
  let s = 0;
  for (let i = 1; i + 1 < points.length; i++) {
    const [a, b] = [points[i - 1], points[i]] as [Point, Point];
    s += Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (s > fromM + 1e-6 && s < toM - 1e-6) slice.push(b);
  }
  slice.push(pointOnPath(points, toM));
  return slice;
}
