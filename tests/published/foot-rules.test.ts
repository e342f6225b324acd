import { describe, expect, it } from 'vitest';
import {
  type AgeClass,
  criticalRootZone,
  criticalRootZoneByTolerance,
  type Tolerance,
} from '../../packages/core/src/roots/protection.js';
import { fromInches, toFeet } from '../../packages/core/src/units/length.js';
import { residual } from './residual.js';

/**
 * Critical root zones in feet of radius for each inch of trunk.
 *
 * Tolerance: the rules are products of exact units (1 ft = 12 in), so only the rounding of binary fractions.
 */
const ROUNDING_FT = 1e-9;

describe('feet of radius for each inch of trunk', () => {
  it.each([
    ['Vancouver, Washington, code 20.170.100: 1 ft an inch', 20, 1, 20],
    ['Ventura county code 8178-7.4.3, its worked example: 1.5 ft an inch', 11, 1.5, 16.5],
    ['Edina, Minnesota, its worked example: 1.5 ft an inch', 10, 1.5, 15],
    ['NC State Extension, its worked example: 1.25 ft an inch', 12, 1.25, 15],
  ])('%s', (source, trunkIn, feetPerInch, radiusFt) => {
    const got = toFeet(criticalRootZone(fromInches(trunkIn), feetPerInch));
    residual({ what: source, got, published: radiusFt, tolerance: ROUNDING_FT });
  });

  it.each([
    [1, 12],
    [1.25, 15],
    [1.5, 18],
  ])('makes %f ft an inch %f trunk diameters', (feetPerInch, multiple) => {
    const trunk = fromInches(20);
    residual({
      what: `${feetPerInch} ft an inch in trunk diameters`,
      got: criticalRootZone(trunk, feetPerInch) / trunk,
      published: multiple,
      tolerance: ROUNDING_FT,
    });
  });

  it('is 6.096 m for 20 in at a foot an inch', () => {
    residual({
      what: '20 in',
      got: criticalRootZone(fromInches(20), 1),
      published: 6.096,
      tolerance: ROUNDING_FT,
    });
  });
});

describe('by tolerance and age (Matheny & Clark 1998, from memory)', () => {
  const TABLE: readonly [Tolerance, AgeClass, number][] = [
    ['good', 'young', 0.5],
    ['good', 'mature', 0.75],
    ['good', 'overmature', 1.0],
    ['moderate', 'young', 0.75],
    ['moderate', 'mature', 1.0],
    ['moderate', 'overmature', 1.25],
    ['poor', 'young', 1.0],
    ['poor', 'mature', 1.25],
    ['poor', 'overmature', 1.5],
  ];

  it.each(TABLE)('%s tolerance, %s: %f ft an inch', (tolerance, age, feetPerInch) => {
    const got = toFeet(criticalRootZoneByTolerance(fromInches(10), tolerance, age));
    residual({
      what: `${tolerance}, ${age}, 10 in`,
      got,
      published: 10 * feetPerInch,
      tolerance: ROUNDING_FT,
    });
  });

  it('never asks less of a worse tolerance or an older tree', () => {
    const at = (t: Tolerance, a: AgeClass): number => criticalRootZoneByTolerance(fromInches(10), t, a);
    for (const age of ['young', 'mature', 'overmature'] as const) {
      expect(at('good', age)).toBeLessThan(at('moderate', age));
      expect(at('moderate', age)).toBeLessThan(at('poor', age));
    }
    for (const tolerance of ['good', 'moderate', 'poor'] as const) {
      expect(at(tolerance, 'young')).toBeLessThan(at(tolerance, 'mature'));
      expect(at(tolerance, 'mature')).toBeLessThan(at(tolerance, 'overmature'));
    }
  });
});
