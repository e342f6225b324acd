import { boreDepthM, boringTable } from '../tables/boring.js';

/** A bore under a tree instead of a trench beside it. Metres. */
export interface Boring {
  /** From the trunk: no open trench nearer than this. */
  readonly startM: number;
  /** From the ground to the top of the bore, at least. */
  readonly depthM: number;
}

/**
 * Where the open trench ends and how deep the bore runs, by trunk diameter (metres): a municipal tunnelling table,
 * its last row from memory; depth by common practice. Trunks below 6 in: the dripline.
 */
export function boringPast(stemDiameterM: number, driplineM: number): Boring {
  const row = boringTable.find(({ stemUpToM }, i) =>
    i === 0 ? stemDiameterM < stemUpToM : stemDiameterM <= stemUpToM,
  );
  return { startM: row?.startM.value ?? driplineM, depthM: boreDepthM.value };
}
