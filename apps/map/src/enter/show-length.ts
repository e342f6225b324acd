import { toFeet, toInches, type Units } from '@rootreach/core';
import { type LengthUnit, metresOf } from './length-units.js';

/** What is measured: along the ground, into it, through or round a trunk, a pipe's size, a level. */
export type Measured = 'ground' | 'depth' | 'trunk' | 'pipe' | 'level';

/** Unit of a bare number, as the trade measures such a thing. */
const BARE: Readonly<Record<Measured, Readonly<Record<Units, LengthUnit>>>> = {
  ground: { us: 'ft', metric: 'm' },
  depth: { us: 'in', metric: 'cm' },
  trunk: { us: 'in', metric: 'cm' },
  pipe: { us: 'in', metric: 'mm' },
  level: { us: 'ft', metric: 'm' },
};

export const bareUnit = (measured: Measured, units: Units): LengthUnit => BARE[measured][units];

const PLACES: Readonly<Record<LengthUnit, number>> = { in: 2, ft: 2, mm: 0, cm: 1, m: 3 };
/** From here up depths are said in feet and inches. */
const INCHES_UP_TO = 48;

const trimmed = (value: number, places: number): string => String(Number(value.toFixed(places)));

function feetAndInches(lengthM: number): string {
  const inches = Number(toInches(lengthM).toFixed(2));
  const feet = Math.floor(inches / 12);
  const rest = Number((inches - 12 * feet).toFixed(2));
  return rest === 0 ? `${feet} ft` : `${feet}' ${rest}"`;
}

/** A length as it stands in its field, in a form that `parseLength` reads back. */
export function showLength(lengthM: number, measured: Measured, units: Units): string {
  if (measured === 'depth' && units === 'us' && toInches(lengthM) > INCHES_UP_TO)
    return feetAndInches(lengthM);
  if (measured === 'level' && units === 'us') return `${trimmed(toFeet(lengthM), 3)} ft`;
  const unit = measured === 'depth' && units === 'metric' && lengthM >= 1 ? 'm' : BARE[measured][units];
  return `${trimmed(lengthM / metresOf[unit], PLACES[unit])} ${unit}`;
}
