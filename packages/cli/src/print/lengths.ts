import { toCentimetres, toFeet, toInches, toMillimetres, type Units } from '@rootreach/core';

/** Feet along the ground are whole from here up: a reel counter and a tape agree no better. */
const WHOLE_FEET_FROM = 10;
const WHOLE_METRES_FROM = 100;

function bare(lengthM: number, units: Units, scaleM: number): string {
  const value = units === 'us' ? toFeet(lengthM) : lengthM;
  const scale = units === 'us' ? toFeet(scaleM) : scaleM;
  const whole = scale >= (units === 'us' ? WHOLE_FEET_FROM : WHOLE_METRES_FROM) - 0.05;
  const text = value.toFixed(whole ? 0 : 1);
  return text.endsWith('.0') ? text.slice(0, -2) : text;
}

const unitOf = (units: Units): string => (units === 'us' ? 'ft' : 'm');

/** Along the ground: `34 ft`, `9.5 ft`, `10.4 m`. */
export const length = (lengthM: number, units: Units): string =>
  `${bare(lengthM, units, Math.abs(lengthM))} ${unitOf(units)}`;

/** From one place to another, both to the same precision: `34 to 44 ft`. */
export function span(fromM: number, toM: number, units: Units): string {
  const scale = toM - fromM < 0.3 ? 0 : toM;
  return `${bare(fromM, units, scale)} to ${bare(toM, units, scale)} ${unitOf(units)}`;
}

/** Into the ground: inches up to four feet, centimetres up to a metre. */
export function depth(depthM: number, units: Units): string {
  if (units === 'us') {
    const inches = Math.round(toInches(depthM));
    return inches <= 48 ? `${inches} in` : length(depthM, units);
  }
  return depthM < 1 ? `${Math.round(toCentimetres(depthM))} cm` : `${depthM.toFixed(1)} m`;
}

/** Through a trunk: `14 in`, `36 cm`. */
export const trunk = (diameterM: number, units: Units): string =>
  units === 'us' ? `${Math.round(toInches(diameterM))} in` : `${Math.round(toCentimetres(diameterM))} cm`;

/** A pipe's size: `4 in`, `100 mm`. */
export const pipeSize = (sizeM: number, units: Units): string =>
  units === 'us' ? `${Number(toInches(sizeM).toFixed(1))} in` : `${Math.round(toMillimetres(sizeM))} mm`;
