import type { Point } from '../geometry/disc-less-strip.js';
import { type RouteGrid, valueAt } from './grid.js';
import type { SearchFall } from './search.js';

/** Looked at this often, metres. */
const STEP_M = 1;

export interface ShallowLine {
  /** Price of what lies deeper than it must; Infinity where a pipe can't fall within the limits. */
  readonly cost: number;
  /** Invert at the end, metres. */
  readonly endM: number;
}

/** The shallowest pipe that falls along a path, by the ground at the nodes. */
export function shallowLine(
  fall: SearchFall,
  grid: RouteGrid,
  points: readonly Point[],
  outletM: number,
): ShallowLine {
  let invertM = fall.startM;
  let cost = 0;
  for (let i = 0; i + 1 < points.length; i++) {
    const [a, b] = [points[i], points[i + 1]] as [Point, Point];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const parts = Math.max(1, Math.ceil(length / STEP_M));
    for (let k = 1; k <= parts; k++) {
      const [x, y] = [a[0] + ((b[0] - a[0]) * k) / parts, a[1] + ((b[1] - a[1]) * k) / parts];
      invertM -= (fall.minFall * length) / parts;
      const ground = valueAt(grid, fall.groundM, x, y);
      if (Number.isNaN(ground)) continue;
      invertM = Math.min(invertM, valueAt(grid, fall.capM, x, y));
      const last = i + 2 === points.length && k === parts;
      if (!last && invertM < valueAt(grid, fall.floorM, x, y) - 1e-9)
        return { cost: Infinity, endM: -Infinity };
      cost += (fall.deeperPerM * length * Math.max(0, ground - invertM - fall.leastDepthM)) / parts;
    }
  }
  return invertM < outletM - 1e-9 ? { cost: Infinity, endM: invertM } : { cost, endM: invertM };
}
