import type { CrownEquation, SpeciesRow } from '../tables/species-row.js';
import { type Metres, metres } from '../units/quantity.js';

/**
 * Crown diameter from stem diameter, all measured US urban trees together: 0.662 D_cm^0.722 m.
 * Least squares in logs on 13,297 trees of 5 cm and more (McPherson, van Doorn & Peper 2016, calculated by us);
 * standard deviation of ln 0.27.
 */
const ALL_SPECIES = { factor: 0.662, exponent: 0.722 };

/** McPherson, van Doorn & Peper 2016, table of forms; in `loglogw1` the c/2 stands inside the outer logarithm. */
function evaluate(eq: CrownEquation, dbhCm: number): number {
  const { a, b, c } = eq;
  const lnln = Math.log(Math.log(dbhCm + 1));
  switch (eq.form) {
    case 'lin':
      return a + b * dbhCm;
    case 'quad': {
      // past its peak the parabola would shrink the crown of a growing tree
      const x = c < 0 ? Math.min(dbhCm, -b / (2 * c)) : dbhCm;
      return a + b * x + c * x * x;
    }
    case 'loglogw1':
      return Math.exp(a + b * Math.log(Math.log(dbhCm + 1) + c / 2));
    case 'loglogw2':
      return Math.exp(a + b * lnln + (Math.sqrt(dbhCm) * c) / 2);
    case 'loglogw3':
      return Math.exp(a + b * lnln + (dbhCm * c) / 2);
    case 'expow1':
      return Math.exp(a + b * dbhCm + c / 2);
  }
}

/** Crown diameter by the species' own equation, kept inside the crowns it was fitted on. */
export function crownByEquation(eq: CrownEquation, stemDiameter: Metres): Metres {
  const diameter = evaluate(eq, Math.max(1, 100 * stemDiameter));
  return metres(Math.min(eq.fittedMaxM, Math.max(eq.fittedMinM, diameter)));
}

/** Crown diameter by the all-species fit. */
export function crownOfAnySpecies(stemDiameter: Metres): Metres {
  return metres(ALL_SPECIES.factor * (100 * stemDiameter) ** ALL_SPECIES.exponent);
}

/**
 * Crown radius of a tree of this species with this stem, never above the species' mature crown.
 * Palms carry a crown of one size from the time they have a trunk.
 */
export function crownRadius(row: SpeciesRow, stemDiameter: Metres): Metres {
  const mature = row.matureCrownM.value;
  if (row.form === 'palm') return metres(mature / 2);
  const diameter = row.crownEquation
    ? crownByEquation(row.crownEquation.value, stemDiameter)
    : crownOfAnySpecies(stemDiameter);
  return metres(Math.min(mature, diameter) / 2);
}

/** Largest stem that the inverse looks at, metres. */
const LARGEST_STEM_M = 2.5;

/** Stem diameter whose crown has this radius: the inverse of `crownRadius` by bisection, to a tenth of a millimetre. */
export function stemForCrown(row: SpeciesRow, radius: Metres): Metres {
  let low = 0.01;
  let high = LARGEST_STEM_M;
  while (high - low > 1e-4) {
    const middle = (low + high) / 2;
    if (crownRadius(row, metres(middle)) < radius) low = middle;
    else high = middle;
  }
  return metres(high < LARGEST_STEM_M - 1e-3 ? high : (2 * radius) / (row.crownRatio?.value ?? 24));
}
