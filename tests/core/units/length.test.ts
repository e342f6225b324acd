import { describe, expect, it } from 'vitest';
import {
  fromCentimetres,
  fromFeet,
  fromInches,
  fromMillimetres,
  fromSquareFeet,
  toCentimetres,
  toFeet,
  toInches,
} from '../../../packages/core/src/units/length.js';
import { fromPsi, toPsi } from '../../../packages/core/src/units/pressure.js';
import { metres, pascals, squareMetres, years } from '../../../packages/core/src/units/quantity.js';

// NIST SP 811, appendix B: foot 0.3048 m and inch 2.54 cm exactly, square foot 0.09290304 m2, psi 6894.757 Pa
describe('units of length, area and pressure', () => {
  it('are those of NIST SP 811', () => {
    expect(fromFeet(1)).toBe(0.3048);
    expect(fromInches(1)).toBeCloseTo(0.0254, 15);
    expect(fromSquareFeet(1)).toBeCloseTo(0.09290304, 15);
    expect(fromPsi(1)).toBe(6894.757);
  });

  it('are decimal in the metric ones', () => {
    expect(fromCentimetres(30)).toBe(0.3);
    expect(fromMillimetres(110)).toBe(0.11);
    expect(toCentimetres(0.3)).toBe(30);
  });

  it.each([0, 1, 2.5, 100, 12345.678])('come back whole: %d', (value) => {
    expect(toFeet(fromFeet(value))).toBeCloseTo(value, 9);
    expect(toInches(fromInches(value))).toBeCloseTo(value, 9);
    expect(toPsi(fromPsi(value))).toBeCloseTo(value, 9);
    expect(toInches(fromFeet(value))).toBeCloseTo(12 * value, 6);
  });
});

describe('a quantity', () => {
  it.each([
    ['metres', metres],
    ['squareMetres', squareMetres],
    ['years', years],
    ['pascals', pascals],
  ] as const)('of %s is a finite number or an error that names it', (name, make) => {
    expect(make(1.5)).toBe(1.5);
    for (const bad of [Number.NaN, Infinity, -Infinity]) {
      expect(() => make(bad)).toThrow(new RangeError(`${name} must be a finite number, got ${bad}`));
    }
  });
});
