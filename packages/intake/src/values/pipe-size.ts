import { sizeOf } from './size.js';
import { METRES, type Unit } from './units.js';

/** A pipe's size in metres, and what had to be taken for it. */
export interface PipeSize {
  readonly sizeM: number;
  /** For a box or an egg: the circle of the same area stands for it. */
  readonly shape: 'round' | 'box';
}

/** `2'-0"`, `2' 6"`, `2'`, in metres. */
function feetAndInches(text: string): number | null {
  const found = /^(\d+(?:\.\d+)?)\s*(?:'|’|′|ft)\s*-?\s*(?:(\d+(?:\.\d+)?)\s*(?:"|”|″|''|in)?)?$/i.exec(
    text.trim(),
  );
  if (!found) return null;
  return Number(found[1]) * METRES.ft + Number(found[2] ?? 0) * METRES.in;
}

/** `3/4"`, `1 1/2 in`. */
function fraction(text: string): number | null {
  const found = /^(?:(\d+)[\s-]+)?(\d+)\/(\d+)\s*(?:"|”|″|in|inch)?$/i.exec(text.trim());
  if (!found || Number(found[3]) === 0) return null;
  return (Number(found[1] ?? 0) + Number(found[2]) / Number(found[3])) * METRES.in;
}

function oneSide(text: string, unit: Unit): number | null {
  const mixed = feetAndInches(text) ?? fraction(text);
  if (mixed !== null) return mixed;
  const size = sizeOf(text);
  return size === null || size.high !== size.low ? null : size.low * METRES[size.unit ?? unit];
}

/**
 * `12`, `12in`, `12"`, `DN150`, `2'-0" x 3'-0"` in metres; null where it is no size.
 * @param unit Unit of bare numbers in this column.
 */
export function pipeSizeOf(value: unknown, unit: Unit): PipeSize | null {
  if (typeof value === 'number') return value > 0 ? { sizeM: value * METRES[unit], shape: 'round' } : null;
  if (typeof value !== 'string') return null;
  const text = value
    .trim()
    .replace(/^(?:dn|ø|⌀|dia(?:m(?:eter)?)?\.?)\s*/i, (mark) => (/dn/i.test(mark) ? 'DN' : ''));
  if (/^DN\d+$/.test(text)) return { sizeM: Number(text.slice(2)) * METRES.mm, shape: 'round' };
  const sides = text.split(/\s*[x×*]\s*/i);
  const metres = sides.map((side) => oneSide(side, unit));
  const [first, second] = metres;
  if (first === null || first === undefined || !(first > 0)) return null;
  if (sides.length === 1) return { sizeM: first, shape: 'round' };
  if (sides.length !== 2 || second === null || second === undefined || !(second > 0)) return null;
  return { sizeM: Math.sqrt((4 * first * second) / Math.PI), shape: 'box' };
}
