import type { LineModel } from '../line/line-model.js';
import { type PipeTop, pipeTopAt } from '../line/pipe-top.js';
import type { Site } from '../model/site.js';
import type { LineWater, WaterGap } from '../model/water-result.js';

/** Fall over length of a line and where it comes from; a slope that is not above 0 carries nothing by gravity. */
export interface LineSlope {
  readonly slope: number | null;
  readonly from: LineWater['slopeFrom'];
  readonly why: WaterGap | null;
  /** Levels that it was taken from. */
  readonly levels: readonly { readonly id: string; readonly distanceM: number }[];
}

function gapOf(line: LineModel, upper: PipeTop | null, outlet: PipeTop | null): WaterGap {
  const { depthStartM, depthEndM } = line.drain;
  if (depthStartM === null || depthEndM === null) return 'depths-not-given';
  return upper === null || outlet === null ? 'levels-not-given' : 'one-level-for-both-ends';
}

/**
 * From the depths at both ends and a ground level beside each; else as given.
 * @param slopeRatio to take where nothing is known of the line's own.
 */
export function lineSlope(site: Site, line: LineModel, slopeRatio: number | null): LineSlope {
  const { drain, flowsAsDrawn, lengthM } = line;
  const upper = pipeTopAt(site, drain, flowsAsDrawn ? 'start' : 'end');
  const outlet = pipeTopAt(site, drain, flowsAsDrawn ? 'end' : 'start');
  if (upper !== null && outlet !== null && upper.level !== outlet.level) {
    const levels = [upper, outlet].map(({ level, distanceM }) => ({ id: level.id, distanceM }));
    const slope = (upper.topM - outlet.topM) / lengthM;
    return { slope, from: 'levels', why: slope > 0 ? null : 'no-fall', levels };
  }
  if (slopeRatio !== null) return { slope: slopeRatio, from: 'given', why: null, levels: [] };
  return { slope: null, from: null, why: gapOf(line, upper, outlet), levels: [] };
}
