import { describe, expect, it } from 'vitest';
import { crownByEquation, crownRadius, stemForCrown } from '../../../packages/core/src/roots/crown.js';
import { metres } from '../../../packages/core/src/units/quantity.js';
import { kind } from './kind.js';

describe('the crown of a trunk', () => {
  it('is that of all species where its kind was not measured: 0.662 x 30^0.722 m', () => {
    expect(crownRadius(kind({ matureCrownM: 16 }), metres(0.3))).toBeCloseTo(7.715064 / 2, 5);
  });

  it('is at most the mature crown of its kind, and all of it in a palm', () => {
    expect(crownRadius(kind({ matureCrownM: 7 }), metres(0.3))).toBe(3.5);
    expect(crownRadius(kind({ form: 'palm', matureCrownM: 5 }), metres(0.1))).toBe(2.5);
  });
});

describe('a crown by a parabola', () => {
  const by = (c: number, dbhCm: number): number =>
    crownByEquation(
      { form: 'quad', a: 1, b: 0.1, c, region: '', n: 1, fittedMinM: 1.5, fittedMaxM: 90 },
      metres(dbhCm / 100),
    );

  it('stays at its peak: 1 + 0.1 x 50 / 2 at 50 cm', () => {
    expect(by(-0.001, 20)).toBeCloseTo(1 + 2 - 0.4, 12);
    expect(by(-0.001, 50)).toBeCloseTo(3.5, 12);
    expect(by(-0.001, 80)).toBeCloseTo(3.5, 12);
  });

  it('has none where it opens upward or is straight', () => {
    expect(by(0.001, 80)).toBeCloseTo(1 + 8 + 6.4, 12);
    expect(by(0, 80)).toBeCloseTo(9, 12);
  });

  it('is kept between the crowns it was fitted on', () => {
    expect(by(0, 2)).toBe(1.5);
    expect(by(0.1, 100)).toBe(90);
  });
});

describe('the trunk of a crown', () => {
  it('is the one that carries it', () => {
    // 0.662 D^0.722 = 6 m at 21.18 cm
    const found = stemForCrown(kind({ matureCrownM: 16 }), metres(3));
    expect(found).toBeCloseTo(0.21178, 3);
    expect(Math.abs(found - 0.211783)).toBeLessThan(1e-4);
  });

  it('goes by the ratio of its kind, else 24, above the mature crown', () => {
    expect(stemForCrown(kind({ matureCrownM: 10 }), metres(6))).toBe(0.5);
    expect(stemForCrown(kind({ matureCrownM: 10, crownRatio: 20 }), metres(6))).toBe(0.6);
  });
});
