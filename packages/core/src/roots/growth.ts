import type { SpeciesRow } from '../tables/species-row.js';
import { type Metres, metres } from '../units/quantity.js';
import { crownRadius } from './crown.js';
import { matureStem } from './mature-size.js';

/** Stem diameter some years on: grows at the species' yearly rate up to its mature stem, never shrinks. */
export function stemAfter(row: SpeciesRow, stemNow: Metres, yearsOn: number): Metres {
  if (row.form === 'palm') return stemNow;
  const grown = stemNow + (row.dbhGrowthCmPerYear.value / 100) * Math.max(0, yearsOn);
  return metres(Math.max(stemNow, Math.min(grown, matureStem(row))));
}

/**
 * Crown radius some years on: follows the stem by the species' own proportions, never shrinks and never grows
 * past the species' mature crown.
 * @param usualNow crown radius that the proportions give for the stem of now: `crownRadius(row, stemNow)`.
 */
export function crownAfter(row: SpeciesRow, crownNow: Metres, usualNow: Metres, stemThen: Metres): Metres {
  const grown = usualNow > 0 ? crownNow * (crownRadius(row, stemThen) / usualNow) : crownNow;
  return metres(Math.max(crownNow, Math.min(grown, row.matureCrownM.value / 2)));
}
