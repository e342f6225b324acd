import type { Chance } from '@rootreach/core';

/** Never 0 or 100: no stretch is certain either way. */
export function percent(share: number): string {
  const value = 100 * share;
  if (value < 0.5) return '<1';
  return value > 99.5 ? '>99' : String(Math.round(value));
}

/** `57 % (23-96)`: the likely chance and its range. */
export function chanceRange({ low, likely, high }: Chance): string {
  return `${percent(likely)} % (${percent(low)}-${percent(high)})`;
}

/** `57 -> 19 %`: a chance now, and after a change. */
export const fall = (score: number, scoreWithout: number): string =>
  `${percent(score / 100)} -> ${percent(scoreWithout / 100)} %`;
