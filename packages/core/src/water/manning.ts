import { checkPositive } from '../units/check-positive.js';
import type { Metres } from '../units/quantity.js';
import { FULL_ANGLE, sectionBelow } from './section.js';

/*
 * Steady uniform flow in a round pipe (Manning 1891), SI:
 *   V = R^(2/3) S^(1/2) / n,  Q = V A;  running full A = pi D^2 / 4 and R = D / 4.
 * In feet a factor of 1.486 stands before it, the cube root of 3.2808; here it is 1.
 * Valid for rough turbulent flow: pipes from about 3 in up at slopes that are laid, not for seepage. n is taken the
 * same at all depths; measured it is up to about a quarter higher in a part-full pipe (Camp 1946, from memory), so
 * part-full capacities are a little too high.
 */

/** What runs through a pipe: cubic metres a second, and metres a second. */
export interface PipeFlow {
  readonly flowM3s: number;
  readonly velocityMs: number;
}

/** Depth of the water over the inside diameter, and the angle there, at which a round pipe carries most. */
const MOST_FLOW_ANGLE = 5.278_107_138_9;
export const MOST_FLOW_DEPTH = (1 - Math.cos(MOST_FLOW_ANGLE / 2)) / 2;

/** Halvings of the depth interval: down to a billionth of a diameter. */
const HALVINGS = 30;

/**
 * Flow, m3/s, and velocity, m/s, of a round pipe running full by Manning's formula.
 * @param insideDiameter metres, as `fromInches` or `fromMillimetres` give them.
 * @param slopeRatio fall, metre per metre.
 * @param n Manning's roughness, a number such as 0.009 for smooth plastic.
 * @throws RangeError for a value that is not above 0.
 */
export function manningFull(insideDiameter: Metres, slopeRatio: number, n: number): PipeFlow {
  checkPositive(insideDiameter, 'insideDiameter');
  checkPositive(slopeRatio, 'slopeRatio');
  checkPositive(n, 'n');
  const velocityMs = ((insideDiameter / 4) ** (2 / 3) * Math.sqrt(slopeRatio)) / n;
  return { velocityMs, flowM3s: (velocityMs * Math.PI * insideDiameter ** 2) / 4 };
}

/** Area, flow and velocity at a depth against those of the full pipe. */
export interface RelativeFlow {
  readonly area: number;
  readonly flow: number;
  readonly velocity: number;
}

/** @param depthRatio depth of the water over the inside diameter, 0 to 1. */
export function relativeFlow(depthRatio: number): RelativeFlow {
  const { angle, areaShare } = sectionBelow(depthRatio);
  if (areaShare === 0) return { area: 0, flow: 0, velocity: 0 };
  const radiusShare = (areaShare * FULL_ANGLE) / angle;
  const velocity = radiusShare ** (2 / 3);
  return { area: areaShare, velocity, flow: areaShare * velocity };
}

/**
 * Flow, m3/s, and velocity, m/s, of a round pipe running part full by Manning's formula, n the same at all depths.
 * @param insideDiameter metres, as `fromInches` or `fromMillimetres` give them.
 * @param slopeRatio fall, metre per metre.
 * @param n Manning's roughness, a number such as 0.009 for smooth plastic.
 * @param depthRatio depth of the water over the inside diameter, 0 to 1.
 * @throws RangeError for a value that is not above 0 or a depth ratio outside 0 to 1.
 */
export function manningPartial(
  insideDiameter: Metres,
  slopeRatio: number,
  n: number,
  depthRatio: number,
): PipeFlow {
  const full = manningFull(insideDiameter, slopeRatio, n);
  const share = relativeFlow(depthRatio);
  return { flowM3s: full.flowM3s * share.flow, velocityMs: full.velocityMs * share.velocity };
}

/**
 * Depth ratio at which a pipe carries a given share of its full flow; the lower one where two depths do.
 * @returns null above what the pipe carries at most, 1.076 of the full flow.
 */
export function depthForFlow(shareOfFull: number): number | null {
  if (!(shareOfFull >= 0)) throw new RangeError(`shareOfFull must be at least 0, got ${shareOfFull}`);
  if (shareOfFull > relativeFlow(MOST_FLOW_DEPTH).flow) return null;
  let low = 0;
  let high = MOST_FLOW_DEPTH;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (relativeFlow(middle).flow < shareOfFull) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Slope at which the full pipe reaches a velocity. */
export function slopeForVelocity(insideDiameter: Metres, n: number, velocityMs: number): number {
  checkPositive(insideDiameter, 'insideDiameter');
  checkPositive(n, 'n');
  return ((velocityMs * n) / (insideDiameter / 4) ** (2 / 3)) ** 2;
}
