import { toCentimetres, toFeet, toInches, type Units } from '@rootreach/core';

/** Keeps a number and its unit on one line. */
const GAP = '\u00a0';

/** Whole numbers from ten up, one decimal below. */
const rounded = (value: number): string => inScale(value, value, 'us');

/** Along the ground whole from here up: a reel counter and a tape agree no better. */
const WHOLE_FROM: Readonly<Record<Units, number>> = { us: 10, metric: 100 };
/** A shorter span is said to the tenth at both ends, metres. */
const SHORT_SPAN_M = 0.3;

/** A number as fine as one of the given scale is said. */
function inScale(value: number, scale: number, units: Units): string {
  const text = value.toFixed(Math.abs(scale) >= WHOLE_FROM[units] - 0.05 ? 0 : 1);
  return text.endsWith('.0') ? text.slice(0, -2) : text;
}

export const lengthUnit = (units: Units): string => (units === 'us' ? 'ft' : 'm');

/** A length in the chosen unit as a bare number, for axes. */
export const inUnit = (lengthM: number, units: Units): number => (units === 'us' ? toFeet(lengthM) : lengthM);

/** Metres of one foot or one metre. */
export const unitM = (units: Units): number => 1 / inUnit(1, units);

/** Along the ground: `34 ft`, `10.4 m`. */
export function length(lengthM: number, units: Units): string {
  const value = inUnit(lengthM, units);
  return `${inScale(value, value, units)}${GAP}${lengthUnit(units)}`;
}

/** From one place to another, both to the same precision: `34 to 44 ft`. */
export function span(fromM: number, toM: number, units: Units): string {
  const scale = toM - fromM < SHORT_SPAN_M ? 0 : inUnit(toM, units);
  const bare = (lengthM: number) => inScale(inUnit(lengthM, units), scale, units);
  return `${bare(fromM)} to ${bare(toM)}${GAP}${lengthUnit(units)}`;
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
