import { describe, expect, it } from 'vitest';
import { brierOf, calibrationOf, type Forecast } from '../../../packages/core/src/learn/calibration.js';
import { seeded } from '../../scenes/seeded.js';

const forecast = (chance: number, found: boolean): Forecast => ({ chance, found });

describe('Brier score (Brier 1950)', () => {
  it('is the mean squared miss', () => {
    expect(brierOf([forecast(0.9, true), forecast(0.2, false), forecast(0.5, true)])).toBeCloseTo(
      (0.01 + 0.04 + 0.25) / 3,
      12,
    );
  });

  it('is 0 for certain and right, 1 for certain and wrong', () => {
    expect(brierOf([forecast(1, true), forecast(0, false)])).toBe(0);
    expect(brierOf([forecast(0, true), forecast(1, false)])).toBe(1);
  });

  it('is 0 of nothing said', () => {
    expect(brierOf([])).toBe(0);
  });

  it('of always saying the share found is that share times the rest', () => {
    const always = [true, false, false, false].map((found) => forecast(0.25, found));
    expect(brierOf(always)).toBeCloseTo(0.25 * 0.75, 12);
  });
});

describe('calibration', () => {
  it('puts forecasts into groups of equal count by chance', () => {
    const bins = calibrationOf(
      [0.4, 0.1, 0.3, 0.2].map((c) => forecast(c, c > 0.25)),
      2,
    );
    expect(bins).toEqual([
      { from: 0.1, to: 0.2, count: 2, meanChance: expect.closeTo(0.15, 12), foundShare: 0 },
      { from: 0.3, to: 0.4, count: 2, meanChance: expect.closeTo(0.35, 12), foundShare: 1 },
    ]);
  });

  it('does not hang on the order of what was said alike', () => {
    for (const found of [
      [true, false, true, false],
      [false, true, true, false],
      [true, true, false, false],
    ]) {
      const bins = calibrationOf(
        found.map((f) => forecast(0.3, f)),
        2,
      );
      expect(bins.map((b) => b.foundShare)).toEqual([0, 1]);
    }
  });

  it('keeps every forecast, with fewer than there are groups as well', () => {
    for (const count of [0, 1, 3, 10, 37]) {
      const bins = calibrationOf(Array.from({ length: count }, (_, i) => forecast(i / 40, false)));
      expect(bins.reduce((sum, b) => sum + b.count, 0)).toBe(count);
    }
  });

  it('finds as many as was said where chances are right', () => {
    const random = seeded(11);
    const forecasts = Array.from({ length: 20_000 }, () => {
      const chance = random();
      return forecast(chance, random() < chance);
    });
    // 2,000 a group: three standard errors of a share of a half
    for (const { meanChance, foundShare } of calibrationOf(forecasts)) {
      expect(Math.abs(meanChance - foundShare)).toBeLessThan(3 * Math.sqrt(0.25 / 2000));
    }
  });
});
