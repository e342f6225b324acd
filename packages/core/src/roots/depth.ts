import { judgement } from '../tables/judgement.js';

/**
 * Share of roots deeper than z in undisturbed ground: beta^(100 z) (Jackson et al. 1996).
 * Valid for whole vegetation, mostly fine roots; shown to the user beside the trench factor, not used in the rate.
 * @param depthM z.
 * @param beta the biome's constant, a number just below 1; `GLOBAL_BETA` where the biome is not known.
 */
export function shareBelow(depthM: number, beta: number): number {
  return beta ** (100 * Math.max(0, depthM));
}

/** Jackson et al. 1996: betas by biome. Temperate deciduous and the last four rows from memory, others read. */
export const depthBetas = {
  'temperate-deciduous': 0.966,
  'temperate-coniferous': 0.976,
  'temperate-grassland': 0.943,
  boreal: 0.943,
  desert: 0.975,
  tundra: 0.913,
  'tropical-evergreen': 0.962,
  'tropical-deciduous': 0.961,
  'tropical-grassland': 0.972,
  sclerophyllous: 0.964,
} as const;

export type Biome = keyof typeof depthBetas;

/** The global mean over all biomes (Jackson et al. 1996, abstract). */
export const GLOBAL_BETA = 0.966;

/**
 * How many roots reach a pipe whose top lies z metres deep, against a pipe at 0.6 m:
 * g(z) = exp(-(z - 0.6) / 1.5), at most 1.5 (judgement). Falls slower than `shareBelow`: roots follow the
 * looser, moister trench backfill down.
 */
export function trenchDepthFactor(depthM: number): number {
  const { value: scaleM } = judgement.depthScaleM;
  return Math.min(
    judgement.depthFactorMax.value,
    Math.exp(-(depthM - judgement.depthReferenceM.value) / scaleM),
  );
}
