import { describe, expect, it } from 'vitest';
import { type Summary, summaryOf } from '../../../packages/core/src/infer/density.js';
import { GROUP_CV, KIND_CV, LINE_CV, shapeOf } from '../../../packages/core/src/infer/gamma-prior.js';
import { type Evidence, evidenceOf } from '../../../packages/core/src/infer/likelihood.js';
import { type GroupEvidence, pooledPosterior } from '../../../packages/core/src/infer/pooled.js';

const counts = (entries: number, expected: number): Evidence => ({ entries, expected, some: [] });
const summaries = (evidence: readonly GroupEvidence[]): Summary[] => pooledPosterior(evidence).map(summaryOf);

const gammaHeight = (x: number, shape: number): number => x ** (shape - 1) * Math.exp(-shape * x);

/** Middles of even cells from 0 up, with the height of a gamma of mean 1 at each. */
const cells = (count: number, most: number, cv: number): { x: number; height: number }[] =>
  Array.from({ length: count }, (_, i) => {
    const x = ((i + 0.5) * most) / count;
    return { x, height: gammaHeight(x, shapeOf(cv)) };
  });

const OWN = cells(80, 6, LINE_CV);

/** Chance of what was seen of one line, up to a factor, summed over the line's own factor f, evenly in f. */
function chanceOfLine({ entries, expected, some }: Evidence, m: number): number {
  let sum = 0;
  for (const { x, height } of OWN) {
    const a = m * x;
    let chance = height * a ** entries * Math.exp(-a * expected);
    for (const e of some) chance *= 1 - Math.exp(-a * e);
    sum += chance;
  }
  return sum;
}

const chanceOf = (lines: GroupEvidence, m: number): number =>
  lines.reduce((product, line) => product * chanceOfLine(line, m), 1);

interface Brute {
  readonly mean: number;
  readonly logSd: number;
  readonly below: (q: number) => number;
}

/**
 * The same posterior by brute force: sums over the kind's factor u, each group's factor v and each line's factor f,
 * evenly in u, v and f and not in their logarithms, nothing shared with what is tested.
 */
function byBruteForce(evidence: readonly GroupEvidence[], group: number): Brute {
  const kinds = cells(200, 8, KIND_CV);
  const groups = cells(200, 8, GROUP_CV);
  const mass: { m: number; w: number }[] = [];
  for (const { x: u, height } of kinds) {
    let others = height;
    evidence.forEach((lines, other) => {
      if (other !== group) others *= groups.reduce((sum, v) => sum + v.height * chanceOf(lines, u * v.x), 0);
    });
    for (const v of groups) {
      const m = u * v.x;
      mass.push({ m, w: others * v.height * chanceOf(evidence[group] ?? [], m) });
    }
  }
  const total = mass.reduce((sum, { w }) => sum + w, 0);
  const meanOf = (f: (m: number) => number): number =>
    mass.reduce((sum, { m, w }) => sum + w * f(m), 0) / total;
  const meanLn = meanOf(Math.log);
  return {
    mean: meanOf((x) => x),
    logSd: Math.sqrt(meanOf((x) => (Math.log(x) - meanLn) ** 2)),
    below: (q) => meanOf((x) => (x <= q ? 1 : 0)),
  };
}

const CASES: readonly { name: string; evidence: readonly GroupEvidence[] }[] = [
  { name: 'nothing seen', evidence: [] },
  { name: 'one line, clean', evidence: [[counts(0, 3)]] },
  { name: 'two lines, counted', evidence: [[counts(7, 4), counts(1, 2)]] },
  { name: 'two groups that agree', evidence: [[counts(9, 3)], [counts(5, 2)]] },
  { name: 'two groups that disagree', evidence: [[counts(0, 3), counts(0, 3)], [counts(11, 2)]] },
  {
    name: 'three, with roots not counted',
    evidence: [
      [{ entries: 2, expected: 1.5, some: [0.2, 0.9] }],
      [counts(1, 4)],
      [{ entries: 0, expected: 0, some: [0.1] }],
    ],
  },
];

describe('pooled posterior', () => {
  it.each(CASES)('agrees with a brute-force sum over all factors: $name', ({ evidence }) => {
    summaries(evidence).forEach((got, group) => {
      const brute = byBruteForce(evidence, group);
      // what bounds these is the cells of the brute sum
      expect(Math.abs(got.mean / brute.mean - 1)).toBeLessThan(2e-3);
      expect(Math.abs(got.logSd / brute.logSd - 1)).toBeLessThan(2e-3);
      expect(Math.abs(brute.below(got.low) - 0.1)).toBeLessThan(4e-3);
      expect(Math.abs(brute.below(got.high) - 0.9)).toBeLessThan(4e-3);
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

  it('follows the counts where there are thousands of them on hundreds of lines, whatever its neighbours say', () => {
    const [many] = summaries([Array.from({ length: 500 }, () => counts(10, 8)), [counts(0, 2)]]);
    // variance of the mean of 500 negative binomials: 1 / entries + cv^2 / lines, in the logarithm
    const sd = Math.sqrt(1 / 5000 + LINE_CV ** 2 / 500);
    expect(many?.mean).toBeCloseTo(1.25, 2);
    expect((many?.logSd ?? 0) / sd).toBeCloseTo(1, 2);
    expect(Math.log((many?.high ?? 0) / (many?.low ?? 1)) / (2 * 1.2815515655 * sd)).toBeCloseTo(1, 2);
  });

  it('does not let one line speak for all, however many roots it has', () => {
    const [one] = summaries([[counts(5000, 4000)]]);
    expect(one?.logSd).toBeGreaterThan(0.3);
    expect(one?.logSd).toBeLessThan(LINE_CV * 1.2);
  });

  it('finds multipliers of a ten-thousandth and of ten thousand', () => {
    const [least] = summaries([Array.from({ length: 2000 }, () => counts(0, 100))]);
    expect(least?.mean).toBeGreaterThan(0.9e-6);
    expect(least?.mean).toBeLessThan(1e-4);
    const [most] = summaries([Array.from({ length: 2000 }, () => counts(100, 0.01))]);
    expect(most?.mean).toBeGreaterThan(8e3);
    expect(most?.mean).toBeLessThan(1e4);
    expect(most?.high).toBeGreaterThan(most?.low ?? Infinity);
  });

  it('gives the same digits whatever stands beside a group in the list', () => {
    const a = [evidenceOf([{ saw: 'count', entries: 4, expected: 1.1 }])];
    const b = [evidenceOf([{ saw: 'some', entries: 0, expected: 0.3 }])];
    const [a1, b1] = summaries([a, b]);
    const [b2, a2] = summaries([b, a]);
    expect(a1).toEqual(a2);
    expect(b1).toEqual(b2);
  });
});
