import type { SourceKey } from '../../sources/bibliography.js';
import { type Cited, cite } from '../../sources/cited.js';
import type { HowKnown } from '../../sources/how-known.js';
import { fromFeet, fromInches } from '../../units/length.js';
import { fromPsi } from '../../units/pressure.js';
import type { Pascals } from '../../units/quantity.js';
import type { PipeRow, PipeSize } from '../pipe-row.js';

/** Nominal millimetres by which a size in inches is sold. */
const NOMINAL_MM: Readonly<Record<number, number>> = {
  2: 50,
  3: 75,
  4: 100,
  6: 150,
  8: 200,
  10: 250,
  12: 300,
};

/** A size with its inside diameter in inches. */
export function size(nominalIn: number, inside: Cited<number>, stiffness?: Cited<Pascals>): PipeSize {
  const nominalMm = NOMINAL_MM[nominalIn];
  if (nominalMm === undefined) throw new RangeError(`no nominal size of ${nominalIn} in`);
  const insideDiameterM = { ...inside, value: fromInches(inside.value) };
  return stiffness === undefined
    ? { nominalIn, nominalMm, insideDiameterM }
    : { nominalIn, nominalMm, insideDiameterM, stiffness };
}

/** Sizes whose nominal size is the inside diameter. */
export function nominalSizes(inches: readonly number[], source: SourceKey, known: HowKnown): PipeSize[] {
  return inches.map((nominal) => size(nominal, cite(nominal, source, known, 'nominal size is the bore')));
}

export function psi(value: number, source: SourceKey, known: HowKnown, place?: string): Cited<Pascals> {
  return cite(fromPsi(value), source, known, place);
}

/** A laying length in feet. */
export function feet(value: number, source: SourceKey, known: HowKnown, place?: string): Cited<number> {
  return cite(Number(fromFeet(value)), source, known, place);
}

export const otherFeet = (...values: readonly number[]): number[] => values.map((value) => fromFeet(value));

/** Expected life, and half of it as the age to assume. */
export function life(
  years: number,
  place: string,
  known: HowKnown = 'read',
): Pick<PipeRow, 'expectedLifeYears' | 'assumedAgeYears'> {
  return {
    expectedLifeYears: cite(
      years,
      known === 'judgement' ? 'our-judgement' : 'service-life-ranges',
      known,
      place,
    ),
    assumedAgeYears: cite(years / 2, 'our-judgement', 'judgement', 'half of the expected life'),
  };
}
