import { describe, expect, it } from 'vitest';
import { noDigRadius } from '../../packages/core/src/roots/protection.js';
import { fromInches, toFeet } from '../../packages/core/src/units/length.js';
import { metres } from '../../packages/core/src/units/quantity.js';

/**
 * Smiley, E. T. (2008): Root pruning and stability of young willow oak. Arboriculture & Urban Forestry 34(2).
 * Abstract: no straight cut closer than three trunk diameters; the force that pulls the tree over fell measurably
 * inside that.
 *
 * Tolerance: rounding of binary fractions only (1e-9 m), since the rule is a product with a whole number.
 */
const ROUNDING_M = 1e-9;

describe('no straight cut closer than three trunk diameters (Smiley 2008)', () => {
  it.each([
    [0.1, 0.3],
    [0.3, 0.9],
    [0.6, 1.8],
    [1.2, 3.6],
  ])('a trunk of %f m keeps %f m', (diameterM, radiusM) => {
    const residual = noDigRadius(metres(diameterM)) - radiusM;
    expect(Math.abs(residual), `residual ${residual} m`).toBeLessThan(ROUNDING_M);
  });

  it('refuses a trench 4 ft from a trunk of 20 in: the rule asks for 5 ft', () => {
    const feet = toFeet(noDigRadius(fromInches(20)));
    expect(Math.abs(feet - 5), `residual ${feet - 5} ft`).toBeLessThan(ROUNDING_M);
    expect(feet).toBeGreaterThan(4);
  });
});
