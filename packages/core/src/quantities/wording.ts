import type { Units } from '../model/site.js';
import { toFeet, toInches, toMillimetres } from '../units/length.js';

/** `24 in`, `0.61 m`. */
export const acrossWords = (lengthM: number, units: Units): string =>
  units === 'us' ? `${Math.round(toInches(lengthM))} in` : `${lengthM.toFixed(2)} m`;

/** `34.2 ft`, `10.42 m`. */
export const alongWords = (lengthM: number, units: Units): string =>
  units === 'us' ? `${toFeet(lengthM).toFixed(1)} ft` : `${lengthM.toFixed(2)} m`;

/** `4 in`, `100 mm`. */
export const sizeWords = (sizeM: number, units: Units): string =>
  units === 'us' ? `${Number(toInches(sizeM).toFixed(1))} in` : `${Math.round(toMillimetres(sizeM))} mm`;
