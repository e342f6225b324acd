import { type Density, densityFrom } from './density.js';
import { logGammaPrior } from './gamma-prior.js';
import { evenGrid, fits, spanHolding, WIDEST } from './grid.js';
import { type Evidence, logLikelihood } from './likelihood.js';

const COARSE = 81;
const FINE = 481;

/**
 * Posterior of one multiplier with a gamma prior of mean 1, on a grid that is laid wide and then again on what holds
 * the posterior until it fits. The posterior has one summit: prior and likelihoods are log-concave in ln m.
 */
export function singlePosterior(shape: number, evidence: Evidence): Density {
  const heightAt = (x: number): number => logGammaPrior(x, shape) + logLikelihood(evidence, x);
  let span = WIDEST;
  for (;;) {
    const lnM = evenGrid(span, COARSE);
    const next = spanHolding(lnM, lnM.map(heightAt));
    const settled = fits(span, next);
    span = next;
    if (settled) break;
  }
  const lnM = evenGrid(span, FINE);
  return densityFrom(lnM, lnM.map(heightAt));
}
