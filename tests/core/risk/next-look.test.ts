import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { horizonOf } from '../../../packages/core/src/risk/horizon.js';
import { nextLookYear } from '../../../packages/core/src/risk/next-look.js';

const NOW = 2026.25;
const horizon = horizonOf(10);
const flat = (rate: number): Float64Array => new Float64Array(4).fill(rate);

/** Events by which one chance in ten has passed. */
const TENTH = -Math.log(0.9);

describe('the next look', () => {
  it('is the first year by which one chance in ten has passed', () => {
    // at 0.03 a year: 3.51 years, so by the fourth
    expect(nextLookYear(flat(0.03), horizon, NOW, 0)).toBe(Math.floor(NOW + Math.ceil(TENTH / 0.03)));
    expect(nextLookYear(flat(0.02), horizon, NOW, 0)).toBe(Math.floor(NOW + Math.ceil(TENTH / 0.02)));
  });

  it('is next year at the soonest and in ten years at the latest', () => {
    expect(nextLookYear(flat(5), horizon, NOW, 0)).toBe(2027);
    expect(nextLookYear(flat(0), horizon, NOW, 0)).toBe(2036);
    expect(nextLookYear(flat(1e-6), horizon, NOW, 0)).toBe(2036);
  });

  it('counts the years since it was last seen clear', () => {
    expect(nextLookYear(flat(0.02), horizon, NOW, 3)).toBe(nextLookYear(flat(0.02), horizon, NOW, 0) - 3);
    expect(nextLookYear(flat(0.02), horizon, NOW, 40)).toBe(2027);
  });

  it('waits for a rate that is only rising', () => {
    const rising = Float64Array.of(0, 0, 0.05, 0.05);
    expect(nextLookYear(rising, horizon, NOW, 0)).toBeGreaterThan(nextLookYear(flat(0.05), horizon, NOW, 0));
  });

  it('goes up a slope: 0.01 t a year comes to 0.005 t^2', () => {
    // the tenth is passed after 4.59 years, and no sooner than the fifth
    const slope = Float64Array.from(horizon.yearsAhead, (t) => 0.01 * t);
    expect(nextLookYear(slope, horizon, NOW, 0)).toBe(2031);
    // twice as steep: 3.25 years
    expect(
      nextLookYear(
        slope.map((r) => 2 * r),
        horizon,
        NOW,
        0,
      ),
    ).toBe(2030);
  });

  it('never moves later for a higher rate or a longer time unseen', () => {
    const rate = fc.double({ min: 0, max: 0.3, noNaN: true });
    const rates = fc.tuple(rate, rate, rate, rate);
    fc.assert(
      fc.property(
        rates,
        fc.double({ min: 1, max: 4, noNaN: true }),
        fc.nat(30),
        fc.nat(30),
        (four, times, a, b) => {
          const look = (factor: number, unseen: number) =>
            nextLookYear(
              Float64Array.from(four, (r) => r * factor),
              horizon,
              NOW,
              unseen,
            );
          expect(look(times, a)).toBeLessThanOrEqual(look(1, a));
          expect(look(1, a + b)).toBeLessThanOrEqual(look(1, a));
        },
      ),
      { seed: 11, numRuns: 200 },
    );
  });
});
