import type { SpeciesRow } from '../tables/species-row.js';
import { type Metres, metres } from '../units/quantity.js';
import { stemForCrown } from './crown.js';

/**
 * Where the mature crown is the 95th percentile of measured trees, a usual mature tree has about three quarters
 * of it (judgement); garden-book figures are taken as they are.
 */
const USUAL_SHARE = 0.75;
/** Median crown over stem diameter of measured trees: 24 (calculated from McPherson, van Doorn & Peper 2016). */
export const MEDIAN_CROWN_RATIO = 24;
/** Palm stems do not thicken with age; a usual one (judgement). */
const PALM_STEM_M = 0.35;
const LEAST_M = 0.15;
const MOST_M = 1.5;

function stemOf(row: SpeciesRow, crownDiameter: number): Metres {
  if (row.form === 'palm') return metres(PALM_STEM_M);
  const stem = crownDiameter / (row.crownRatio?.value ?? MEDIAN_CROWN_RATIO);
  return metres(Math.min(MOST_M, Math.max(LEAST_M, stem)));
}

export interface UsualSize {
  readonly crownRadius: Metres;
  readonly stemDiameter: Metres;
}

/** A usual mature tree of this species: what is assumed where nothing was measured. */
export function usualMatureSize(row: SpeciesRow): UsualSize {
  const share = row.matureCrownM.known === 'calculated' ? USUAL_SHARE : 1;
  const crown = share * row.matureCrownM.value;
  return { crownRadius: metres(crown / 2), stemDiameter: stemOf(row, crown) };
}

function largestStem(row: SpeciesRow): Metres {
  const crown = row.matureCrownM.value;
  if (row.form === 'palm') return stemOf(row, crown);
  // a hair under the mature crown, since the proportions are cut off there
  const byProportion = Math.min(MOST_M, stemForCrown(row, metres((0.999 * crown) / 2)));
  return metres(Math.max(stemOf(row, crown), byProportion));
}

const known = new WeakMap<SpeciesRow, Metres>();

/** Stem diameter at which growth stops: the one that carries the species' largest usual crown. */
export function matureStem(row: SpeciesRow): Metres {
  let stem = known.get(row);
  if (stem === undefined) {
    stem = largestStem(row);
    known.set(row, stem);
  }
  return stem;
}
