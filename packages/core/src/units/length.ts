import { type Metres, metres } from './quantity.js';

/** International foot, exact (1959 agreement). */
const METRES_PER_FOOT = 0.3048;
const METRES_PER_INCH = METRES_PER_FOOT / 12;

/** International feet to metres. */
export const fromFeet = (feet: number): Metres => metres(feet * METRES_PER_FOOT);
/** Inches to metres. */
export const fromInches = (inches: number): Metres => metres(inches * METRES_PER_INCH);
/** Centimetres to metres. */
export const fromCentimetres = (centimetres: number): Metres => metres(centimetres / 100);
/** Millimetres to metres. */
export const fromMillimetres = (millimetres: number): Metres => metres(millimetres / 1000);
/** Square feet to square metres. */
export const fromSquareFeet = (squareFeet: number): number => squareFeet * METRES_PER_FOOT ** 2;

/** Metres to international feet. */
export const toFeet = (length: number): number => length / METRES_PER_FOOT;
/** Metres to inches. */
export const toInches = (length: number): number => length / METRES_PER_INCH;
/** Square metres to square feet. */
export const toSquareFeet = (squareMetres: number): number => squareMetres / METRES_PER_FOOT ** 2;
/** Metres to centimetres. */
export const toCentimetres = (length: number): number => length * 100;
/** Metres to millimetres. */
export const toMillimetres = (length: number): number => length * 1000;
