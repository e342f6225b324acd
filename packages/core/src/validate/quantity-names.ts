import { fromCentimetres, fromFeet, fromInches, fromMillimetres, fromSquareFeet } from '../units/length.js';

/** A quantity in the site file: the names it may stand under, by unit, and how each becomes SI. */
export interface NamedQuantity {
  readonly names: readonly { readonly name: string; readonly toSi: (value: number) => number }[];
}

const LONG = { m: (v: number) => v, ft: fromFeet };
const STEM = { cm: fromCentimetres, in: fromInches, m: (v: number) => v };
const PIPE = { mm: fromMillimetres, in: fromInches };
const AREA = { m2: (v: number) => v, ft2: fromSquareFeet };

function named(base: string, units: Readonly<Record<string, (value: number) => number>>): NamedQuantity {
  return { names: Object.entries(units).map(([unit, toSi]) => ({ name: `${base}_${unit}`, toSi })) };
}
const lengthNamed = (base: string): NamedQuantity => named(base, LONG);
const stemNamed = (base: string): NamedQuantity => named(base, STEM);

/** Every quantity that may be given in more than one unit, by its name without unit. */
export const quantities = {
  dbh: stemNamed('dbh'),
  girth: stemNamed('girth'),
  stems: stemNamed('stems'),
  canopyRadius: lengthNamed('canopy_radius'),
  height: lengthNamed('height'),
  size: named('size', PIPE),
  piece: lengthNamed('piece'),
  depthStart: lengthNamed('depth_start'),
  depthEnd: lengthNamed('depth_end'),
  serves: named('serves', AREA),
  at: lengthNamed('at'),
  to: lengthNamed('to'),
  barrierDepth: lengthNamed('depth'),
  elevation: lengthNamed('elevation'),
} as const satisfies Record<string, NamedQuantity>;

/** Property names of a quantity: `dbh_cm`, `dbh_in`, `dbh_m`. */
export const namesOf = (quantity: NamedQuantity): string[] => quantity.names.map(({ name }) => name);
