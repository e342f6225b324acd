import type { Drain } from '../model/site.js';
import type { Range } from '../model/water-result.js';
import { pipeFlow } from '../tables/pipe-flow.js';
import type { PipeRow } from '../tables/pipe-row.js';
import { isSmoothPlastic } from './smooth-plastic.js';

/** Manning's n of a line between the ends that sources give; holes roughen a smooth pipe at the high end. */
export function roughness(drain: Pick<Drain, 'perforated'>, pipe: PipeRow): Range {
  const { low, mid, high } = pipe.manningN;
  const holed = drain.perforated && isSmoothPlastic(pipe.key);
  return {
    low: low.value,
    mid: mid.value,
    high: holed ? Math.max(high.value, pipeFlow.perforatedN.value) : high.value,
  };
}
