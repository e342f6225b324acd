import { fromFeet, fromInches } from './length.js';

/** A US gallon is 231 cubic inches, exact. */
const CUBIC_METRES_PER_GALLON = 231 * fromInches(1) ** 3;
const CUBIC_METRES_PER_CUBIC_FOOT = fromFeet(1) ** 3;
const SECONDS_PER_HOUR = 3600;
const MILLIMETRES_PER_INCH = 25.4;

/** Flow in cubic metres a second as people say it. */
export const toGallonsPerMinute = (flowM3s: number): number => (flowM3s * 60) / CUBIC_METRES_PER_GALLON;
export const toLitresPerSecond = (flowM3s: number): number => flowM3s * 1000;
export const toCubicFeetPerSecond = (flowM3s: number): number => flowM3s / CUBIC_METRES_PER_CUBIC_FOOT;
export const fromCubicFeetPerSecond = (flowFt3s: number): number => flowFt3s * CUBIC_METRES_PER_CUBIC_FOOT;

/** Rain intensity in millimetres an hour, to and from. */
export const fromInchesPerHour = (inchesPerHour: number): number => inchesPerHour * MILLIMETRES_PER_INCH;
export const toInchesPerHour = (mmPerHour: number): number => mmPerHour / MILLIMETRES_PER_INCH;
/** Depth of rain in metres a second. */
export const rainMetresPerSecond = (mmPerHour: number): number => mmPerHour / 1000 / SECONDS_PER_HOUR;
