import type { GroundBasis } from '../model/ground.js';

/** Ground elevation at places in plane metres; null where it is not known, never a guess of 0. */
export interface GroundSurface {
  readonly basis: GroundBasis;
  readonly elevationAt: (x: number, y: number) => number | null;
}

/** Ground of which nothing is known. */
export const unknownGround: GroundSurface = { basis: { kind: 'none' }, elevationAt: () => null };
