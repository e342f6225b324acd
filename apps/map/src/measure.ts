import { toCentimetres, toFeet, toInches } from '@rootreach/core';

export type Units = 'us' | 'metric';

/** Keeps a number and its unit on one line. */
const GAP = '\u00a0';

/** Whole numbers from ten up, one decimal below. */
function rounded(value: number): string {
  const text = value.toFixed(Math.abs(value) >= 9.95 ? 0 : 1);
  return text.endsWith('.0') ? text.slice(0, -2) : text;
}

export const lengthUnit = (units: Units): string => (units === 'us' ? 'ft' : 'm');

/** A length in the chosen unit as a bare number, for axes. */
export const inUnit = (lengthM: number, units: Units): number => (units === 'us' ? toFeet(lengthM) : lengthM);

/** Metres of one foot or one metre. */
export const unitM = (units: Units): number => 1 / inUnit(1, units);

/** Along the ground: `34 ft`, `10.4 m`. */
export function length(lengthM: number, units: Units): string {
  if (units === 'us') return `${rounded(toFeet(lengthM))}${GAP}ft`;
  return `${lengthM.toFixed(Math.abs(lengthM) >= 99.5 ? 0 : 1)}${GAP}m`;
}

/** From a place to another: `34 to 44 ft`. */
export function span(fromM: number, toM: number, units: Units): string {
  const unit = lengthUnit(units);
  return `${length(fromM, units).replace(`${GAP}${unit}`, '')} to ${length(toM, units)}`;
}

/** Into the ground: inches up to four feet, centimetres up to a metre. */
export function depth(depthM: number, units: Units): string {
  if (units === 'us') {
    const inches = Math.round(toInches(depthM));
    return inches <= 48 ? `${inches}${GAP}in` : `${rounded(toFeet(depthM))}${GAP}ft`;
  }
  return depthM < 1 ? `${Math.round(toCentimetres(depthM))}${GAP}cm` : `${depthM.toFixed(2)}${GAP}m`;
}

/** Through a trunk: `14 in`, `36 cm`. */
export function girth(diameterM: number, units: Units): string {
  return units === 'us'
    ? `${rounded(toInches(diameterM))}${GAP}in`
    : `${Math.round(toCentimetres(diameterM))}${GAP}cm`;
}

const STEPS = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000];

/** Smallest round number of units that is at least as long as given; for grids, axes and scale bars. */
export function roundStep(atLeastUnits: number): number {
  return STEPS.find((step) => step >= atLeastUnits) ?? 10_000;
}
