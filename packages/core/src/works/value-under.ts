import type { Choice } from '../model/works.js';
import { troubleValue, visitsValue } from './present-value.js';
import { MOST_YEARS } from './stretch-odds.js';

/** What events cost, from the price list; null where a price is missing. */
export interface EventCosts {
  /** New roots come in. */
  readonly entry: number | null;
  /** Something known stops the line. */
  readonly stoppage: number | null;
}

/** A choice with what its present value is made of, so that it can be worked out again for other numbers. */
export interface Assessed {
  readonly choice: Choice;
  readonly expectedBy: readonly number[];
  /** Stoppages a year from what stays in the pipe and between clearings. */
  readonly ratePerYear: number;
}

/** Numbers under which a present value is taken. */
export interface Terms {
  readonly horizonYears: number;
  readonly discountRate: number;
  readonly nowFactor: number;
  readonly troubleFactor: number;
  readonly rootFactor: number;
}

/** Present value and its parts under some terms; null where a price is missing. */
export function valueUnder(
  { choice, expectedBy, ratePerYear }: Assessed,
  costs: EventCosts,
  terms: Terms,
): { now: number; recurring: number; trouble: number } | null {
  const { horizonYears, discountRate, nowFactor, troubleFactor, rootFactor } = terms;
  if (choice.now === null || costs.entry === null || costs.stoppage === null) return null;
  if (choice.recurring.some(({ each }) => each === null)) return null;
  const recurring = choice.recurring.reduce(
    (sum, { each, everyYears }) => sum + visitsValue(each as number, everyYears, discountRate, horizonYears),
    0,
  );
  const last = Math.min(MOST_YEARS, expectedBy.length - 1);
  const at = (year: number): number => rootFactor * (expectedBy[Math.min(last, year)] as number);
  // where nobody looks, whatever comes in goes on until it stops the line
  const each = choice.recurring.length === 0 ? costs.stoppage : costs.entry;
  const entries = troubleValue(each, at, discountRate, horizonYears);
  const stoppages = troubleValue(costs.stoppage, (year) => ratePerYear * year, discountRate, horizonYears);
  return { now: nowFactor * choice.now, recurring, trouble: troubleFactor * (entries + stoppages) };
}

export const totalOf = (parts: { now: number; recurring: number; trouble: number } | null): number | null =>
  parts === null ? null : parts.now + parts.recurring + parts.trouble;
