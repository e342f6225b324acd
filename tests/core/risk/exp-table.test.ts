import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expOfMinus } from '../../../packages/core/src/risk/exp-table.js';

const x = fc.double({ min: 0, max: 60, noNaN: true });

describe('the tabled exponential', () => {
  it('is within three ten-millionths of the exact one', () => {
    fc.assert(
      fc.property(x, (at) => {
        expect(Math.abs(expOfMinus(at) / Math.exp(-at) - 1)).toBeLessThan(3e-7);
      }),
      { seed: 12, numRuns: 1000 },
    );
    for (const at of [0, 1e-12, 11.999999, 12, 12.000001, 700]) {
      expect(Math.abs(expOfMinus(at) / Math.exp(-at) - 1)).toBeLessThan(3e-7);
    }
  });

  it('never rises', () => {
    fc.assert(
      fc.property(x, x, (a, b) => {
        expect(expOfMinus(Math.max(a, b))).toBeLessThanOrEqual(expOfMinus(Math.min(a, b)));
      }),
      { seed: 13, numRuns: 1000 },
    );
    // across the table's end, where the exact function takes over
    for (let i = 0; i < 1000; i++) {
      expect(expOfMinus(12 + (i - 499) * 1e-6)).toBeLessThanOrEqual(expOfMinus(12 + (i - 500) * 1e-6));
    }
  });
});
