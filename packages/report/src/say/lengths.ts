import { toFeet, toInches, type Units } from '@rootreach/core';

const trimmed = (value: number, digits: number): string => {
  const fixed = value.toFixed(digits);
  return fixed.endsWith('.0') ? fixed.slice(0, -2) : fixed;
};

/** Feet are whole from here on: a tape on a lawn agrees no better. */
const digitsFor = (value: number, units: Units): number =>
  units === 'us' ? (value >= 3 ? 0 : 1) : value >= 30 ? 0 : 1;

export const unitOf = (units: Units): string => (units === 'us' ? 'ft' : 'm');

export const bareLength = (lengthM: number, units: Units, scaleM = lengthM): string => {
  const value = units === 'us' ? toFeet(lengthM) : lengthM;
  return trimmed(value, digitsFor(units === 'us' ? toFeet(scaleM) : scaleM, units));
};

/** Along the ground: `34 ft`, `9.5 m`. */
export const length = (lengthM: number, units: Units): string =>
  `${bareLength(lengthM, units)} ${unitOf(units)}`;

/** Into the ground or through a trunk: inches up to four feet, centimetres up to a metre. */
export function small(lengthM: number, units: Units): string {
  if (units === 'us')
    return toInches(lengthM) <= 48.5 ? `${Math.round(toInches(lengthM))} in` : length(lengthM, units);
  return lengthM < 0.995 ? `${Math.round(100 * lengthM)} cm` : `${lengthM.toFixed(1)} m`;
}
