import type { MaterialKey } from '../tables/pipe-row.js';
import { pipeRow } from '../tables/pipes.js';
import { fromInches } from '../units/length.js';
import { metres } from '../units/quantity.js';
import { manningFull } from './manning.js';
import { rationalPeakM3s } from './rational.js';
import { roughness } from './roughness.js';

/** What water comes to a pipe and how it is laid. */
export interface SizeBasis {
  readonly material: MaterialKey;
  readonly perforated?: boolean;
  /** Nominal size below which none is laid, metres. */
  readonly leastM: number;
  readonly rainMmPerHour: number;
  /** Share of the rain that runs off; 1 for roofs. */
  readonly runoff: number;
  /** Fall it is laid with, metre per metre. */
  readonly fall: number;
}

/**
 * Smallest nominal size, metres, that carries the rain of an area running full, at the rough end of Manning's n; the
 * largest of the pipe's table where none is enough.
 * @param areaM2 that drains into the pipe.
 * @param basis the pipe, its fall and the rain.
 * @throws RangeError for values outside what they can be.
 */
export function sizeForArea(areaM2: number, basis: SizeBasis): number {
  const { material, perforated = false, leastM, rainMmPerHour, runoff, fall } = basis;
  const pipe = pipeRow(material);
  const wanted = rationalPeakM3s(runoff, rainMmPerHour, areaM2);
  const n = roughness({ perforated }, pipe).high;
  const sizes = pipe.sizes
    .map(({ nominalIn, insideDiameterM }) => ({ sizeM: fromInches(nominalIn), boreM: insideDiameterM.value }))
    .filter(({ sizeM }) => sizeM >= leastM * 0.96)
    .sort((a, b) => a.boreM - b.boreM);
  const enough = sizes.find(({ boreM }) => manningFull(metres(boreM), fall, n).flowM3s >= wanted);
  return enough?.sizeM ?? sizes.at(-1)?.sizeM ?? leastM;
}
