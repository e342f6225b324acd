import { depthForArea, FULL_ANGLE, sectionBelow } from './section.js';

/*
 * What is left of a pipe's flow where a share b of its section is lost; three pictures of the loss.
 * All are estimates from Manning's formula on what is left of the section. Nobody has measured flow past roots in
 * yard drains, and a mass of roots catches leaves and silt, so that b grows.
 */

/** Standard acceleration of gravity, m/s2. */
const G = 9.80665;

function share(blockedShare: number): void {
  if (!(blockedShare >= 0 && blockedShare <= 1)) {
    throw new RangeError(`blockedShare must be between 0 and 1, got ${blockedShare}`);
  }
}

/**
 * An even lining over a long stretch is a smaller pipe: D shrinks as (1 - b)^(1/2) and Q goes with D^(8/3), so
 * what is left is (1 - b)^(4/3).
 */
export function flowLeftByLining(blockedShare: number): number {
  share(blockedShare);
  return (1 - blockedShare) ** (4 / 3);
}

/** A bed on the invert with the rest full: Q goes with A^(5/3) P^(-2/3), the bed's surface wetted like the wall. */
export function flowLeftByBed(blockedShare: number): number {
  share(blockedShare);
  const { angle, surfaceRatio } = sectionBelow(depthForArea(blockedShare));
  // perimeters over the diameter: pi in the empty pipe, wall above the bed and its surface with it
  const perimeter = (FULL_ANGLE - angle) / 2 + surfaceRatio;
  return perimeter > 0 ? (1 - blockedShare) ** (5 / 3) * (Math.PI / perimeter) ** (2 / 3) : 0;
}

/** Narrowest width of a jet behind an edge that leaves a share m open: 0.63 + 0.37 m^3 (Weisbach, from memory). */
const contraction = (openShare: number): number => 0.63 + 0.37 * openShare ** 3;

/**
 * Head that a short ball at one place costs: K V^2 / 2g with K = (1 / (Cc (1 - b)) - 1)^2, the loss of a jet that
 * spreads behind an opening (Borda and Carnot, from memory). It holds water back rather than narrowing the line.
 * @param velocityMs mean velocity in the clear pipe.
 * @returns metres of water; without bound where nothing is left open.
 */
export function headLossAtBall(blockedShare: number, velocityMs: number): number {
  share(blockedShare);
  const open = 1 - blockedShare;
  return (1 / (contraction(open) * open) - 1) ** 2 * (velocityMs ** 2 / (2 * G));
}
