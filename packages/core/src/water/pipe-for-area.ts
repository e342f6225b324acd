import type { PipeForArea } from '../model/pipe-for-area.js';
import type { MaterialKey } from '../tables/pipe-row.js';
import { pipeRow } from '../tables/pipes.js';
import { fromInches } from '../units/length.js';
import { metres } from '../units/quantity.js';
import { manningFull } from './manning.js';
import { rationalPeakM3s } from './rational.js';
import { roughness } from './roughness.js';

/** What water comes to a pipe and how it is laid. */
export interface AreaBasis {
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
 * The smallest pipe that carries the rain of an area running full, at the rough end of Manning's n. Where none of the
 * table is enough: the largest, how many of them side by side, and the inside diameter that a single pipe would need
 * (Manning: what a full pipe carries grows with its diameter to the power of 8/3).
 * @param areaM2 that drains into the pipe, square metres.
 * @param basis the pipe, its fall and the rain.
 * @throws RangeError for values outside what they can be.
 */
export function pipeForArea(areaM2: number, basis: AreaBasis): PipeForArea {
  const { material, perforated = false, leastM, rainMmPerHour, runoff, fall } = basis;
  const pipe = pipeRow(material);
  const flowM3s = rationalPeakM3s(runoff, rainMmPerHour, areaM2);
  const n = roughness({ perforated }, pipe).high;
  const sizes = pipe.sizes
    .map(({ nominalIn, insideDiameterM }) => ({
      sizeM: fromInches(nominalIn),
      boreM: insideDiameterM.value,
      carriesM3s: manningFull(metres(insideDiameterM.value), fall, n).flowM3s,
    }))
    .filter(({ sizeM }) => sizeM >= leastM * 0.96)
    .sort((a, b) => a.boreM - b.boreM);
  const unlisted = { sizeM: leastM, boreM: leastM, carriesM3s: manningFull(metres(leastM), fall, n).flowM3s };
  const taken = sizes.find(({ carriesM3s }) => carriesM3s >= flowM3s) ?? sizes.at(-1) ?? unlisted;
  const { sizeM, carriesM3s } = taken;
  const full = flowM3s / carriesM3s;
  return {
    sizeM,
    flowM3s,
    carriesM3s,
    sideBySide: Math.max(1, Math.ceil(full - 1e-9)),
    boreM: full > 1 ? taken.boreM * full ** (3 / 8) : taken.boreM,
  };
}
