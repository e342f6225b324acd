import { summaryOf } from '../infer/density.js';
import { LINE_CV, shapeOf } from '../infer/gamma-prior.js';
import { evidenceOf, type Sighting } from '../infer/likelihood.js';
import { singlePosterior } from '../infer/single.js';
import type { LineModel } from '../line/line-model.js';
import type { LearnedGroup, LearnedModel } from '../model/learned.js';
import { groupsOf, kindOf } from './groups.js';
import type { Observation } from './observed.js';

/** How findings move the rates of one line, for entries and for crushing. */
export interface RateScale {
  readonly factor: number;
  /** What is left of the spread of the rate: 1 where nothing was learned. */
  readonly narrow: number;
}

export interface LineScale {
  readonly entry: RateScale;
  readonly crush: RateScale;
}

const UNTOUCHED: RateScale = { factor: 1, narrow: 1 };
export const NO_SCALE: LineScale = { entry: UNTOUCHED, crush: UNTOUCHED };

/** Standard deviation of the logarithm of a line's own factor, which no finding on other lines takes away. */
const LINE_LOG_SD = summaryOf(singlePosterior(shapeOf(LINE_CV), evidenceOf([]))).logSd;

/** Looks up what was learned of a group, or else of its kind in other materials. */
function learnedOf(learned: LearnedModel | null, group: string): RateScale {
  if (learned === null) return UNTOUCHED;
  const row: LearnedGroup | undefined =
    learned.groups.find((g) => g.group === group) ?? learned.kinds.find((k) => k.group === kindOf(group));
  if (!row) return UNTOUCHED;
  const narrow = Math.hypot(row.logSd, LINE_LOG_SD) / Math.hypot(row.priorLogSd, LINE_LOG_SD);
  return { factor: row.multiplier.mean, narrow };
}

/**
 * How one line differs from lines of its kind, from what the camera saw of it alone: the mean of a gamma posterior
 * whose prior has mean 1.
 */
export function ownFactor(sightings: readonly Sighting[], groupFactor: number): number {
  const evidence = evidenceOf(sightings.map((s) => ({ ...s, expected: s.expected * groupFactor })));
  if (evidence.expected === 0 && evidence.some.length === 0) return 1;
  const shape = shapeOf(LINE_CV);
  if (evidence.some.length === 0) return (shape + evidence.entries) / (shape + evidence.expected);
  return summaryOf(singlePosterior(shape, evidence)).mean;
}

/** Scales of a line's rates: what was learned of its groups, then what was seen of the line itself. */
export function lineScaleOf(
  line: LineModel,
  learned: LearnedModel | null,
  own: readonly Observation[],
): LineScale {
  if (learned === null && own.length === 0) return NO_SCALE;
  const groups = groupsOf(line);
  const scale = (group: string): RateScale => {
    const kind = learnedOf(learned, group);
    const mine = own.filter((o) => o.group === group);
    return mine.length === 0
      ? kind
      : { factor: kind.factor * ownFactor(mine, kind.factor), narrow: kind.narrow };
  };
  return { entry: scale(groups.entry), crush: scale(groups.crush) };
}
