import { fromCentimetres, fromFeet, fromInches, fromMillimetres, fromSquareFeet } from '../units/length.js';

/** A quantity in the site file: its name without unit, and how each unit it may carry becomes SI. */
export interface NamedQuantity {
  readonly base: string;
  readonly units: Readonly<Record<string, (value: number) => number>>;
}

const LONG = { m: (v: number) => v, ft: fromFeet };
const STEM = { cm: fromCentimetres, in: fromInches, m: (v: number) => v };
const PIPE = { mm: fromMillimetres, in: fromInches };
const AREA = { m2: (v: number) => v, ft2: fromSquareFeet };

const lengthNamed = (base: string): NamedQuantity => ({ base, units: LONG });
const stemNamed = (base: string): NamedQuantity => ({ base, units: STEM });

/** Every quantity that may be given in more than one unit, by its name without unit. */
export const quantities = {
  dbh: stemNamed('dbh'),
  girth: stemNamed('girth'),
  stems: stemNamed('stems'),
  canopyRadius: lengthNamed('canopy_radius'),
  height: lengthNamed('height'),
  size: { base: 'size', units: PIPE },
  piece: lengthNamed('piece'),
  depthStart: lengthNamed('depth_start'),
  depthEnd: lengthNamed('depth_end'),
  serves: { base: 'serves', units: AREA },
  at: lengthNamed('at'),
  to: lengthNamed('to'),
  barrierDepth: lengthNamed('depth'),
  elevation: lengthNamed('elevation'),
} as const satisfies Record<string, NamedQuantity>;

/** Property names of a quantity: `dbh_cm`, `dbh_in`, `dbh_m`. */
export const namesOf = (quantity: NamedQuantity): string[] =>
  Object.keys(quantity.units).map((unit) => `${quantity.base}_${unit}`);
