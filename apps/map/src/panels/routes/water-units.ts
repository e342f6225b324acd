import {
  toGallonsPerMinute,
  toInchesPerHour,
  toLitresPerSecond,
  toSquareFeet,
  type Units,
} from '@rootreach/core';

/** Square feet or square metres, as a bare number. */
export const area = (areaM2: number, units: Units): number =>
  units === 'us' ? toSquareFeet(areaM2) : areaM2;

/** Inches or millimetres an hour, as a bare number. */
export const rain = (mmPerHour: number, units: Units): number =>
  units === 'us' ? toInchesPerHour(mmPerHour) : mmPerHour;

/** `42 gpm`, `2.6 L/s`: two figures. */
export function flow(flowM3s: number, units: Units): string {
  const value = units === 'us' ? toGallonsPerMinute(flowM3s) : toLitresPerSecond(flowM3s);
  return `${Number(value.toPrecision(2))}\u00a0${units === 'us' ? 'gpm' : 'L/s'}`;
}
