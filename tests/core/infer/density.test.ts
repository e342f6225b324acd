import { describe, expect, it } from 'vitest';
import { densityFrom, quantileOf, summaryOf } from '../../../packages/core/src/infer/density.js';
import { evenGrid } from '../../../packages/core/src/infer/grid.js';

const normal = (mean: number, sd: number, points: number) => {
  const lnM = evenGrid({ from: mean - 9 * sd, to: mean + 9 * sd }, points);
  return densityFrom(
    lnM,
    lnM.map((x) => -(((x - mean) / sd) ** 2) / 2),
  );
};

/** Standard normal points: Abramowitz & Stegun (1964), tables 26.5 and 26.6. */
const Z = [
  { share: 0.1, z: -1.28155156554 },
  { share: 0.5, z: 0 },
  { share: 0.9, z: 1.28155156554 },
  { share: 0.999, z: 3.09023230617 },
];

describe('a log-normal density on a grid', () => {
  it.each(Z)('has its $share point at $z deviations', ({ share, z }) => {
    expect(Math.log(quantileOf(normal(0.3, 0.8, 481), share))).toBeCloseTo(0.3 + 0.8 * z, 5);
  });

  it('keeps its points within a fortieth of a deviation on a grid of two points to a deviation', () => {
    for (const { share, z } of Z) {
      expect(Math.abs(Math.log(quantileOf(normal(0, 1, 37), share)) - z)).toBeLessThan(1 / 40);
    }
  });

  it('has mean exp(mu + sd^2 / 2)', () => {
    const { mean, logSd } = summaryOf(normal(0.3, 0.8, 481));
    expect(mean).toBeCloseTo(Math.exp(0.3 + 0.32), 9);
    expect(logSd).toBeCloseTo(0.8, 9);
  });

  it('does not depend on the height that its logarithms begin from', () => {
    const lnM = evenGrid({ from: -1, to: 1 }, 11);
    const low = densityFrom(
      lnM,
      lnM.map((x) => -x * x - 9000),
    );
    const high = densityFrom(
      lnM,
      lnM.map((x) => -x * x + 9000),
    );
    low.weight.forEach((w, i) => {
      expect(w).toBeCloseTo(high.weight[i] as number, 9);
    });
  });
});

describe('points of a density', () => {
  it('rise with the share', () => {
    const density = normal(0, 1, 181);
    const shares = Array.from({ length: 99 }, (_, i) => (i + 1) / 100);
    const points = shares.map((share) => quantileOf(density, share));
    points.slice(1).forEach((q, i) => {
      expect(q).toBeGreaterThan(points[i] as number);
    });
  });

  it('stay on the grid at shares of 0 and 1', () => {
    const density = normal(0, 1, 181);
    expect(quantileOf(density, 0)).toBeGreaterThanOrEqual(Math.exp(-9) * (1 - 1e-12));
    expect(quantileOf(density, 1)).toBeLessThanOrEqual(Math.exp(9) * (1 + 1e-12));
  });
});
