import { textOf } from '@rootreach/core';
import type { Guess } from '../columns/guess-map.js';
import type { Format } from './raw-table.js';

/** Why a row was set aside, or what was taken for it. */
export type Reason =
  | 'broken-row'
  | 'no-position'
  | 'off-the-globe'
  | 'grid-unknown'
  | 'wrong-geometry'
  | 'not-alive'
  | 'not-in-use'
  | 'same-twice'
  | 'trunk-missing'
  | 'trunk-class'
  | 'trunk-unreadable'
  | 'trunk-odd'
  | 'species-missing'
  | 'species-from-code'
  | 'material-missing'
  | 'size-missing'
  | 'size-unreadable'
  | 'size-box'
  | 'date-unreadable'
  | 'parts-split'
  | 'id-renewed'
  | 'position-shared';

/** What became of the rows: set aside, taken with something assumed, or only worth knowing. */
export const fate: Readonly<Record<Reason, 'aside' | 'assumed' | 'note'>> = {
  'broken-row': 'aside',
  'no-position': 'aside',
  'off-the-globe': 'aside',
  'grid-unknown': 'aside',
  'wrong-geometry': 'aside',
  'not-alive': 'aside',
  'not-in-use': 'aside',
  'same-twice': 'aside',
  'trunk-missing': 'assumed',
  'trunk-class': 'assumed',
  'trunk-unreadable': 'assumed',
  'trunk-odd': 'note',
  'species-missing': 'assumed',
  'species-from-code': 'assumed',
  'material-missing': 'assumed',
  'size-missing': 'assumed',
  'size-unreadable': 'assumed',
  'size-box': 'assumed',
  'date-unreadable': 'assumed',
  'parts-split': 'note',
  'id-renewed': 'note',
  'position-shared': 'note',
};

/** How many rows one thing happened to, with the first few of them. */
export interface ReportEntry {
  readonly reason: Reason;
  readonly count: number;
  /** `row 12: Stump`. */
  readonly examples: readonly string[];
}

/** What became of the rows of one table: none is lost without a word. */
export interface IntakeReport {
  readonly file: string;
  readonly format: Format;
  readonly what: 'tree' | 'drain';
  /** Rows in the file, rows that became features, and the features made of them. */
  readonly rows: number;
  readonly taken: number;
  readonly features: number;
  readonly aside: number;
  readonly guesses: readonly Guess[];
  readonly entries: readonly ReportEntry[];
}

/** Examples kept of each reason. */
const EXAMPLES = 3;

/** Counts by reason, with the first examples. */
export class Tally {
  private readonly found = new Map<Reason, { count: number; examples: string[] }>();

  add(reason: Reason, row: number, value: unknown = undefined): void {
    let entry = this.found.get(reason);
    if (entry === undefined) {
      entry = { count: 0, examples: [] };
      this.found.set(reason, entry);
    }
    entry.count += 1;
    if (entry.examples.length < EXAMPLES) {
      const text = (value === undefined ? '' : textOf(value)).slice(0, 60);
      entry.examples.push(text === '' ? `row ${row}` : `row ${row}: ${text}`);
    }
  }

  /** Adds what is known only of the whole. */
  total(reason: Reason, count: number, examples: readonly string[]): void {
    if (count > 0) this.found.set(reason, { count, examples: [...examples] });
  }

  /** What was set aside first, the most frequent first. */
  entries(): ReportEntry[] {
    const order = { aside: 0, assumed: 1, note: 2 };
    return [...this.found.entries()]
      .map(([reason, entry]) => ({ reason, ...entry }))
      .sort((a, b) => order[fate[a.reason]] - order[fate[b.reason]] || b.count - a.count);
  }
}
