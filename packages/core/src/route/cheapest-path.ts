import type { Point } from '../geometry/disc-less-strip.js';
import type { Corner } from './cheapest-chain.js';
import type { CostField } from './cost-field.js';
import { type SearchFall, searchGrid, type Target } from './search.js';
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
  const found = searchGrid(field, from, to, options);
  if (found === null) return null;
  const smoothed = smoothPath(field, found.points, options);
  return {
    points: smoothed.points,
    target: found.target,
    cost: smoothed.cost + (found.target.cost ?? 0),
    gridCost: found.cost,
  };
}
