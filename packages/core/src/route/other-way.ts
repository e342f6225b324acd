import type { Point } from '../geometry/disc-less-strip.js';
import type { CostField } from './cost-field.js';
import { type Found, type SearchOptions, searchGrid, type Target } from './search.js';

/** Ground this near to the first way is made dearer, metres, by this share; about its ends it stays as it is. */
const BESIDE_M = 1.5;
const DEARER = 0.12;
const ENDS_M = 3;
/** A way that is dearer by more than this share over the lattice is not drawn out (judgement). */
const WORTH_DRAWING = 0.03;

/** Prices of the nodes with the ground along a way dearer. */
function dearerAlong({ grid, perM }: CostField, points: readonly Point[]): Float64Array {
  const { x0, y0, cellM, columns, rows } = grid;
  const raised = perM.slice();
  const [from, to] = [points[0], points.at(-1)] as [Point, Point];
  const reach = Math.ceil(BESIDE_M / cellM);
  for (const [x, y] of points) {
    if (Math.min(Math.hypot(x - from[0], y - from[1]), Math.hypot(x - to[0], y - to[1])) < ENDS_M) continue;
    const [u, v] = [Math.round((x - x0) / cellM), Math.round((y - y0) / cellM)];
    for (let k = Math.max(0, v - reach); k <= Math.min(rows - 1, v + reach); k++) {
      for (let i = Math.max(0, u - reach); i <= Math.min(columns - 1, u + reach); i++) {
        const at = k * columns + i;
        raised[at] = (perM[at] as number) * (1 + DEARER);
      }
    }
  }
  return raised;
}

function priceOf(field: CostField, points: readonly Point[]): number {
  let sum = 0;
  for (let i = 0; i + 1 < points.length; i++) {
    const [a, b] = [points[i], points[i + 1]] as [Point, Point];
    sum += field.between(a[0], a[1], b[0], b[1]);
  }
  return sum;
}

/**
 * Another way that costs nearly the same over the lattice, such as the other side of a house: which of the two is the
 * cheaper only shows once both are drawn straight. Null where there is none.
 */
export function otherWay(
  field: CostField,
  first: Found,
  from: Point,
  to: readonly Target[],
  options: SearchOptions,
): Found | null {
  const raised = { ...field, perM: dearerAlong(field, first.points) };
  const found = searchGrid(raised, from, to, options);
  if (found === null) return null;
  const total = ({ points, target }: Found): number => priceOf(field, points) + (target.cost ?? 0);
  return total(found) <= total(first) * (1 + WORTH_DRAWING) ? found : null;
}
