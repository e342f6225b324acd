import { describe, expect, it } from 'vitest';
import { type Summary, summaryOf } from '../../../packages/core/src/infer/density.js';
import { GROUP_CV, KIND_CV, shapeOf } from '../../../packages/core/src/infer/gamma-prior.js';
import { type Evidence, evidenceOf, NO_EVIDENCE } from '../../../packages/core/src/infer/likelihood.js';
import { pooledPosterior } from '../../../packages/core/src/infer/pooled.js';

const counts = (entries: number, expected: number): Evidence => ({ entries, expected, some: [] });
const summaries = (evidence: readonly Evidence[]): Summary[] => pooledPosterior(evidence).map(summaryOf);

/** Chance of the evidence, up to a factor, written out for a multiplier and not its logarithm. */
const chanceOf = ({ entries, expected, some }: Evidence, m: number): number =>
  m ** entries * Math.exp(-m * expected) * some.reduce((p, e) => p * (1 - Math.exp(-m * e)), 1);

const gammaHeight = (x: number, shape: number): number => x ** (shape - 1) * Math.exp(-shape * x);

/**
 * The same posterior by brute force: midpoint sums over the kind's factor u and over each group's factor v, evenly in
 * u and v and not in their logarithms, nothing shared with what is tested.
 */
function byBruteForce(
  evidence: readonly Evidence[],
  group: number,
): { mean: number; logSd: number; below: (q: number) => number } {
  const STEPS = 600;
  const MOST = 9;
  const at = Array.from({ length: STEPS }, (_, i) => ((i + 0.5) * MOST) / STEPS);
  const prior = at.map((v) => gammaHeight(v, shapeOf(GROUP_CV)));
  const m = new Float64Array(STEPS * STEPS);
  const mass = new Float64Array(STEPS * STEPS);
  at.forEach((u, row) => {
    let others = gammaHeight(u, shapeOf(KIND_CV));
    evidence.forEach((e, other) => {
      if (other === group) return;
      let sum = 0;
      for (let i = 0; i < STEPS; i++) sum += (prior[i] as number) * chanceOf(e, u * (at[i] as number));
      others *= sum;
    });
    for (let i = 0; i < STEPS; i++) {
      const cell = row * STEPS + i;
      m[cell] = u * (at[i] as number);
      mass[cell] = others * (prior[i] as number) * chanceOf(evidence[group] ?? NO_EVIDENCE, m[cell]);
    }
  });
  const meanOf = (f: (m: number) => number): number => {
    let top = 0;
    let all = 0;
    mass.forEach((w, cell) => {
      top += w * f(m[cell] as number);
      all += w;
    });
    return top / all;
  };
  const meanLn = meanOf(Math.log);
  return {
    mean: meanOf((x) => x),
    logSd: Math.sqrt(meanOf((x) => (Math.log(x) - meanLn) ** 2)),
    below: (q) => meanOf((x) => (x <= q ? 1 : 0)),
  };
}

const CASES: readonly { name: string; evidence: readonly Evidence[] }[] = [
  { name: 'nothing seen', evidence: [] },
  { name: 'one group, clean', evidence: [counts(0, 3)] },
  { name: 'one group, counted', evidence: [counts(7, 4)] },
  { name: 'two groups that agree', evidence: [counts(9, 3), counts(5, 2)] },
  { name: 'two groups that disagree', evidence: [counts(0, 6), counts(11, 2)] },
  {
    name: 'three, with roots not counted',
    evidence: [
      { entries: 2, expected: 1.5, some: [0.2, 0.9] },
      counts(1, 4),
      { entries: 0, expected: 0, some: [0.1] },
    ],
  },
];

describe('pooled posterior', () => {
  it.each(CASES)('agrees with a brute-force sum over both factors: $name', ({ evidence }) => {
    summaries(evidence).forEach((got, group) => {
      const brute = byBruteForce(evidence, group);
      expect(got.mean / brute.mean).toBeCloseTo(1, 4);
      expect(got.logSd / brute.logSd).toBeCloseTo(1, 4);
      // the edge of the cells of the brute sum, not of the posterior, bounds these
      expect(Math.abs(brute.below(got.low) - 0.1)).toBeLessThan(1e-3);
      expect(Math.abs(brute.below(got.high) - 0.9)).toBeLessThan(1e-3);
    });
  });

  it('has mean 1 and the variance of a product of two gammas where nothing was seen', () => {
    const [prior] = pooledPosterior([]);
    if (!prior) throw new Error('no prior');
    const { mean } = summaryOf(prior);
    const square = prior.weight.reduce((sum, w, i) => sum + w * Math.exp(2 * (prior.lnM[i] as number)), 0);
    expect(mean).toBeCloseTo(1, 10);
    expect(square - 1).toBeCloseTo((1 + KIND_CV ** 2) * (1 + GROUP_CV ** 2) - 1, 9);
    // coefficient of variation 0.8, as a log-sd of 0.7 has: sqrt(exp(0.49) - 1) = 0.795
    expect(Math.sqrt(square - 1)).toBeCloseTo(0.8, 2);
  });

  it('follows the counts where there are thousands of them, whatever its neighbours say', () => {
    const [many] = summaries([counts(5000, 4000), counts(0, 2)]);
    // Poisson alone: 1.25 with an 80 % interval of 1.2816 / sqrt(5000) in the logarithm
    expect(many?.mean).toBeCloseTo(1.25, 3);
    expect(Math.log((many?.high ?? 0) / (many?.low ?? 1)) / (2 * 1.2815515655)).toBeCloseTo(
      1 / Math.sqrt(5000),
      4,
    );
  });

  it('finds multipliers of a hundred-thousandth and of a hundred thousand', () => {
    const [least] = summaries([counts(2, 200_000)]);
    expect(least?.mean).toBeGreaterThan(0.9e-5);
    expect(least?.mean).toBeLessThan(6e-5);
    const [most] = summaries([counts(200_000, 2)]);
    expect(Math.log(most?.mean ?? 0)).toBeGreaterThan(Math.log(1e5) - 5);
    expect(most?.high).toBeGreaterThan(most?.low ?? Infinity);
  });

  it('gives the same digits whatever stands beside a group in the list', () => {
    const a = evidenceOf([{ saw: 'count', entries: 4, expected: 1.1 }]);
    const b = evidenceOf([{ saw: 'some', entries: 0, expected: 0.3 }]);
    const [a1, b1] = summaries([a, b]);
    const [b2, a2] = summaries([b, a]);
    expect(a1).toEqual(a2);
    expect(b1).toEqual(b2);
  });
});
