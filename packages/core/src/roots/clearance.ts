import { drainClearance } from '../tables/drain-clearance.js';
import type { SpeciesRow } from '../tables/species-row.js';

const EAGER: ReadonlySet<string> = new Set([
  ...drainClearance.eagerSpecies.value,
  ...drainClearance.eagerByKin.value,
]);
const EAGER_GENERA: readonly string[] = drainClearance.eagerGenera.value;

/** True of the trees whose roots fill drains soonest, and of trees of unknown kind, which may be one of them. */
export function isEager({ key, rank }: Pick<SpeciesRow, 'key' | 'rank'>): boolean {
  if (rank === 'unknown' || EAGER.has(key)) return true;
  return EAGER_GENERA.includes(key.split('-')[0] ?? '');
}

/**
 * Distance that a perforated drain should keep from a tree, metres: 100 ft from willow, soft maple, elm and poplar,
 * 50 ft from others (guidance on farm drains of Ontario, Indiana and Ohio). The unknown tree takes the greater.
 */
export function clearanceOf(row: Pick<SpeciesRow, 'key' | 'rank'>): number {
  return isEager(row) ? drainClearance.eagerM.value : drainClearance.otherM.value;
}
