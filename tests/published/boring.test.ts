import { describe, expect, it } from 'vitest';
import { boringPast } from '../../packages/core/src/roots/boring.js';
import { fromInches, toFeet, toInches } from '../../packages/core/src/units/length.js';
import { residual } from './residual.js';

/**
 * Municipal tunnelling table, as a page quotes it: where an open trench ends and tunnelling begins, by trunk diameter in
 * whole inches. The row above 19 in is from memory.
 *
 * Tolerance: rounding of binary fractions.
 */
const ROWS = [
  [6, 5],
  [7, 5],
  [9, 5],
  [10, 10],
  [12, 10],
  [14, 10],
  [15, 12],
  [19, 12],
  [20, 15],
  [36, 15],
] as const;

describe('tunnelling under roots (municipal table)', () => {
  it('starts where the table says', () => {
    for (const [inches, feet] of ROWS) {
      const { startM } = boringPast(fromInches(inches), 99);
      residual({ what: `${inches} in`, got: toFeet(startM), published: feet, tolerance: 1e-9 });
    }
  });

  it('starts at the dripline for trunks below 6 in', () => {
    expect(boringPast(fromInches(5), 2.2).startM).toBe(2.2);
    expect(boringPast(fromInches(5.9), 1.7).startM).toBe(1.7);
  });

  it('takes the wider row for a trunk between two', () => {
    expect(toFeet(boringPast(fromInches(9.5), 3).startM)).toBeCloseTo(10, 9);
    expect(toFeet(boringPast(fromInches(19.5), 3).startM)).toBeCloseTo(15, 9);
  });

  it('runs 24 in deep, within the 18 to 36 in of common practice (from memory)', () => {
    const inches = toInches(boringPast(0.4, 5).depthM);
    residual({ what: 'depth', got: inches, published: 24, tolerance: 1e-9 });
    expect(inches).toBeGreaterThanOrEqual(18);
    expect(inches).toBeLessThanOrEqual(36);
  });
});
