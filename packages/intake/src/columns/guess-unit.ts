import type { Unit } from '../values/units.js';
import { unitNamed } from '../values/units.js';
import type { Header } from './header.js';
import { quantile, sortedSizes } from './sample.js';

export interface GuessedUnit {
  readonly unit: Unit;
  readonly why: string;
  /** False where the numbers would fit another unit too. */
  readonly sure: boolean;
}

/** Trunk that one street tree in twenty is thicker than: 70 to 90 cm in the cities looked at, 28 to 35 in (judgement). */
const TRUNK_INCHES_BELOW = 42;
const TRUNK_CM_ABOVE = 52;
/** Pipes up to this are in inches when they are bare numbers: there is none of 60 mm in a street (judgement). */
const PIPE_INCHES_BELOW = 74;

/** Languages in whose countries nobody tapes a trunk in inches. */
const METRIC_WORDS = /umfang|durchmesser|circonf|diametre|perimetro|circunferencia|diametro|omtrek|stamdiam/;

function fromLanguage({ words }: Header): GuessedUnit | null {
  return METRIC_WORDS.test(words) ? { unit: 'cm', why: 'the language of its name', sure: true } : null;
}

function fromHeader({ unit }: Header): GuessedUnit | null {
  return unit === null ? null : { unit, why: 'the column name says so', sure: true };
}

function fromValues(values: readonly unknown[]): GuessedUnit | null {
  const words = values.map((value) => /^[^a-zA-Z"”″']*?([a-zA-Z]+|"|”|″|'')\s*$/.exec(String(value))?.[1]);
  const units = words.filter((word) => word !== undefined).map(unitNamed);
  const unit = units.find((one) => one !== null);
  const most = units.filter((one) => one === unit).length > values.length / 2;
  return unit !== undefined && unit !== null && most
    ? { unit, why: 'the values carry it', sure: true }
    : null;
}

const shown = (value: number): string => String(Math.round(value * 10) / 10);

/** Unit of trunk diameters; girths are held against the same after division by pi. */
export function guessTrunkUnit(header: Header, values: readonly unknown[], isGirth: boolean): GuessedUnit {
  const told = fromHeader(header) ?? fromValues(values) ?? fromLanguage(header);
  if (told) return told;
  const upper = quantile(sortedSizes(values), 0.95) / (isGirth ? Math.PI : 1);
  if (!Number.isFinite(upper)) return { unit: 'cm', why: 'there is nothing to tell it from', sure: false };
  const why = `one in twenty is above ${shown(upper * (isGirth ? Math.PI : 1))}`;
  if (upper < 1.6) return { unit: 'm', why, sure: upper > 0.2 };
  if (upper > 450) return { unit: 'mm', why, sure: true };
  if (upper > TRUNK_CM_ABOVE) return { unit: 'cm', why, sure: true };
  return { unit: upper < TRUNK_INCHES_BELOW ? 'in' : 'cm', why, sure: upper < TRUNK_INCHES_BELOW - 6 };
}

/** Unit of pipe sizes. */
export function guessPipeUnit(header: Header, values: readonly unknown[]): GuessedUnit {
  const told = fromHeader(header) ?? fromValues(values);
  if (told) return told;
  const sizes = sortedSizes(values);
  const upper = quantile(sizes, 0.9);
  if (!Number.isFinite(upper)) return { unit: 'in', why: 'there is nothing to tell it from', sure: false };
  const why = `nine in ten are up to ${shown(upper)}`;
  if (upper < 3) return { unit: 'm', why, sure: false };
  return { unit: upper < PIPE_INCHES_BELOW ? 'in' : 'mm', why, sure: upper < 60 || upper > 90 };
}

/** Unit of heights, crowns and depths: metres or feet. */
export function guessLengthUnit(header: Header, values: readonly unknown[], feetAbove: number): GuessedUnit {
  const told = fromHeader(header) ?? fromValues(values);
  if (told) return told;
  const upper = quantile(sortedSizes(values), 0.95);
  const why = Number.isFinite(upper)
    ? `one in twenty is above ${shown(upper)}`
    : 'there is nothing to tell it from';
  return { unit: upper > feetAbove ? 'ft' : 'm', why, sure: false };
}
