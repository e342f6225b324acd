import { boxOf } from '../geometry/box-index.js';
import type { Interval } from '../geometry/intervals.js';
import type { LineModel } from '../line/line-model.js';
import { segmentsOf } from '../line/segments.js';
import type { Tree } from '../model/site.js';
import { prepareLine, type RiskContext } from './context.js';
import { spanOf } from './horizon.js';
import { addLoad, Load } from './load.js';
import { treeFieldOf } from './tree-field.js';
import { WAY_CRUSH, WAY_JOINT, WAY_SLOT } from './ways.js';

/** Entries and breaks that the model expected in a stretch of line over a span of years. */
export interface Exposure {
  readonly entry: number;
  readonly crush: number;
}

/** Slots and crushing are summed along the pipe in parts no longer than this, metres. */
const PART_M = 1;

/** The line as it was: what was done to it after `year` had not happened. */
function lineAsOf(line: LineModel, stretch: Interval, year: number): LineModel {
  const { dugYear, cutYear } = line.drain;
  const [fromM, toM] = stretch;
  const toEnd = toM >= line.lengthM;
  const parts = segmentsOf(toM - fromM, [], PART_M).map((s) => ({
    fromM: fromM + s.fromM,
    toM: fromM + s.toM,
  }));
  return {
    ...line,
    drain: {
      ...line.drain,
      dugYear: dugYear !== null && dugYear < year ? dugYear : null,
      cutYear: cutYear !== null && cutYear < year ? cutYear : null,
    },
    // a joint on the border of two stretches belongs to the upper one, the last to the one below it
    joints: line.joints.filter(({ stationM }) => stationM >= fromM && (stationM < toM || toEnd)),
    segments: parts,
  };
}

/** Trees that may have reached the line: fewer to grow back in time than all of a site. */
function treesAbout(context: RiskContext, line: LineModel): Tree[] {
  const [west, south, east, north] = boxOf(line.drain.path);
  return context.field.index.search(west, south, east, north).map((t) => context.field.trees[t] as Tree);
}

/**
 * What the model expected in one stretch of a line between two dates (fractional years), trees as they were then.
 * By the model as it stands without findings. The result depends on the stretch alone, not on how it was cut up when it was told.
 */
export function exposureOf(
  context: RiskContext,
  line: LineModel,
  stretch: Interval,
  fromYear: number,
  toYear: number,
): Exposure {
  if (!(toYear > fromYear) || !(stretch[1] > stretch[0])) return { entry: 0, crush: 0 };
  const then = lineAsOf(line, stretch, toYear);
  const horizon = spanOf(fromYear - context.nowYear, toYear - context.nowYear);
  const site = { ...context.site, trees: treesAbout(context, line) };
  const field = treeFieldOf(site, context.nowYear, horizon);
  const prepared = prepareLine({ ...context, site, field, horizon, learned: null, own: new Map() }, then);
  const { first } = prepared.inputs.openings;
  const load = new Load(field.moments, prepared.near.count);
  addLoad(prepared.inputs, 0, first[then.segments.length] as number, load);
  return { entry: load.byWay(WAY_JOINT) + load.byWay(WAY_SLOT), crush: load.byWay(WAY_CRUSH) };
}
