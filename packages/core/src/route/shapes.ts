import { type Plane, xOf, yOf } from '../geometry/plane.js';
import type { LonLat } from '../model/site.js';

/** A path in plane metres, edge by edge. */
export interface Edges {
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/** An outline (even-odd over its rings) or a path, with its box. */
export interface Shape {
  readonly closed: boolean;
  readonly paths: readonly Edges[];
  readonly west: number;
  readonly south: number;
  readonly east: number;
  readonly north: number;
}

/** Shape of rings or paths given in degrees. */
export function shapeOf(paths: readonly (readonly LonLat[])[], plane: Plane, closed: boolean): Shape {
  const projected = paths.map((path) => ({
    x: Float64Array.from(path, ([lon]) => xOf(plane, lon)),
    y: Float64Array.from(path, ([, lat]) => yOf(plane, lat)),
  }));
  return shapeOfEdges(projected, closed);
}

export function shapeOfEdges(paths: readonly Edges[], closed: boolean): Shape {
  let west = Infinity;
  let south = Infinity;
  let east = -Infinity;
  let north = -Infinity;
  for (const { x, y } of paths) {
    for (let i = 0; i < x.length; i++) {
      west = Math.min(west, x[i] as number);
      east = Math.max(east, x[i] as number);
      south = Math.min(south, y[i] as number);
      north = Math.max(north, y[i] as number);
    }
  }
  return { closed, paths, west, south, east, north };
}

/** True inside an outline. */
export function holds(shape: Shape, px: number, py: number): boolean {
  if (!shape.closed || px < shape.west || px > shape.east || py < shape.south || py > shape.north)
    return false;
  let inside = false;
  for (const { x, y } of shape.paths) {
    for (let i = 0, k = x.length - 1; i < x.length; k = i++) {
      const yi = y[i] as number;
      const yk = y[k] as number;
      if (yi > py === yk > py) continue;
      const at = (x[i] as number) + ((py - yi) / (yk - yi)) * ((x[k] as number) - (x[i] as number));
      if (px < at) inside = !inside;
    }
  }
  return inside;
}

/** Whether the box of a shape, widened, meets the box of a straight. */
export function boxMeets(s: Shape, ax: number, ay: number, bx: number, by: number, margin: number): boolean {
  return (
    Math.max(ax, bx) >= s.west - margin &&
    Math.min(ax, bx) <= s.east + margin &&
    Math.max(ay, by) >= s.south - margin &&
    Math.min(ay, by) <= s.north + margin
  );
}

/** Squared distance from a place to a straight. */
export function distance2To(px: number, py: number, ax: number, ay: number, bx: number, by: number): number {
  const dx = bx - ax;
  const dy = by - ay;
  const length2 = dx * dx + dy * dy;
  const t = length2 === 0 ? 0 : Math.min(1, Math.max(0, ((px - ax) * dx + (py - ay) * dy) / length2));
  const ex = px - ax - t * dx;
  const ey = py - ay - t * dy;
  return ex * ex + ey * ey;
}

/** Distance from a place to the nearest edge of a shape. */
export function distanceToEdges(shape: Shape, px: number, py: number): number {
  let best = Infinity;
  for (const { x, y } of shape.paths) {
    for (let i = 0; i + 1 < x.length; i++) {
      const d2 = distance2To(px, py, x[i] as number, y[i] as number, x[i + 1] as number, y[i + 1] as number);
      if (d2 < best) best = d2;
    }
  }
  return Math.sqrt(best);
}

/** Adds to `into` the fractions of straight a-b at which it crosses an edge of the shape. */
export function addCrossings(
  shape: Shape,
  ax: number,
  ay: number,
  bx: number,
  by: number,
  into: number[],
): void {
  const rx = bx - ax;
  const ry = by - ay;
  for (const { x, y } of shape.paths) {
    for (let i = 0; i + 1 < x.length; i++) {
      const cx = x[i] as number;
      const cy = y[i] as number;
      const qx = (x[i + 1] as number) - cx;
      const qy = (y[i + 1] as number) - cy;
      const det = rx * qy - ry * qx;
      if (det === 0) continue;
      const t = ((cx - ax) * qy - (cy - ay) * qx) / det;
      const u = ((cx - ax) * ry - (cy - ay) * rx) / det;
      if (t > 0 && t < 1 && u >= 0 && u <= 1) into.push(t);
    }
  }
}

/** True where straight a-b comes nearer than `within` to an edge, or crosses one. */
export function comesNear(
  shape: Shape,
  ax: number,
  ay: number,
  bx: number,
  by: number,
  within: number,
): boolean {
  if (!boxMeets(shape, ax, ay, bx, by, within)) return false;
  const w2 = within * within;
  const rx = bx - ax;
  const ry = by - ay;
  for (const { x, y } of shape.paths) {
    for (let i = 0; i + 1 < x.length; i++) {
      const cx = x[i] as number;
      const cy = y[i] as number;
      const dx = x[i + 1] as number;
      const dy = y[i + 1] as number;
      const det = rx * (dy - cy) - ry * (dx - cx);
      if (det !== 0) {
        const t = ((cx - ax) * (dy - cy) - (cy - ay) * (dx - cx)) / det;
        const u = ((cx - ax) * ry - (cy - ay) * rx) / det;
        if (t >= 0 && t <= 1 && u >= 0 && u <= 1) return true;
      }
      if (within === 0) continue;
      if (
        distance2To(cx, cy, ax, ay, bx, by) < w2 ||
        distance2To(dx, dy, ax, ay, bx, by) < w2 ||
        distance2To(ax, ay, cx, cy, dx, dy) < w2 ||
        distance2To(bx, by, cx, cy, dx, dy) < w2
      ) {
        return true;
      }
    }
  }
  return false;
}
