import type { FallLimits, FallRemedy } from '../model/fall.js';
import { fallLimits } from '../tables/fall-limits.js';
import { fallBounds, shortfallOf } from './fall-bounds.js';
import { type Height, heightAt } from './fall-envelope.js';

/** Less than this is rounding, metres. */
const ROUNDING_M = 1e-9;

/** True where a line exists under other limits. */
const would = (ground: readonly Height[], limits: FallLimits): boolean =>
  shortfallOf(fallBounds(ground, limits)).byM <= ROUNDING_M;

/**
 * Greatest least fall that could still be kept: over every pair of an upper bound and a lower one further on, how far
 * the first lies above the second over the way between. Null where none can.
 */
function greatestFall(ground: readonly Height[], limits: FallLimits): number | null {
  const level = { ...limits, minFall: 0 };
  if (!would(ground, level)) return null;
  const { over, under } = fallBounds(ground, level);
  let least = limits.minFall;
  for (const high of over) {
    for (const low of under) {
      if (low.s > high.s) least = Math.min(least, (high.z - low.z) / (low.s - high.s));
    }
  }
  return least;
}

/** Halvings of a way: a millimetre of a kilometre after twenty, rounding after fifty. */
const HALVINGS = 50;

/**
 * Furthest station that a line reaches that keeps to everything but what it empties into. What cannot be laid to one
 * station cannot be laid beyond it, so that halving finds it.
 */
function furthestReach(ground: readonly Height[], limits: FallLimits): number {
  const { outlet: _, bareBeforeOutletM: __, ...open } = limits;
  const upTo = (end: number): Height[] => [
    ...ground.filter(({ s }) => s < end),
    { s: end, z: heightAt(ground, end) },
  ];
  let far = (ground[ground.length - 1] as Height).s;
  if (would(ground, open)) return far;
  let near = 0;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (near + far) / 2;
    if (would(upTo(middle), open)) near = middle;
    else far = middle;
  }
  return near;
}

/** Each thing that would by itself make a line possible that falls short by `shortM`, and what helps in any case. */
export function remediesFor(ground: readonly Height[], limits: FallLimits, shortM: number): FallRemedy[] {
  const { source, outlet, minCoverM, maxDepthM } = limits;
  const found: FallRemedy[] = [];
  if (source?.mostM !== undefined) {
    const least = source.leastM === undefined ? {} : { leastM: source.leastM + shortM };
    const raised = { ...limits, source: { ...least, mostM: source.mostM + shortM } };
    if (would(ground, raised)) found.push({ kind: 'raise-source', byM: shortM });
  }
  if (outlet?.leastM !== undefined) {
    const lowered = { ...limits, outlet: { ...outlet, leastM: outlet.leastM - shortM } };
    if (would(ground, lowered)) found.push({ kind: 'lower-outlet', byM: shortM });
  }
  if (would(ground, { ...limits, maxDepthM: maxDepthM + shortM })) {
    found.push({ kind: 'dig-deeper', maxDepthM: maxDepthM + shortM });
  }
  if (minCoverM >= shortM && would(ground, { ...limits, minCoverM: minCoverM - shortM })) {
    found.push({ kind: 'less-cover', minCoverM: minCoverM - shortM });
  }
  const fall = greatestFall(ground, limits);
  if (fall !== null && fall >= fallLimits.flattest.value && fall < limits.minFall) {
    found.push({ kind: 'flatter', fall });
  }
  found.push({ kind: 'pump', liftM: shortM });
  const atM = furthestReach(ground, limits);
  if (atM > ROUNDING_M) found.push({ kind: 'dry-well', atM });
  return found;
}
