import { describe, expect, it } from 'vitest';
import { summaryOf } from '../../../packages/core/src/infer/density.js';
import { evidenceOf, type Sighting } from '../../../packages/core/src/infer/likelihood.js';
import { singlePosterior } from '../../../packages/core/src/infer/single.js';

const counted = (entries: number, expected: number): Sighting => ({ saw: 'count', entries, expected });
const some = (expected: number): Sighting => ({ saw: 'some', entries: 0, expected });

function near(got: number, reference: number, relative: number, what: string): void {
  expect(Math.abs(got / reference - 1), `${what}: got ${got}, reference ${reference}`).toBeLessThan(relative);
}

/**
 * Gamma(shape + n, rate shape + E): quantiles by scipy.stats.gamma.ppf, standard deviation of the logarithm by
 * sqrt(scipy.special.polygamma(1, shape + n)), SciPy 1.17.1.
 */
const GAMMA_REFERENCE = [
  { shape: 4, n: 0, E: 0, low: 0.436192390706228, mean: 1, high: 1.67019576706397, logSd: 0.532750369063331 },
  {
    shape: 4,
    n: 0,
    E: 2.5,
    low: 0.268426086588448,
    mean: 0.615384615384615,
    high: 1.02781277973167,
    logSd: 0.532750369063331,
  },
  {
    shape: 4,
    n: 3,
    E: 1.2,
    low: 0.748993616322343,
    mean: 1.34615384615385,
    high: 2.02539848201895,
    logSd: 0.391848411964802,
  },
  {
    shape: 4,
    n: 1,
    E: 1e-9,
    low: 0.608147756338629,
    mean: 1.2499999996875,
    high: 1.99839739601356,
    logSd: 0.470449737737322,
  },
  {
    shape: 1 / 0.53 ** 2,
    n: 0,
    E: 1000,
    low: 0.0014501037468756,
    mean: 0.00354735721887194,
    high: 0.00606824080501927,
    logSd: 0.56920219979965,
  },
  {
    shape: 1 / 0.53 ** 2,
    n: 0,
    E: 1e5,
    low: 1.45521429014357e-5,
    mean: 3.55985902958243e-5,
    high: 6.08962686602446e-5,
    logSd: 0.56920219979965,
  },
  {
    shape: 4,
    n: 5000,
    E: 4000,
    low: 1.22716313669816,
    mean: 1.24975024975025,
    high: 1.27244431780709,
    logSd: 0.0141371884498361,
  },
  {
    shape: 4,
    n: 1_000_000,
    E: 3,
    low: 142_674.665740983,
    mean: 142_857.714285714,
    high: 143_040.82400896,
    logSd: 0.000999998250004552,
  },
  {
    shape: 0.5,
    n: 0,
    E: 0.2,
    low: 0.0112791243524509,
    mean: 0.714285714285714,
    high: 1.93253103863957,
    logSd: 2.22144146907918,
  },
  {
    shape: 0.05,
    n: 1,
    E: 3,
    low: 0.0396036426199788,
    mean: 0.344262295081967,
    high: 0.783210130025221,
    logSd: 1.23788421999601,
  },
];

describe('posterior of one multiplier from counts', () => {
  it.each(GAMMA_REFERENCE)('is the gamma of shape $shape + $n and rate $shape + $E', (reference) => {
    const { shape, n, E } = reference;
    const got = summaryOf(singlePosterior(shape, evidenceOf([counted(n, E)])));
    // ten digits of the mean; the last digits of the points are bound by the steps of the grid
    near(got.mean, reference.mean, 1e-10, 'mean');
    near(got.logSd, reference.logSd, 1e-9, 'sd of the logarithm');
    near(got.low, reference.low, 5e-5, '10 % point');
    near(got.high, reference.high, 5e-5, '90 % point');
  });
});

/**
 * Gamma prior of shape 4 and mean 1 times m^n exp(-m E) times 1 - exp(-m e) for each stretch with roots that were not
 * counted: direct integration over m with scipy.integrate.quad, points by scipy.optimize.brentq, SciPy 1.17.1.
 */
const SOME_REFERENCE = [
  {
    n: 0,
    E: 0,
    somes: [0.3],
    low: 0.58724429042,
    mean: 1.20796977549,
    high: 1.93203859496,
    logSd: 0.470910813809,
  },
  {
    n: 0,
    E: 1.5,
    somes: [0.02, 0.4, 0.4, 3],
    low: 0.691208110636,
    mean: 1.21560070176,
    high: 1.81338753139,
    logSd: 0.378969954793,
  },
  {
    n: 2,
    E: 0.7,
    somes: [0.001],
    low: 0.828585659449,
    mean: 1.48920332118,
    high: 2.24062811926,
    logSd: 0.391848416777,
  },
];

describe('posterior of one multiplier where roots were seen but not counted', () => {
  it.each(SOME_REFERENCE)('agrees with direct integration: $somes, $n counted of $E', (reference) => {
    const sightings = [counted(reference.n, reference.E), ...reference.somes.map(some)];
    const got = summaryOf(singlePosterior(4, evidenceOf(sightings)));
    near(got.mean, reference.mean, 1e-9, 'mean');
    near(got.logSd, reference.logSd, 1e-9, 'sd of the logarithm');
    near(got.low, reference.low, 5e-5, '10 % point');
    near(got.high, reference.high, 5e-5, '90 % point');
  });

  it('is that of one entry where so little was expected that two cannot be told from one', () => {
    const one = summaryOf(singlePosterior(4, evidenceOf([counted(1, 1e-9)])));
    const any = summaryOf(singlePosterior(4, evidenceOf([some(1e-9)])));
    near(any.mean, one.mean, 1e-8, 'mean');
  });

  it('says nothing where roots were certain', () => {
    const got = summaryOf(singlePosterior(4, evidenceOf([some(5000)])));
    near(got.mean, 1, 1e-9, 'mean');
  });
});
