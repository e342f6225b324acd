import type { Dig } from '../model/dig.js';
import { trenchNumbers } from '../tables/work-judgement.js';
import { type DepthClass, depthParts } from './depth-class.js';
import type { Measuring } from './options.js';
import { outsideDiameterM } from './outside-diameter.js';
import { trenchVolumeM3 } from './trench-volume.js';
import { trenchWidthM } from './trench-width.js';

/** What a dig moves, in cubic metres of ground as it lies. */
export interface Earth {
  readonly outsideM: number;
  readonly widthM: number;
  readonly parts: readonly {
    readonly depthClass: DepthClass;
    readonly lengthM: number;
    readonly volumeM3: number;
  }[];
  readonly dugM3: number;
  /** Width torn open at the top, mean over the length. */
  readonly topWidthM: number;
  readonly stoneHeightM: number;
  /** Stone or sand in place. */
  readonly stoneM3: number;
  readonly pipeM3: number;
  /** Soil that goes back in. */
  readonly filledM3: number;
  /** Soil left over. */
  readonly leftM3: number;
  /** Faces to be shored, both sides. */
  readonly shoredM2: number;
}

/** Height of stone or sand from the trench bottom. */
function stoneHeight(dig: Dig, outsideM: number): number {
  const { beddingAboveM, beddingBelowM, topsoilM } = trenchNumbers;
  const mean = (dig.depthStartM + dig.depthEndM) / 2;
  if (dig.stoneM !== null) return Math.min(dig.stoneM, mean);
  if (dig.bedding === 'native') return 0;
  if (dig.perforated && dig.bedding === 'gravel') return Math.max(0, mean - topsoilM.value);
  return Math.min(mean, beddingBelowM.value + outsideM + beddingAboveM.value);
}

/** @param dig one that is not bored. */
export function earthOf(dig: Dig, { deepWalls, wallSlope }: Measuring): Earth {
  const outsideM = dig.pipe === null ? 0 : outsideDiameterM(dig.pipe, dig.sizeM);
  const widthM = dig.widthM ?? trenchWidthM(outsideM, Math.max(dig.depthStartM, dig.depthEndM));
  let topArea = 0;
  let shoredM2 = 0;
  const parts = depthParts(dig).map(({ depthClass, lengthM, fromM, toM }) => {
    const slope = depthClass === 'walled' && deepWalls === 'sloped' ? wallSlope : 0;
    const meanDepth = (fromM + toM) / 2;
    topArea += lengthM * (widthM + 2 * slope * meanDepth);
    if (depthClass === 'walled' && deepWalls === 'shored') shoredM2 += 2 * lengthM * meanDepth;
    return { depthClass, lengthM, volumeM3: trenchVolumeM3(lengthM, widthM, fromM, toM, slope) };
  });
  const dugM3 = parts.reduce((sum, { volumeM3 }) => sum + volumeM3, 0);
  const stoneHeightM = stoneHeight(dig, outsideM);
  const pipeArea = (Math.PI * outsideM ** 2) / 4;
  const pipeM3 = pipeArea * dig.lengthM;
  const stoneM3 = Math.max(0, stoneHeightM * widthM - (stoneHeightM > 0 ? pipeArea : 0)) * dig.lengthM;
  const filledM3 = Math.max(0, dugM3 - stoneM3 - pipeM3);
  const topWidthM = dig.lengthM > 0 ? topArea / dig.lengthM : widthM;
  return {
    outsideM,
    widthM,
    parts,
    dugM3,
    topWidthM,
    stoneHeightM,
    stoneM3,
    pipeM3,
    filledM3,
    leftM3: dugM3 - filledM3,
    shoredM2,
  };
}
