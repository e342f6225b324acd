import {
  type Range,
  toFeet,
  toGallonsPerMinute,
  toInchesPerHour,
  toLitresPerSecond,
  type Units,
} from '@rootreach/core';

/** Two figures, three from a hundred up: nothing about a buried pipe is known better. */
function figures(value: number): string {
  if (value === 0) return '0';
  const digits = Math.abs(value) >= 100 ? 3 : 2;
  return Number(value.toPrecision(digits)).toLocaleString('en', { maximumFractionDigits: 6 });
}

/** `1.6 %`. */
export const percent = (ratio: number): string => `${figures(100 * ratio)} %`;

const inUnits = (flowM3s: number, units: Units): number =>
  units === 'us' ? toGallonsPerMinute(flowM3s) : toLitresPerSecond(flowM3s);

const flowUnit = (units: Units): string => (units === 'us' ? 'gpm' : 'L/s');

/** `115 gpm`, `7.2 L/s`. */
export const flow = (flowM3s: number, units: Units): string =>
  `${figures(inUnits(flowM3s, units))} ${flowUnit(units)}`;

/** `(97-141)`, bare. */
const ends = ({ low, high }: Range, word: (value: number) => string): string =>
  `(${word(low)}-${word(high)})`;

/** `115 gpm (97-141)`. */
export const flowRange = (range: Range, units: Units): string =>
  `${flow(range.mid, units)} ${ends(range, (value) => figures(inUnits(value, units)))}`;

/** Whole hundredths below ten times full; a share is known no better than that. */
const share = (ratio: number): string => (100 * ratio).toFixed(ratio < 0.095 ? 1 : 0).replace(/\.0$/, '');

export const used = (range: Range): string => `${share(range.mid)} %`;

/** `27 % (18-33)`. */
export const usedRange = (range: Range): string => `${used(range)} ${ends(range, share)}`;

const speed = (velocityMs: number, units: Units): number =>
  units === 'us' ? toFeet(velocityMs) : velocityMs;

/** `2 ft/s`, `0.61 m/s`. */
export const velocity = (velocityMs: number, units: Units): string =>
  `${figures(speed(velocityMs, units))} ${units === 'us' ? 'ft/s' : 'm/s'}`;

/** `1.3 ft/s (1 to 1.6)`. */
export const velocityRange = ({ low, mid, high }: Range, units: Units): string =>
  `${velocity(mid, units)} (${figures(speed(low, units))} to ${figures(speed(high, units))})`;

/** `1.6 % (1.1 to 2.9)`. */
export const slopeRange = ({ low, mid, high }: Range): string =>
  `${percent(mid)} (${figures(100 * low)} to ${figures(100 * high)})`;

/** `4 in/h`, `100 mm/h`. */
export const rain = (mmPerHour: number, units: Units): string =>
  units === 'us' ? `${figures(toInchesPerHour(mmPerHour))} in/h` : `${figures(mmPerHour)} mm/h`;
