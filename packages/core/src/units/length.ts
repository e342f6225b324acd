import { type Metres, metres } from './quantity.js';

/** International foot, exact (1959 agreement). */
const METRES_PER_FOOT = 0.3048;
const METRES_PER_INCH = METRES_PER_FOOT / 12;

export const fromFeet = (feet: number): Metres => metres(feet * METRES_PER_FOOT);
export const fromInches = (inches: number): Metres => metres(inches * METRES_PER_INCH);
export const fromCentimetres = (centimetres: number): Metres => metres(centimetres / 100);
export const fromMillimetres = (millimetres: number): Metres => metres(millimetres / 1000);
/** Square feet to square metres. */
export const fromSquareFeet = (squareFeet: number): number => squareFeet * METRES_PER_FOOT ** 2;

export const toFeet = (length: number): number => length / METRES_PER_FOOT;
export const toInches = (length: number): number => length / METRES_PER_INCH;
/** Square metres to square feet. */
export const toSquareFeet = (squareMetres: number): number => squareMetres / METRES_PER_FOOT ** 2;
export const toCentimetres = (length: number): number => length * 100;
export const toMillimetres = (length: number): number => length * 1000;
