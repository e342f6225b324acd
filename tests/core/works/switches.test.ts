import { describe, expect, it } from 'vitest';
import type { Choice, ChoiceId, Recurring } from '../../../packages/core/src/model/works.js';
import { cheapest, switchesOf } from '../../../packages/core/src/works/switches.js';
import {
  type Assessed,
  type EventCosts,
  type Terms,
  totalOf,
  valueUnder,
} from '../../../packages/core/src/works/value-under.js';

/** No discounting over ten years, so that sums can be done by hand. */
const terms: Terms = { horizonYears: 10, discountRate: 0, nowFactor: 1, troubleFactor: 1, rootFactor: 1 };
const costs: EventCosts = { entry: 200, stoppage: 1000 };

interface Given {
  readonly id: ChoiceId;
  readonly now: number | null;
  readonly every?: readonly [years: number, each: number | null];
  /** Entries a year, even over fifty years. */
  readonly entries?: number;
  readonly stoppages?: number;
}

function assessed({ id, now, every, entries = 0, stoppages = 0 }: Given): Assessed {
  const recurring: Recurring[] = every
    ? [{ what: 'camera-look', everyYears: every[0], each: every[1], because: 'look-target' }]
    : [];
  return {
    choice: { id, now, recurring } as Partial<Choice> as Choice,
    expectedBy: Array.from({ length: 51 }, (_, year) => entries * year),
    ratePerYear: stoppages,
  };
}

const worth = (given: Given, under: Partial<Terms> = {}) =>
  valueUnder(assessed(given), costs, { ...terms, ...under });

describe('what a choice costs in all', () => {
  it('is what is paid now, the visits, and the trouble', () => {
    // visits in years 3, 6 and 9; 0.1 entries a year that are cleared, 0.02 stoppages a year
    const parts = worth({ id: 'clear-again', now: 500, every: [3, 150], entries: 0.1, stoppages: 0.02 });
    expect(parts?.now).toBe(500);
    expect(parts?.recurring).toBe(450);
    expect(parts?.trouble).toBeCloseTo(0.1 * 10 * 200 + 0.02 * 10 * 1000, 9);
    expect(totalOf(parts)).toBeCloseTo(500 + 450 + 200 + 200, 9);
  });

  it('takes what comes in for a stoppage where nobody looks', () => {
    expect(worth({ id: 'leave', now: 0, entries: 0.1 })?.trouble).toBeCloseTo(0.1 * 10 * 1000, 9);
  });

  it('goes with the factors that are asked of it', () => {
    const given: Given = { id: 'clear-again', now: 500, every: [3, 150], entries: 0.1, stoppages: 0.02 };
    expect(worth(given, { nowFactor: 2 })).toMatchObject({ now: 1000, recurring: 450 });
    expect(worth(given, { troubleFactor: 2 })?.trouble).toBeCloseTo(800, 9);
    // roots come in three times as often; what is known and left stops the line as before
    expect(worth(given, { rootFactor: 3 })?.trouble).toBeCloseTo(800, 9);
    expect(worth(given, { horizonYears: 5 })?.trouble).toBeCloseTo(200, 9);
  });

  it('expects no more entries after the years that were worked out', () => {
    const given: Given = { id: 'leave', now: 0, entries: 0.1, stoppages: 0.02 };
    expect(worth(given, { horizonYears: 60 })?.trouble).toBeCloseTo(0.1 * 50 * 1000 + 0.02 * 60 * 1000, 9);
  });

  it('is not known where a price is missing', () => {
    expect(worth({ id: 'leave', now: null })).toBeNull();
    expect(worth({ id: 'clear-again', now: 0, every: [3, null] })).toBeNull();
    const free = assessed({ id: 'leave', now: 0 });
    expect(valueUnder(free, { ...costs, entry: null }, terms)).toBeNull();
    expect(valueUnder(free, { ...costs, stoppage: null }, terms)).toBeNull();
    expect(totalOf(null)).toBeNull();
  });
});

// 100 a year in trouble, against 600 now: even after six years
const leave = assessed({ id: 'leave', now: 0, entries: 0.1 });
const renew = assessed({ id: 'replace-heavier', now: 600 });

describe('the cheapest choice', () => {
  const of = (...choices: Assessed[]) => cheapest(choices, costs, () => terms);

  it('has the lowest sum, the first of equals, and a price', () => {
    expect(of(leave, renew)).toBe('replace-heavier');
    expect(of(leave, assessed({ id: 'move', now: 1000 }))).toBe('leave');
    expect(of(assessed({ id: 'move', now: 1000 }), leave)).toBe('move');
    expect(of(assessed({ id: 'move', now: null }), leave)).toBe('leave');
    expect(of(assessed({ id: 'move', now: null }))).toBeNull();
    expect(of()).toBeNull();
  });
});

describe('what would change the answer', () => {
  const switches = switchesOf([leave, renew], costs, terms, 'replace-heavier');
  const at = (what: string) => switches.find((one) => one.what === what);

  it('is six years or fewer: new pipe is worth it from the seventh', () => {
    // at six the sums are equal and the first comes first
    expect(at('horizon-years')).toEqual({
      what: 'horizon-years',
      value: 10,
      range: [1, 50],
      at: 6,
      becomes: 'leave',
    });
  });

  it('is a price of 1000 in place of 600', () => {
    expect(at('price-now')?.at).toBeCloseTo(1000 / 600, 6);
    expect(at('price-now')?.becomes).toBe('leave');
  });

  it('is trouble, or roots, of 6 tenths', () => {
    expect(at('trouble-cost')?.at).toBeCloseTo(0.6, 6);
    expect(at('root-rate')?.at).toBeCloseTo(0.6, 6);
  });

  it('is a discount rate at which ten years of 100, paid at mid-year, are worth 600', () => {
    const rate = at('discount-rate')?.at as number;
    const worthNow = Array.from({ length: 10 }, (_, i) => 100 / (1 + rate) ** (i + 0.5)).reduce(
      (a, b) => a + b,
    );
    expect(worthNow).toBeCloseTo(600, 4);
  });

  it('is nothing where no other choice is ever cheaper', () => {
    const free = assessed({ id: 'leave', now: 0 });
    for (const one of switchesOf([free, renew], costs, terms, 'leave')) {
      expect(one).toMatchObject({ at: null, becomes: null });
    }
  });

  it('is the nearer of two, by ratio', () => {
    // both factors up and down: 1.5 times the trouble pays for a move, 0.1 of it for nothing at all
    const clear = assessed({ id: 'clear-again', now: 100, every: [100, 0], entries: 0.25 });
    const move = assessed({ id: 'move', now: 850 });
    const [rate] = switchesOf([leave, clear, move], costs, terms, 'clear-again').filter(
      ({ what }) => what === 'trouble-cost',
    );
    // clear: 100 + 500 f; leave: 1000 f, cheaper below 0.2; move: 850, cheaper above 1.5
    expect(rate).toMatchObject({ becomes: 'move' });
    expect(rate?.at).toBeCloseTo(1.5, 6);
  });
});
