import type { Point } from '../geometry/disc-less-strip.js';
import type { Corner } from './cheapest-chain.js';
import type { CostField } from './cost-field.js';
import { otherWay } from './other-way.js';
import { type Found, type SearchFall, searchGrid, type Target } from './search.js';
import { smoothPath } from './smooth.js';

export interface PathOptions {
  /** Currency added to every metre: the price of length where fall is short. */
  readonly lengthPrice?: number;
  readonly fall?: SearchFall;
  /** What the whole of a path costs besides its straights and corners; Infinity where it may not be. */
  readonly whole?: (points: readonly Point[]) => number;
  /** What a turn costs; nothing where not given. */
  readonly corner?: Corner;
  readonly shouldStop?: () => boolean;
  /** True to draw out only the best way over the lattice, not also another that costs nearly the same. */
  readonly quick?: boolean;
}

/** A path from one place to another with what it costs by its field. */
export interface CheapestPath {
  readonly points: readonly Point[];
  readonly target: Target;
  readonly cost: number;
  /** Cost of the best way over the lattice, before it was smoothed. */
  readonly gridCost: number;
}

/**
 * Cheapest path over a field from a place to the cheapest of several: found on the lattice, then drawn straight in
 * the plane by the true cost.
 * @returns null where no way leads there, or it was stopped.
 */
export function cheapestPath(
  field: CostField,
  from: Point,
  to: readonly Target[],
  options: PathOptions = {},
): CheapestPath | null {
  const first = searchGrid(field, from, to, options);
  if (first === null) return null;
  const drawn = (found: Found): CheapestPath => {
    const { points, cost } = smoothPath(field, found.points, options);
    return { points, target: found.target, cost: cost + (found.target.cost ?? 0), gridCost: first.cost };
  };
  const best = drawn(first);
  const other = options.quick === true ? null : otherWay(field, first, from, to, options);
  if (other === null) return best;
  const second = drawn(other);
  return second.cost < best.cost ? second : best;
}
