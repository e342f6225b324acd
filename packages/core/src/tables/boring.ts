import { type Cited, cite } from '../sources/cited.js';
import { fromFeet, fromInches } from '../units/length.js';

/** How far from a trunk an open trench ends and a bore under the roots begins. */
export interface BoringRow {
  /** Greatest trunk diameter of the row, metres; the last row has none. */
  readonly stemUpToM: number;
  /** Metres from the trunk; null: at the dripline. */
  readonly startM: Cited<number | null>;
}

const read = (feet: number, place: string): Cited<number> =>
  cite(fromFeet(feet), 'municipal-tunnelling-table', 'read', place);

/**
 * Rows by whole inches in the source. A trunk between two rows (9.5 in) takes the wider one.
 */
export const boringTable: readonly BoringRow[] = [
  {
    stemUpToM: fromInches(6),
    startM: cite(null, 'municipal-tunnelling-table', 'read', 'below 6 in: the dripline'),
  },
  { stemUpToM: fromInches(9), startM: read(5, '6 to 9 in') },
  { stemUpToM: fromInches(14), startM: read(10, '10 to 14 in') },
  { stemUpToM: fromInches(19), startM: read(12, '15 to 19 in') },
  {
    stemUpToM: Number.POSITIVE_INFINITY,
    startM: cite(fromFeet(15), 'municipal-tunnelling-table', 'memory', 'above 19 in, the last line'),
  },
];

/** From the ground to the top of the bore. */
export const boreDepthM = cite(fromInches(24), 'common-practice', 'memory', '18 to 36 in are asked for');
