import { LINE_CV, shapeOf } from './gamma-prior.js';
import { CERTAIN, type Evidence } from './likelihood.js';

const LINE_SHAPE = shapeOf(LINE_CV);
/** The sum over the line's own factor goes this many deviations to either side, in steps of three quarters of one. */
const REACH = 8;
const STEP = 0.75;

/** Chance of roots in every one of the stretches, by its logarithm, where `ms` times each one's is expected. */
function lnAll(some: readonly number[], ms: number): number {
  let sum = 0;
  for (const e of some) {
    if (ms * e > CERTAIN) break;
    sum += Math.log(-Math.expm1(-ms * e));
  }
  return sum;
}

/** Logarithm of the mean chance of roots in all stretches over a factor that is gamma of this shape and rate. */
function lnMeanOfAll(some: readonly number[], m: number, shape: number, rate: number): number {
  const [only] = some;
  if (some.length === 1 && only !== undefined)
    return Math.log(-Math.expm1(-shape * Math.log1p((m * only) / rate)));
  // each stretch pulls the factor up by no more than one entry would
  const most = shape + some.length;
  const from = -REACH / Math.sqrt(shape);
  const to = Math.log(most / shape) + REACH / Math.sqrt(most);
  const points = Math.ceil(((to - from) * Math.sqrt(most)) / STEP);
  const alls = new Float64Array(points + 1);
  let weight = 0;
  let top = -Infinity;
  for (let i = 0; i <= points; i++) {
    const t = from + ((to - from) * i) / points;
    const times = Math.exp(t);
    const log = shape * (t - times + 1);
    const all = log + lnAll(some, (m * shape * times) / rate);
    weight += Math.exp(log);
    alls[i] = all;
    if (all > top) top = all;
  }
  if (top === -Infinity) return top;
  let sum = 0;
  for (const all of alls) sum += Math.exp(all - top);
  return top + Math.log(sum / weight);
}

/**
 * Log-likelihood of a group's multiplier from what was seen of one line. The line has a factor of its own, gamma
 * with mean 1, that is summed out: counts are then negative binomial (Greenwood & Yule 1920), so that one line with
 * many roots does not speak for all.
 */
export function lineLogLikelihood({ entries, expected, some }: Evidence, lnM: number): number {
  const m = Math.exp(lnM);
  const shape = LINE_SHAPE + entries;
  const rate = LINE_SHAPE + m * expected;
  const counted = entries * lnM - shape * Math.log(rate);
  return some.length === 0 ? counted : counted + lnMeanOfAll(some, m, shape, rate);
}
