import type { SpeciesRow } from '../tables/species-row.js';
import { type Metres, metres } from '../units/quantity.js';
import { crownRadius } from './crown.js';
import { matureStem } from './mature-size.js';

/** A tree is planted with a stem of about an inch (judgement); looking back it is never thinner. */
export const PLANTED_STEM_M = 0.025;

/**
 * Stem diameter some years on: grows at the species' yearly rate up to its mature stem, never shrinks.
 * Looking back (`yearsOn` below 0) it was thinner at the same rate.
 */
export function stemAfter(row: SpeciesRow, stemNow: Metres, yearsOn: number): Metres {
  if (row.form === 'palm') return stemNow;
  const grown = stemNow + (row.dbhGrowthCmPerYear.value / 100) * yearsOn;
  if (yearsOn < 0) return metres(Math.max(Math.min(PLANTED_STEM_M, stemNow), grown));
  return metres(Math.max(stemNow, Math.min(grown, matureStem(row))));
}

/**
 * Crown radius some years on: follows the stem by the species' own proportions, and never grows past the
 * species' mature crown.
 * @param usualNow crown radius that the proportions give for the stem of now: `crownRadius(row, stemNow)`.
 */
export function crownAfter(row: SpeciesRow, crownNow: Metres, usualNow: Metres, stemThen: Metres): Metres {
  const grown = usualNow > 0 ? crownNow * (crownRadius(row, stemThen) / usualNow) : crownNow;
  if (grown < crownNow) return metres(grown);
  return metres(Math.max(crownNow, Math.min(grown, row.matureCrownM.value / 2)));
}
