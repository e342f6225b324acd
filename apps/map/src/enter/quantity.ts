import { quantities, type Units } from '@rootreach/core';
import { familyOf, type LengthUnit, metresOf } from './length-units.js';
import type { TypedLength } from './parse-length.js';

type Values = Readonly<Record<string, unknown>>;
export type QuantityKey = Exclude<keyof typeof quantities, 'serves' | 'stems'>;

const unitIn = (name: string): LengthUnit => name.slice(name.lastIndexOf('_') + 1) as LengthUnit;
const baseOf = (key: keyof typeof quantities): string => {
  const first = quantities[key].names[0]?.name ?? '';
  return first.slice(0, first.lastIndexOf('_'));
};

/** Property that marks a value as an estimate: `dbh_about`. */
export const aboutName = (key: keyof typeof quantities): string => `${baseOf(key)}_about`;

/** A length among a feature's properties, metres, whatever unit it stands in; null where there is none. */
export function readLength(values: Values, key: QuantityKey): number | null {
  for (const { name, toSi } of quantities[key].names) {
    const value = values[name];
    if (typeof value === 'number') return toSi(value);
  }
  return null;
}

/** All names of a quantity, taken away. */
export const without = (key: keyof typeof quantities): Record<string, undefined> =>
  Object.fromEntries([
    ...quantities[key].names.map(({ name }) => [name, undefined]),
    [aboutName(key), undefined],
  ]);

/** Keeps what was typed free of the noise of binary fractions. */
const clean = (value: number): number => Number(value.toFixed(6));

/** The property a length goes into: under the unit it was typed in, else under one of the same family. */
export function lengthName(key: keyof typeof quantities, unit: LengthUnit): string {
  const names = quantities[key].names.map(({ name }) => name);
  const same = names.find((name) => unitIn(name) === unit);
  const family = names.find((name) => familyOf(unitIn(name)) === familyOf(unit));
  return same ?? family ?? (names[0] as string);
}

/** Properties that say this length, and no other of its names. */
export function writeLength(key: QuantityKey, typed: TypedLength, about: boolean): Record<string, unknown> {
  const name = lengthName(key, typed.unit);
  const value = unitIn(name) === typed.unit ? typed.value : typed.lengthM / metresOf[unitIn(name)];
  return { ...without(key), [name]: clean(value), [aboutName(key)]: about || undefined };
}

/** Several stems, in the unit of the list that is there. */
export function readStems(values: Values): readonly number[] | null {
  for (const { name, toSi } of quantities.stems.names) {
    const list = values[name];
    if (Array.isArray(list)) return list.map((value) => toSi(Number(value)));
  }
  return null;
}

export function writeStems(stemsM: readonly number[], units: Units): Record<string, unknown> {
  const unit = units === 'us' ? 'in' : 'cm';
  const values = stemsM.map((stemM) => clean(stemM / metresOf[unit]));
  return { ...without('stems'), [lengthName('stems', unit)]: values };
}
