import { describe, expect, it } from 'vitest';
import {
  fromCubicFeetPerSecond,
  fromInchesPerHour,
  rainMetresPerSecond,
  toCubicFeetPerSecond,
  toGallonsPerMinute,
  toInchesPerHour,
  toLitresPerSecond,
} from '../../../packages/core/src/units/flow.js';
import { fromSquareFeet, toMillimetres, toSquareFeet } from '../../../packages/core/src/units/length.js';

describe('flow', () => {
  // NIST SP 811, table B.8: a gallon a minute is 6.309 020 E-05 m3/s, a cubic foot a second 2.831 685 E-02
  it('is converted as the standard has it', () => {
    expect(toGallonsPerMinute(6.30902e-5)).toBeCloseTo(1, 6);
    expect(toCubicFeetPerSecond(2.831685e-2)).toBeCloseTo(1, 6);
    expect(fromCubicFeetPerSecond(1)).toBeCloseTo(2.831685e-2, 8);
    expect(toLitresPerSecond(0.0025)).toBe(2.5);
  });
});

describe('rain', () => {
  it('is converted both ways', () => {
    expect(fromInchesPerHour(2)).toBeCloseTo(50.8, 12);
    expect(toInchesPerHour(fromInchesPerHour(3.7))).toBeCloseTo(3.7, 12);
    expect(rainMetresPerSecond(3600)).toBeCloseTo(0.001, 12);
  });
});

describe('area and small lengths', () => {
  // an acre is 43,560 sq ft and 4,046.856 m2 (NIST SP 811, international foot)
  it('are converted both ways', () => {
    expect(fromSquareFeet(43_560)).toBeCloseTo(4046.856, 3);
    expect(toSquareFeet(fromSquareFeet(123))).toBeCloseTo(123, 9);
    expect(toMillimetres(0.1016)).toBeCloseTo(101.6, 9);
  });
});
