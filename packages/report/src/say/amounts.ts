import { type Quantity, type QuantityUnit, toFeet, toSquareFeet, type Units } from '@rootreach/core';
import type { Words } from '../words/words.js';

/** A cubic yard is 27 cubic feet. */
const toCubicYards = (cubicMetres: number): number => toFeet(toFeet(toFeet(cubicMetres))) / 27;

const IN_US: Partial<Record<QuantityUnit, readonly [unit: string, convert: (value: number) => number]>> = {
  m: ['ft', toFeet],
  m2: ['ft²', toSquareFeet],
  m3: ['yd³', toCubicYards],
};
const IN_METRIC: Partial<Record<QuantityUnit, string>> = { m: 'm', m2: 'm²', m3: 'm³' };

/** So much of one thing, in the units of the reader: `12.5 ft`, `3 pieces`. */
export function amountSaid({ quantity, unit }: Quantity, units: Units, words: Words): string {
  const us = units === 'us' ? IN_US[unit] : undefined;
  const value = us === undefined ? quantity : us[1](quantity);
  const rounded = String(Math.round(value * 10) / 10);
  if (us !== undefined) return `${rounded} ${us[0]}`;
  const metric = IN_METRIC[unit];
  return metric === undefined ? words.crew.counted(rounded, unit) : `${rounded} ${metric}`;
}
