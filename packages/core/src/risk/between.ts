import { crossesPath } from '../geometry/crossing.js';
import { type Plane, xOf, yOf } from '../geometry/plane.js';
import type { LonLat, Site } from '../model/site.js';

interface PlanePath {
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Its box: most things on a lot lie nowhere near the way from one stem to one joint. */
  readonly west: number;
  readonly east: number;
  readonly south: number;
  readonly north: number;
}

/** What stands in the ground between stems and pipe, in the plane of one line. */
export interface Ground {
  readonly paved: readonly PlanePath[];
  readonly barriers: readonly PlanePath[];
}

/** Far above what rounding can move a crossing, metres. */
const NEAR_M = 1e-6;
const HARD = ['building', 'paving', 'pool', 'wall'];

function project(path: readonly LonLat[], plane: Plane): PlanePath {
  const x = Float64Array.from(path, ([lon]) => xOf(plane, lon));
  const y = Float64Array.from(path, ([, lat]) => yOf(plane, lat));
  return { x, y, west: Math.min(...x), east: Math.max(...x), south: Math.min(...y), north: Math.max(...y) };
}

/** False where the way from a to b cannot come near a path. Touching counts as near, whatever the rounding. */
function mayCross(path: PlanePath, ax: number, ay: number, bx: number, by: number): boolean {
  if (
    (ax < path.west - NEAR_M && bx < path.west - NEAR_M) ||
    (ax > path.east + NEAR_M && bx > path.east + NEAR_M)
  )
    return false;
  return !(
    (ay < path.south - NEAR_M && by < path.south - NEAR_M) ||
    (ay > path.north + NEAR_M && by > path.north + NEAR_M)
  );
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
  for (const path of ground.paved) {
    if (mayCross(path, ax, ay, bx, by) && crossesPath(ax, ay, bx, by, path.x, path.y)) return true;
  }
  return false;
}

/**
 * Shortest way round the ends of the barriers between stem and point, metres; null where none is between.
 * With several barriers in the way the longest single way round counts.
 */
export function wayRound(ground: Ground, ax: number, ay: number, bx: number, by: number): number | null {
  let longest: number | null = null;
  for (const path of ground.barriers) {
    const { x, y } = path;
    if (!mayCross(path, ax, ay, bx, by) || !crossesPath(ax, ay, bx, by, x, y)) continue;
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
