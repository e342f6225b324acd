/** What was seen in one stretch against what was expected there. */
export interface Sighting {
  /** `none`: seen clean. `some`: roots, not counted. `count`: so many entries. */
  readonly saw: 'none' | 'some' | 'count';
  readonly entries: number;
  readonly expected: number;
}

/** What was seen of one line, in the form that its likelihood needs. */
export interface Evidence {
  /** Entries counted, over all counted and clean stretches. */
  readonly entries: number;
  /** Entries expected in those stretches. */
  readonly expected: number;
  /** Entries expected in each stretch where roots were seen but not counted, ascending. */
  readonly some: readonly number[];
}

/** A sum that does not depend on the order of what is summed. */
export function sumAscending(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b).reduce((sum, v) => sum + v, 0);
}

/** Evidence of one line. Stretches where nothing was expected cannot tell anything and are left out. */
export function evidenceOf(sightings: readonly Sighting[]): Evidence {
  const telling = sightings.filter((o) => o.expected > 0);
  const counted = telling.filter((o) => o.saw !== 'some');
  return {
    entries: counted.reduce((sum, o) => sum + o.entries, 0),
    expected: sumAscending(counted.map((o) => o.expected)),
    some: telling
      .filter((o) => o.saw === 'some')
      .map((o) => o.expected)
      .sort((a, b) => a - b),
  };
}

/** Where so many are expected that none has a chance below the last digit of a double. */
export const CERTAIN = 40;

/**
 * Exact log-likelihood of a multiplier m: Poisson for counted entries, n ln m - m E, and for "some or none"
 * the Bernoulli of a Poisson, ln(1 - exp(-m E)).
 */
export function logLikelihood(evidence: Evidence, lnM: number): number {
  const m = Math.exp(lnM);
  let sum = evidence.entries * lnM - m * evidence.expected;
  for (const e of evidence.some) {
    // the rest, in rising order, are as good as certain
    if (m * e > CERTAIN) break;
    sum += Math.log(-Math.expm1(-m * e));
  }
  return sum;
}
