import { crossesPath } from '../geometry/crossing.js';
import { type Plane, xOf, yOf } from '../geometry/plane.js';
import type { LonLat, Site } from '../model/site.js';

interface PlanePath {
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/** What stands in the ground between stems and pipe, in the plane of one line. */
export interface Ground {
  readonly paved: readonly PlanePath[];
  readonly barriers: readonly PlanePath[];
}

const HARD = ['building', 'paving', 'pool', 'wall'];

function project(path: readonly LonLat[], plane: Plane): PlanePath {
  return {
    x: Float64Array.from(path, ([lon]) => xOf(plane, lon)),
    y: Float64Array.from(path, ([, lat]) => yOf(plane, lat)),
  };
}

/** @returns null where nothing stands in the way anywhere. */
export function groundOf(site: Site, plane: Plane): Ground | null {
  if (site.obstacles.length === 0 && site.barriers.length === 0) return null;
  const paved: PlanePath[] = [];
  for (const { type, shape } of site.obstacles) {
    if (!HARD.includes(type)) continue;
    if (shape.type === 'path') paved.push(project(shape.path, plane));
    else for (const ring of shape.rings) paved.push(project(ring, plane));
  }
  return { paved, barriers: site.barriers.map((b) => project(b.path, plane)) };
}

/** True where the way from stem to point crosses paved or built ground. */
export function crossesPaved(ground: Ground, ax: number, ay: number, bx: number, by: number): boolean {
  return ground.paved.some(({ x, y }) => crossesPath(ax, ay, bx, by, x, y));
}

/**
 * Shortest way round the ends of the barriers between stem and point, metres; null where none is between.
 * With several barriers in the way the longest single way round counts.
 */
export function wayRound(ground: Ground, ax: number, ay: number, bx: number, by: number): number | null {
  let longest: number | null = null;
  for (const { x, y } of ground.barriers) {
    if (!crossesPath(ax, ay, bx, by, x, y)) continue;
    let shortest = Infinity;
    for (const end of [0, x.length - 1]) {
      const ex = x[end] as number;
      const ey = y[end] as number;
      shortest = Math.min(shortest, Math.hypot(ex - ax, ey - ay) + Math.hypot(bx - ex, by - ey));
    }
    longest = Math.max(longest ?? 0, shortest);
  }
  return longest;
}
