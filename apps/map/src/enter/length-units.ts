import { fromCentimetres, fromFeet, fromInches, fromMillimetres } from '@rootreach/core';

export type LengthUnit = 'in' | 'ft' | 'mm' | 'cm' | 'm';

/** Metres of one unit. */
export const metresOf: Readonly<Record<LengthUnit, number>> = {
  in: fromInches(1),
  ft: fromFeet(1),
  mm: fromMillimetres(1),
  cm: fromCentimetres(1),
  m: 1,
};

/** Which of the two ways of measuring a unit belongs to. */
export const familyOf = (unit: LengthUnit): 'us' | 'metric' =>
  unit === 'in' || unit === 'ft' ? 'us' : 'metric';
