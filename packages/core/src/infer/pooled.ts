import { type Density, densityFrom, lnGrid, STEPS } from './density.js';
import { GROUP_CV, KIND_CV, logGammaPrior, shapeOf } from './gamma-prior.js';
import { type Evidence, logLikelihood } from './likelihood.js';

/** Grid of the factor that a kind of opening shares over its materials: every fourth point of the full grid. */
const STRIDE = 4;

const logSumExp = (values: Float64Array): number => {
  const top = values.reduce((a, b) => Math.max(a, b), -Infinity);
  if (!Number.isFinite(top)) return top;
  return top + Math.log(values.reduce((sum, v) => sum + Math.exp(v - top), 0));
};

/** Log prior of the group factor at every difference of two grid points, so that it is worked out once. */
function groupPrior(step: number): (difference: number) => number {
  const shape = shapeOf(GROUP_CV);
  const table = Float64Array.from({ length: 2 * STEPS + 1 }, (_, i) => logGammaPrior((i - STEPS) * step, shape));
  return (difference) => table[difference + STEPS] as number;
}

/**
 * Posterior of the multiplier of every group of one kind of opening, the groups leaning on each other through the
 * factor of the kind: m = kind x group, both gamma with mean 1. Two nested sums over a grid, no sampling: the same
 * digits on every run and in every order.
 * @param evidence one entry a group of the kind.
 * @returns a density for each group, and last the density for a group of the kind that nothing is known of.
 */
export function pooledPosterior(evidence: readonly Evidence[]): Density[] {
  const lnM = lnGrid();
  const step = (lnM[1] as number) - (lnM[0] as number);
  const prior = groupPrior(step);
  const kinds = Array.from({ length: STEPS / STRIDE + 1 }, (_, k) => k * STRIDE);
  const kindShape = shapeOf(KIND_CV);
  const likelihoods = evidence.map((e) => lnM.map((x) => logLikelihood(e, x)));
  const scratch = new Float64Array(lnM.length);
  // ln of what a group's evidence says of each value of the kind's factor
  const messages = likelihoods.map((likelihood) =>
    kinds.map((k) => {
      for (let i = 0; i < lnM.length; i++) scratch[i] = prior(i - k) + (likelihood[i] as number);
      return logSumExp(scratch);
    }),
  );
  const kindPrior = kinds.map((k) => logGammaPrior(lnM[k] as number, kindShape));
  const others = (group: number): number[] =>
    kinds.map((_, at) =>
      messages.reduce((sum, message, g) => (g === group ? sum : sum + (message[at] as number)), kindPrior[at] as number),
    );
  const densityOf = (group: number): Density => {
    const weights = others(group);
    const inner = new Float64Array(kinds.length);
    const heights = lnM.map((_, i) => {
      kinds.forEach((k, at) => {
        inner[at] = (weights[at] as number) + prior(i - k);
      });
      return logSumExp(inner) + (likelihoods[group]?.[i] ?? 0);
    });
    return densityFrom(lnM, heights);
  };
  return Array.from({ length: evidence.length + 1 }, (_, group) => densityOf(group));
}
