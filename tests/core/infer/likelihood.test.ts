import { describe, expect, it } from 'vitest';
import { evidenceOf, logLikelihood, type Sighting } from '../../../packages/core/src/infer/likelihood.js';

const seen = (saw: Sighting['saw'], entries: number, expected: number): Sighting => ({
  saw,
  entries,
  expected,
});

describe('evidence', () => {
  it('adds up what was counted and what was clean, and keeps apart what was not counted', () => {
    expect(
      evidenceOf([seen('count', 3, 0.5), seen('none', 0, 0.25), seen('some', 0, 0.7), seen('some', 0, 0.1)]),
    ).toEqual({ entries: 3, expected: 0.75, some: [0.1, 0.7] });
  });

  it('leaves out stretches where nothing could be expected', () => {
    expect(evidenceOf([seen('count', 3, 0), seen('some', 0, 0), seen('none', 0, 0)])).toEqual({
      entries: 0,
      expected: 0,
      some: [],
    });
  });

  it('is the same to the last digit in any order', () => {
    const sightings = [0.1, 0.2, 0.3].map((e, i) => seen('count', i, e));
    // added up as they come they differ in the last digit
    expect(0.1 + 0.2 + 0.3).not.toBe(0.3 + 0.2 + 0.1);
    expect(evidenceOf([...sightings].reverse())).toEqual(evidenceOf(sightings));
  });
});

describe('likelihood', () => {
  /** Chance of n entries where a are expected (Poisson 1837), multiplied out. */
  const poisson = (n: number, a: number): number => {
    let p = Math.exp(-a);
    for (let k = 1; k <= n; k++) p *= a / k;
    return p;
  };
  const ratio = (sightings: readonly Sighting[], m: number): number => {
    const evidence = evidenceOf(sightings);
    return Math.exp(logLikelihood(evidence, Math.log(m)) - logLikelihood(evidence, 0));
  };

  it.each([0.2, 0.9, 3])('of counts falls and rises as the Poisson chance does, m = %d', (m) => {
    const direct = (poisson(4, 1.5 * m) * poisson(0, 0.6 * m)) / (poisson(4, 1.5) * poisson(0, 0.6));
    expect(ratio([seen('count', 4, 1.5), seen('none', 0, 0.6)], m)).toBeCloseTo(direct, 12);
  });

  it.each([0.2, 0.9, 3])('of some roots is the sum of the chances of 1, 2, 3 and more, m = %d', (m) => {
    const some = (a: number): number =>
      Array.from({ length: 60 }, (_, k) => poisson(k + 1, a)).reduce((s, p) => s + p);
    const direct = (some(0.4 * m) * some(1.3 * m)) / (some(0.4) * some(1.3));
    expect(ratio([seen('some', 0, 0.4), seen('some', 0, 1.3)], m)).toBeCloseTo(direct, 12);
  });
});
