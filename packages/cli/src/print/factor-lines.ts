import type { Factor, Units } from '@rootreach/core';
import { wordKnown } from './known.js';
import { length } from './lengths.js';

const METRES = /(\d+(?:\.\d+)?) m\b/g;

function valueWords({ value, unit }: Factor, units: Units): string {
  if (unit === 'm') return length(value, units);
  const digits = Number(value.toPrecision(3));
  return unit === '' ? String(digits) : `${digits} ${unit}`;
}

/** Each number behind a segment: `1.3 water in the line (our judgement)`. */
export const factorLines = (factors: readonly Factor[], units: Units): string[] =>
  factors.map((factor) => {
    const what = factor.what.replace(METRES, (_, metres: string) => length(Number(metres), units));
    return `${what}: ${valueWords(factor, units)} (${wordKnown[factor.known]})`;
  });
