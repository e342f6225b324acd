import type { SourceKey } from './bibliography.js';
import type { HowKnown } from './how-known.js';

/** A value that cannot be separated from where it comes from and how we know it. */
export interface Cited<T> {
  readonly value: T;
  readonly source: SourceKey;
  readonly known: HowKnown;
  /** Table, equation or page in the source, or a caveat. */
  readonly place?: string;
}

/** Shorthand for table rows. */
export function cite<T>(value: T, source: SourceKey, known: HowKnown, place?: string): Cited<T> {
  return place === undefined ? { value, source, known } : { value, source, known, place };
}
