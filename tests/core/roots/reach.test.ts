import { describe, expect, it } from 'vitest';
import {
  palmReach,
  reachBeforeGenus,
  rootRadiusByTrunk,
  soilFactor,
} from '../../../packages/core/src/roots/reach.js';
import { metres } from '../../../packages/core/src/units/quantity.js';

describe('how far roots reach, worked by hand', () => {
  // 38 trunk diameters to 20 cm (Day et al. 2010), 15 m for each further metre of trunk (judgement)
  it.each([
    [0, 0],
    [0.1, 3.8],
    [0.2, 7.6],
    [0.3, 9.1],
    [0.6, 13.6],
  ])('by a trunk of %d m: %d m', (trunk, radius) => {
    expect(rootRadiusByTrunk(metres(trunk))).toBeCloseTo(radius, 12);
  });

  it('is the mean of the trunk rule and 2.9 crown radii', () => {
    // (13.6 + 2.9 x 5) / 2
    expect(reachBeforeGenus(metres(0.6), metres(5))).toBeCloseTo(14.05, 12);
  });

  it('is two crown radii under a palm', () => {
    expect(palmReach(metres(2.5))).toBe(5);
  });

  it('is further in sand and nearer in clay than in loam, which is what is taken where nothing is known', () => {
    expect(soilFactor('sand')).toBeGreaterThan(soilFactor('loam'));
    expect(soilFactor('loam')).toBeGreaterThan(soilFactor('clay'));
    expect(soilFactor(null)).toBe(soilFactor('loam'));
  });
});
