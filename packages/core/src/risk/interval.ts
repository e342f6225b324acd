import type { LineModel } from '../line/line-model.js';
import type { Chance } from '../model/result.js';
import { judgement } from '../tables/judgement.js';
import type { LineClock } from './clock.js';
import type { Load } from './load.js';
import type { NearTrees } from './near-trees.js';
import type { LineScale } from './rate-scale.js';
import type { TreeField } from './tree-field.js';
import { VIGOUR_CLASSES, WAY_CRUSH, WAY_JOINT, WAY_SLOT, WAYS } from './ways.js';

/** Standard normal quantile of 0.9: an 80 % interval lies 1.2816 deviations either side. */
const Z90 = 1.2815515655446004;

/** Chance, 0 to 1, of at least one event where this number of them is expected (Poisson). */
export const chanceOf = (expected: number): number => -Math.expm1(-expected);

const square = (x: number): number => x * x;

/** Log-sd that the missing inputs of the line itself add. */
export function lineLogSd(line: LineModel, clock: LineClock): number {
  let variance = 0;
  if (!line.drain.materialKnown) variance += square(judgement.materialUnknown.logSd);
  if (!clock.ageKnown) variance += square(judgement.ageUnknown.logSd);
  if (!line.depthKnown) variance += square(judgement.depthUnknown.logSd);
  return Math.sqrt(variance);
}

/** Log-sd that the missing inputs of the trees add, each by its share of the load. */
export function treesLogSd(load: Load, near: NearTrees, field: TreeField): number {
  if (load.total <= 0) return 0;
  let variance = 0;
  for (let i = 0; i < near.count; i++) {
    const share = (load.byTree[i] as number) / load.total;
    const extra = field.extraLogSd[field.pattern[near.number[i] as number] as number] as number;
    variance += square(share * extra);
  }
  return Math.sqrt(variance);
}

const shareOfClass = (load: Load, vigour: number): number => {
  let sum = 0;
  for (let way = 0; way < WAYS; way++) sum += load.byWayAndVigour[way * VIGOUR_CLASSES + vigour] as number;
  return sum / load.total;
};

/**
 * The part of `logSdOf` that moves one segment against the others: its trees' vigour, their reach, the clock, and
 * what is not known of it. The rates of joints, slots and crushing move all segments alike and are left out.
 */
export function ownLogSdOf(load: Load, extraLogSd: number): number {
  if (load.total <= 0) return 0;
  let variance =
    square((load.reachPull / load.total) * judgement.reach.logSd) +
    square((load.clockPull / load.total) * judgement.regrowthMetresPerYear.logSd) +
    square(extraLogSd);
  for (let c = 0; c < VIGOUR_CLASSES; c++)
    variance += square(shareOfClass(load, c) * judgement.vigourWeights.logSd);
  return Math.sqrt(variance);
}

/**
 * Standard deviation of the logarithm of the expected entries, by the delta method: each spread enters by the
 * share of the load (rates, joints, vigour) or the elasticity (reach, clock) that hangs on it.
 * The same spreads as in `sampling.ts`, first order only; the two are held against each other in a test.
 */
export function logSdOf(load: Load, extraLogSd: number, scale: LineScale): number {
  if (load.total <= 0) return 0;
  const joints = (scale.entry.narrow * load.byWay(WAY_JOINT)) / load.total;
  const slots = (scale.entry.narrow * load.byWay(WAY_SLOT)) / load.total;
  const crush = (scale.crush.narrow * load.byWay(WAY_CRUSH)) / load.total;
  return Math.sqrt(
    square((joints + slots) * judgement.entryRatePerJointYear.logSd) +
      square(joints * judgement.jointFactor.logSd) +
      square(slots * judgement.perforatedUnwrappedPerM.logSd) +
      square(crush * judgement.crushRatePerMetreYear.logSd) +
      square(ownLogSdOf(load, extraLogSd)),
  );
}

/** Chance with its 80 % interval, taking the expected entries as log-normal about the likely value. */
export function intervalOf(expected: number, logSd: number): Chance {
  return {
    low: chanceOf(expected * Math.exp(-Z90 * logSd)),
    likely: chanceOf(expected),
    high: chanceOf(expected * Math.exp(Z90 * logSd)),
  };
}
