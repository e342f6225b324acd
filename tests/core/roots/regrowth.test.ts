import { describe, expect, it } from 'vitest';
import { regrownShare, regrowthYears, rootSpreadRate } from '../../../packages/core/src/roots/regrowth.js';

describe('roots that come back to a dug place', () => {
  it('spread 0.45 m a year in mild kinds and 1.2 m in vigorous ones', () => {
    expect([rootSpreadRate(1), rootSpreadRate(5)]).toEqual([0.45, 1.2]);
  });

  it('need the way from stem to pipe, between two and ten years', () => {
    expect(regrowthYears(4.5, 0.9)).toBeCloseTo(5, 12);
    expect(regrowthYears(0.5, 0.9)).toBe(2);
    expect(regrowthYears(30, 0.9)).toBe(10);
  });

  it('are back by 1 - 1/e after that time, by 98 % after twice of it, and not before the dig', () => {
    expect(regrownShare(5, 5)).toBeCloseTo(0.632121, 6);
    expect(regrownShare(10, 5)).toBeCloseTo(0.981684, 6);
    expect(regrownShare(0, 5)).toBe(0);
    expect(regrownShare(-3, 5)).toBe(0);
  });
});
