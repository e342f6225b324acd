import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { judgement } from '../tables/judgement.js';
import { VIGOUR_CLASSES } from './ways.js';

/** A seeded stream of standard normal numbers (Box & Muller 1958). */
export function normals(seed: number): () => number {
  const generator = xoroshiro128plus(seed);
  const uniform = (): number => ((generator.next() >>> 0) + 0.5) / 2 ** 32;
  let spare: number | null = null;
  return () => {
    if (spare !== null) {
      const z = spare;
      spare = null;
      return z;
    }
    const r = Math.sqrt(-2 * Math.log(uniform()));
    const angle = 2 * Math.PI * uniform();
    spare = r * Math.sin(angle);
    return r * Math.cos(angle);
  };
}

/** One possible truth about the values that are our judgement: factors on each of them. */
export interface Draw {
  readonly entry: number;
  readonly joints: number;
  readonly slots: number;
  readonly crush: number;
  readonly vigour: Float64Array;
  /** Standard normal deviates of ln reach and ln clock. */
  readonly reachZ: number;
  readonly clockZ: number;
}

/** Draws shared by all segments, so that their ranks can be compared draw by draw. */
export function drawsOf(count: number, seed: number): Draw[] {
  const z = normals(seed);
  const factor = (logSd: number): number => Math.exp(logSd * z());
  return Array.from({ length: count }, () => ({
    entry: factor(judgement.entryRatePerJointYear.logSd),
    joints: factor(judgement.jointFactor.logSd),
    slots: factor(judgement.perforatedUnwrappedPerM.logSd),
    crush: factor(judgement.crushRatePerMetreYear.logSd),
    vigour: Float64Array.from({ length: VIGOUR_CLASSES }, () => factor(judgement.vigourWeights.logSd)),
    reachZ: z(),
    clockZ: z(),
  }));
}

/** A number from a text, the same on every machine (FNV-1a, 32 bit). */
export function seedFrom(text: string, seed: number): number {
  let hash = (0x811c9dc5 ^ seed) >>> 0;
  for (let i = 0; i < text.length; i++) {
    hash ^= text.charCodeAt(i);
    hash = Math.imul(hash, 0x01000193) >>> 0;
  }
  return hash | 0;
}
