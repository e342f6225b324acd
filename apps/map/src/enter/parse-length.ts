import { type LengthUnit, metresOf } from './length-units.js';
import { parseNumber } from './parse-number.js';

/** A length as typed, with the unit it was said in. */
export interface TypedLength {
  readonly lengthM: number;
  /** The number itself in `unit`; feet with inches are in inches. */
  readonly value: number;
  readonly unit: LengthUnit;
}

const UNITS: readonly (readonly [RegExp, LengthUnit])[] = [
  [/^(?:"|''|in\.?|inch|inches|pulg\.?|pulgadas?)$/, 'in'],
  [/^(?:'|ft\.?|foot|feet|pies?)$/, 'ft'],
  [/^(?:mm|mil+im(?:et(?:er|re)s?|etros?))$/, 'mm'],
  [/^(?:cm|centim(?:et(?:er|re)s?|etros?)|centímetros?)$/, 'cm'],
  [/^(?:m|m\.|met(?:er|re)s?|metros?)$/, 'm'],
];

/** Curly and prime marks as the plain ones; one space between words. */
const plain = (typed: string): string =>
  typed
    .toLowerCase()
    .replace(/[’‘′ʹ´`]/g, "'")
    .replace(/[”“″ʺ]/g, '"')
    .replace(/''/g, '"')
    .replace(/\s+/g, ' ')
    .trim();

const FEET_AND_INCHES =
  /^([\d.]+) ?(?:'|ft\.?|feet|foot|pies?)[ -]*(?:and |y )?([\d.,/ ½¼¾⅛⅜⅝⅞-]+?) ?(?:"|in\.?|inch|inches|pulg\.?|pulgadas?)?$/;
const NUMBER_AND_UNIT = /^([-+]?[\d.,/ ½¼¾⅛⅜⅝⅞-]*[\d.½¼¾⅛⅜⅝⅞])[ -]?([^\d\s½¼¾⅛⅜⅝⅞][^\d]*)?$/;

function typedIn(value: number, unit: LengthUnit): TypedLength {
  return { lengthM: value * metresOf[unit], value, unit };
}

function feetAndInches(text: string): TypedLength | null {
  const match = FEET_AND_INCHES.exec(text);
  if (!match) return null;
  const feet = parseNumber(match[1] ?? '');
  const inches = parseNumber(match[2] ?? '');
  if (feet === null || inches === null || inches >= 12 || !Number.isInteger(feet)) return null;
  return typedIn(12 * feet + inches, 'in');
}

/**
 * A length as people write it: `30`, `30 in`, `2' 6"`, `2 ft 6 1/2 in`, `0.8 m`, `80cm`, `0,8 m`.
 * @param bare Unit of a number that names none.
 * @returns null where it is not understood.
 */
export function parseLength(typed: string, bare: LengthUnit): TypedLength | null {
  const text = plain(typed);
  const both = feetAndInches(text);
  if (both) return both;
  const match = NUMBER_AND_UNIT.exec(text);
  if (!match) return null;
  const value = parseNumber(match[1] ?? '');
  if (value === null) return null;
  const name = (match[2] ?? '').trim();
  const unit = name === '' ? bare : UNITS.find(([pattern]) => pattern.test(name))?.[1];
  return unit === undefined ? null : typedIn(value, unit);
}
