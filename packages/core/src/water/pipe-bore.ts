import type { Drain } from '../model/site.js';
import { waterJudgement } from '../tables/judgement.js';
import { pipeFlow } from '../tables/pipe-flow.js';
import type { PipeRow, PipeSize } from '../tables/pipe-row.js';
import { fromInches, fromMillimetres } from '../units/length.js';
import { type Metres, metres } from '../units/quantity.js';
import { isSmoothPlastic } from './smooth-plastic.js';

/** Real inside diameter of a line's pipe. */
export interface PipeBore {
  readonly insideDiameterM: Metres;
  /** By the pipe's table, by the outside diameter that metric pipe is named by, or the size taken as the bore. */
  readonly from: 'table' | 'outside' | 'size';
}

/** How far a size is from a nominal one, as a share; by inches or by millimetres, whichever is nearer. */
function offBy({ nominalIn, nominalMm }: PipeSize, sizeM: number): number {
  const off = (nominal: number): number => Math.abs(sizeM / nominal - 1);
  return Math.min(off(fromInches(nominalIn)), off(fromMillimetres(nominalMm)));
}

/** Bore by the nominal size in the pipe's table; null where the size is not known. */
export function pipeBore({ sizeM }: Pick<Drain, 'sizeM'>, pipe: PipeRow): PipeBore | null {
  if (sizeM === null) return null;
  const [nearest] = [...pipe.sizes].sort((a, b) => offBy(a, sizeM) - offBy(b, sizeM));
  if (nearest !== undefined && offBy(nearest, sizeM) <= waterJudgement.nominalSizeShare.value) {
    return { insideDiameterM: metres(nearest.insideDiameterM.value), from: 'table' };
  }
  const metric = pipeFlow.metricOutsideMm.value.some((mm) => Math.abs(sizeM - fromMillimetres(mm)) < 0.0005);
  return metric && isSmoothPlastic(pipe.key)
    ? { insideDiameterM: metres(sizeM * pipeFlow.metricInsideShare.value), from: 'outside' }
    : { insideDiameterM: metres(sizeM), from: 'size' };
}
