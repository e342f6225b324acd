import { describe, expect, it } from 'vitest';
import { crownAfter, stemAfter } from '../../../packages/core/src/roots/growth.js';
import { matureStem, usualMatureSize } from '../../../packages/core/src/roots/mature-size.js';
import { metres } from '../../../packages/core/src/units/quantity.js';
import { kind } from './kind.js';

describe('a trunk over the years', () => {
  const tree = kind({ matureCrownM: 16, growthCm: 1 });

  it('grows by the yearly rate of its kind', () => {
    expect(stemAfter(tree, metres(0.3), 10)).toBeCloseTo(0.4, 12);
    expect(stemAfter(tree, metres(0.3), 0)).toBe(0.3);
  });

  it('stops at the mature trunk and does not shrink to it', () => {
    expect(stemAfter(tree, metres(0.3), 500)).toBe(matureStem(tree));
    expect(stemAfter(tree, metres(2), 10)).toBe(2);
  });

  it('was thinner, but not thinner than it was planted', () => {
    expect(stemAfter(tree, metres(0.3), -10)).toBeCloseTo(0.2, 12);
    expect(stemAfter(tree, metres(0.3), -100)).toBe(0.025);
    expect(stemAfter(tree, metres(0.01), -100)).toBe(0.01);
  });

  it('does not thicken in a palm', () => {
    expect(stemAfter(kind({ form: 'palm' }), metres(0.3), 10)).toBe(0.3);
    expect(stemAfter(kind({ form: 'palm' }), metres(0.3), -10)).toBe(0.3);
  });
});

describe('a crown over the years', () => {
  // by 0.662 D^0.722 a trunk of 30 cm has a crown of 7.715 m, one of 50 cm 11.156 m: 1.446 times as wide
  const tree = kind({ matureCrownM: 16 });
  const usual = metres(7.715064 / 2);

  it('grows in proportion to what its trunk usually carries', () => {
    expect(crownAfter(tree, metres(3), usual, metres(0.5))).toBeCloseTo(3 * 1.446022, 5);
    expect(crownAfter(tree, metres(3), usual, metres(0.3))).toBeCloseTo(3, 6);
  });

  it('never grows past the mature crown, nor shrinks to it', () => {
    expect(crownAfter(tree, metres(7), usual, metres(0.5))).toBe(8);
    expect(crownAfter(tree, metres(9), usual, metres(0.5))).toBe(9);
  });

  it('was smaller when the trunk was', () => {
    expect(crownAfter(tree, metres(5.578075), metres(5.578075), metres(0.3))).toBeCloseTo(7.715064 / 2, 5);
    // also where it is above the mature crown now
    expect(crownAfter(tree, metres(9), metres(5.578075), metres(0.3))).toBeCloseTo(9 / 1.446022, 4);
  });

  it('stays where the proportions say nothing', () => {
    expect(crownAfter(tree, metres(3), metres(0), metres(0.5))).toBe(3);
  });
});

describe('a mature tree', () => {
  it('has a trunk of crown over ratio: 24 where its kind was not measured', () => {
    expect(usualMatureSize(kind({ matureCrownM: 12 }))).toEqual({ crownRadius: 6, stemDiameter: 0.5 });
    expect(usualMatureSize(kind({ matureCrownM: 12, crownRatio: 20 })).stemDiameter).toBeCloseTo(0.6, 12);
  });

  it('has three quarters of the largest crowns measured, and all of a book one', () => {
    const { crownRadius, stemDiameter } = usualMatureSize(kind({ matureCrownM: 16, crownOf: 'measured' }));
    expect(crownRadius).toBe(6);
    expect(stemDiameter).toBe(0.5);
  });

  it('has a trunk between 15 cm and 1.5 m, and 35 cm as a palm', () => {
    expect(usualMatureSize(kind({ matureCrownM: 2 })).stemDiameter).toBe(0.15);
    expect(usualMatureSize(kind({ matureCrownM: 48 })).stemDiameter).toBe(1.5);
    expect(usualMatureSize(kind({ form: 'palm', matureCrownM: 5 })).stemDiameter).toBe(0.35);
    expect(matureStem(kind({ form: 'palm', matureCrownM: 5 }))).toBe(0.35);
  });

  it('grows until its trunk carries the largest crown of its kind', () => {
    // 0.662 D^0.722 = 0.999 x 10 m at 42.91 cm; 10 m / 24 would be 41.67 cm
    expect(matureStem(kind({ matureCrownM: 10 }))).toBeCloseTo(0.4291, 3);
    // the ratio of its kind gives the thicker trunk, 10 m / 20
    expect(matureStem(kind({ matureCrownM: 10, crownRatio: 20 }))).toBe(0.5);
    // 0.662 D^0.722 = 30 m would be a trunk of 2 m
    expect(matureStem(kind({ matureCrownM: 30, crownRatio: 30 }))).toBe(1.5);
  });
});
