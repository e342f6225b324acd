import { fromFeet, fromInches } from './length.js';

/** A US gallon is 231 cubic inches, exact. */
const CUBIC_METRES_PER_GALLON = 231 * fromInches(1) ** 3;
const CUBIC_METRES_PER_CUBIC_FOOT = fromFeet(1) ** 3;
const SECONDS_PER_HOUR = 3600;
const MILLIMETRES_PER_INCH = 25.4;

/** Cubic metres a second to US gallons a minute. */
export const toGallonsPerMinute = (flowM3s: number): number => (flowM3s * 60) / CUBIC_METRES_PER_GALLON;
/** Cubic metres a second to litres a second. */
export const toLitresPerSecond = (flowM3s: number): number => flowM3s * 1000;
/** Cubic metres a second to cubic feet a second. */
export const toCubicFeetPerSecond = (flowM3s: number): number => flowM3s / CUBIC_METRES_PER_CUBIC_FOOT;
/** Cubic feet a second to cubic metres a second. */
export const fromCubicFeetPerSecond = (flowFt3s: number): number => flowFt3s * CUBIC_METRES_PER_CUBIC_FOOT;

/** Rain in inches an hour to millimetres an hour. */
export const fromInchesPerHour = (inchesPerHour: number): number => inchesPerHour * MILLIMETRES_PER_INCH;
/** Rain in millimetres an hour to inches an hour. */
export const toInchesPerHour = (mmPerHour: number): number => mmPerHour / MILLIMETRES_PER_INCH;
/** Depth of rain in metres a second. */
export const rainMetresPerSecond = (mmPerHour: number): number => mmPerHour / 1000 / SECONDS_PER_HOUR;
