import { describe, expect, it } from 'vitest';
import { horizonOf } from '../../../packages/core/src/risk/horizon.js';

const integral = (years: number, of: (t: number) => number): number => {
  const { yearsAhead, weights } = horizonOf(years);
  return yearsAhead.reduce((sum, t, k) => sum + of(t) * (weights[k] as number), 0);
};

// Abramowitz & Stegun 1964, 25.4.29: n points integrate powers to 2 n - 1 without error
describe('the rule over the horizon', () => {
  it.each([0, 1, 2, 3, 4, 5, 6, 7])('integrates the power %d', (power) => {
    const years = 7.5;
    const exact = years ** (power + 1) / (power + 1);
    expect(integral(years, (t) => t ** power) / exact).toBeCloseTo(1, 12);
  });

  it('is off on the eighth, so the test above can tell', () => {
    expect(Math.abs(integral(1, (t) => t ** 8) * 9 - 1)).toBeGreaterThan(1e-5);
  });

  it.each([0, -1, Number.NaN, Infinity])('refuses %d years', (years) => {
    expect(() => horizonOf(years)).toThrow(
      new RangeError(`horizonYears must be a positive number, got ${years}`),
    );
  });
});
