import type { SourceKey } from '../sources/bibliography.js';
import type { HowKnown } from '../sources/how-known.js';

/** One number that a score was worked out with, and where it comes from. */
export interface Factor {
  readonly what: string;
  readonly value: number;
  readonly unit: string;
  readonly source: SourceKey;
  readonly known: HowKnown;
  /** Why this value, or where in the source. */
  readonly why: string;
}
