import { METRES, type Unit, unitNamed } from './units.js';

/** A size as written: one number, or the class it fell into. */
export interface Size {
  readonly low: number;
  /** Upper end of a class; null for an open one such as `24+`; the same as `low` for a number. */
  readonly high: number | null;
  /** Unit written beside it. */
  readonly unit: Unit | null;
}

const NUMBER = String.raw`(\d+(?:[.,]\d+)?)`;
const UNIT = String.raw`\s*([a-zA-Zè]+\.?|"|''|'|”|″|’|′)?`;
const ONE = new RegExp(`^${NUMBER}${UNIT}$`);
const CLASS = new RegExp(`^${NUMBER}${UNIT}\\s*(?:-|–|—|to|bis|à|a|<)\\s*${NUMBER}${UNIT}$`, 'i');
const ABOVE = new RegExp(
  `^(?:>=?|≥|over|above|more than)\\s*${NUMBER}${UNIT}$|^${NUMBER}${UNIT}\\s*(?:\\+|and (?:up|over|above)|or more)$`,
  'i',
);
const BELOW = new RegExp(`^(?:<=?|≤|under|below|less than|up to)\\s*${NUMBER}${UNIT}$`, 'i');

const number = (text: string): number => Number(text.replace(',', '.'));

/** A word beside a number that is no unit makes the text something else than a size. */
function unitOf(...words: (string | undefined)[]): Unit | null | undefined {
  const given = words.filter((word) => word !== undefined);
  const units = given.map(unitNamed);
  return units.includes(null) ? undefined : (units.at(-1) ?? null);
}

function size(low: number, high: number | null, unit: Unit | null | undefined): Size | null {
  return unit === undefined || !Number.isFinite(low + (high ?? 0)) ? null : { low, high, unit };
}

/** `24`, `12,5 cm`, `6-12 in`, `>24`, `24+`, `under 6"`; null where it is no size. */
export function sizeOf(value: unknown): Size | null {
  if (typeof value === 'number')
    return Number.isFinite(value) ? { low: value, high: value, unit: null } : null;
  if (typeof value !== 'string') return null;
  const text = value.trim();
  const plain = Number(text);
  if (text !== '' && Number.isFinite(plain)) return { low: plain, high: plain, unit: null };
  const one = ONE.exec(text);
  if (one) return size(number(one[1] as string), number(one[1] as string), unitOf(one[2]));
  const span = CLASS.exec(text);
  if (span) return size(number(span[1] as string), number(span[3] as string), unitOf(span[2], span[4]));
  const above = ABOVE.exec(text);
  if (above) return size(number((above[1] ?? above[3]) as string), null, unitOf(above[2], above[4]));
  const below = BELOW.exec(text);
  return below ? size(0, number(below[1] as string), unitOf(below[2])) : null;
}

/** Share that a trunk of an open class is taken above the class's lower end (judgement). */
const ABOVE_OPEN = 1.15;

/** The middle of a class, in metres. */
export function metresOf({ low, high, unit }: Size, columnUnit: Unit): number {
  const middle = high === null ? low * ABOVE_OPEN : (low + high) / 2;
  return middle * METRES[unit ?? columnUnit];
}

export const isClass = ({ low, high }: Size): boolean => high !== low;
