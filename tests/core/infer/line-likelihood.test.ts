import { describe, expect, it } from 'vitest';
import { LINE_CV, shapeOf } from '../../../packages/core/src/infer/gamma-prior.js';
import type { Evidence } from '../../../packages/core/src/infer/likelihood.js';
import { lineLogLikelihood } from '../../../packages/core/src/infer/line-likelihood.js';

const SHAPE = shapeOf(LINE_CV);

/** ln of the chance of the evidence at multiplier m over that at multiplier 1. */
const ratio = (evidence: Evidence, m: number): number =>
  lineLogLikelihood(evidence, Math.log(m)) - lineLogLikelihood(evidence, 0);

/** The same by a plain sum over the line's own factor, evenly in the factor. */
function bruteRatio({ entries, expected, some }: Evidence, m: number): number {
  const lnChance = (at: number): number => {
    const logs = Array.from({ length: 40_000 }, (_, i) => {
      const f = ((i + 0.5) * 40) / 40_000;
      const a = at * f;
      const own = (SHAPE - 1) * Math.log(f) - SHAPE * f;
      return (
        own +
        entries * Math.log(a) -
        a * expected +
        some.reduce((s, e) => s + Math.log(1 - Math.exp(-a * e)), 0)
      );
    });
    const top = logs.reduce((x, y) => Math.max(x, y), -Infinity);
    return top + Math.log(logs.reduce((sum, l) => sum + Math.exp(l - top), 0));
  };
  return lnChance(m) - lnChance(1);
}

const CASES: readonly Evidence[] = [
  { entries: 0, expected: 2.5, some: [] },
  { entries: 6, expected: 2.5, some: [] },
  { entries: 0, expected: 0, some: [0.3] },
  { entries: 2, expected: 1.2, some: [0.3] },
  { entries: 0, expected: 0, some: [0.1, 0.4] },
  { entries: 3, expected: 2, some: [0.02, 0.02, 0.5, 2, 9] },
  { entries: 0, expected: 1, some: Array.from({ length: 30 }, (_, i) => 0.01 * (i + 1)) },
];

describe('likelihood of a multiplier from one line with a factor of its own', () => {
  it.each(CASES)('agrees with a plain sum over that factor: $entries of $expected, $some', (evidence) => {
    for (const m of [0.1, 0.6, 2, 7]) expect(ratio(evidence, m)).toBeCloseTo(bruteRatio(evidence, m), 6);
  });

  // Greenwood & Yule (1920): Poisson counts whose mean is gamma are negative binomial
  it('is the negative binomial chance of the count', () => {
    const chance = (n: number, a: number): number => {
      let p = (SHAPE / (SHAPE + a)) ** SHAPE;
      for (let k = 1; k <= n; k++) p *= ((SHAPE + k - 1) / k) * (a / (SHAPE + a));
      return p;
    };
    const got = Math.exp(ratio({ entries: 5, expected: 1.7, some: [] }, 2.2));
    expect(got).toBeCloseTo(chance(5, 1.7 * 2.2) / chance(5, 1.7), 12);
  });

  it('takes two ways of working out the same sum to the same value', () => {
    // a stretch with roots for certain takes the sum the long way and says nothing itself
    const long = { entries: 1, expected: 0.5, some: [0.2, 1e6] };
    for (const m of [0.2, 3]) {
      expect(ratio(long, m)).toBeCloseTo(ratio({ ...long, some: [0.2] }, m), 8);
    }
  });
});
