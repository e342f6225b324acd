import type { Chance } from '../model/result.js';
import type { Site } from '../model/site.js';
import { type PreparedLine, prepareLine, type RankOptions, type RiskContext } from '../risk/context.js';
import { chanceOf } from '../risk/interval.js';
import { addLoad, Load } from '../risk/load.js';
import { sampledChance } from '../risk/sampling.js';
import { seenContextOf } from '../risk/seen-context.js';
import { RowSampler } from '../risk/spread-of-rows.js';

/** A stretch of a line that odds are asked for. */
export interface OddsPart {
  readonly drainId: string;
  readonly fromM: number;
  readonly toM: number;
}

/** Entries expected in a stretch by years from now, and the chance of any at two horizons with its range. */
export interface StretchOdds {
  /** Whole years from 0 on. */
  readonly expectedBy: readonly number[];
  readonly chance: { readonly '10': Chance; readonly '25': Chance };
}

/** Horizons that are worked out; years between them lie on straight lines. */
const HORIZONS: readonly number[] = [1, 3, 6, 10, 17, 25, 50];
/** Those for which the range is told. */
const RANGES: readonly number[] = [10, 25];
export const MOST_YEARS = 50;
/** The draws of the ranking. */
const SEED = 20_240_229;

type Scoring = Pick<RankOptions, 'asOf' | 'segmentM' | 'learned'>;

/** One segment of the stretch, ready to be scored. */
interface Weighted {
  readonly prepared: PreparedLine;
  readonly segment: number;
  /** Share of the segment that lies in the stretch. */
  readonly share: number;
}

function segmentsOf(context: RiskContext, parts: readonly OddsPart[]): Weighted[] {
  const found: Weighted[] = [];
  for (const { drainId, fromM, toM } of parts) {
    const number = context.site.drains.findIndex(({ id }) => id === drainId);
    const line = context.lines.at(number);
    const prepared = prepareLine(context, line);
    line.segments.forEach((segment, i) => {
      const overlap = Math.min(segment.toM, toM) - Math.max(segment.fromM, fromM);
      const share = Math.min(1, overlap / (segment.toM - segment.fromM));
      if (overlap > 0) found.push({ prepared, segment: i, share });
    });
  }
  return found;
}

function expectedIn(context: RiskContext, segments: readonly Weighted[]): number {
  const load = new Load(context.field.moments, 0);
  let sum = 0;
  for (const { prepared, segment, share } of segments) {
    const { first } = prepared.inputs.openings;
    load.clear(prepared.near.count);
    addLoad(prepared.inputs, first[segment] as number, first[segment + 1] as number, load);
    sum += share * load.total;
  }
  return sum;
}

/** Range of the chance that anything comes into the stretch: draw by draw over all of its segments. */
function rangeOf(context: RiskContext, segments: readonly Weighted[], expected: number): Chance {
  const sampler = new RowSampler(context, SEED);
  let sum: Float64Array | null = null;
  for (const { prepared, segment, share } of segments) {
    const draws = sampler.sample(prepared, segment);
    const before: Float64Array = sum ?? new Float64Array(draws.length);
    sum = before.map((value, d) => value + share * (draws[d] as number));
  }
  return sum === null ? { low: 0, likely: 0, high: 0 } : sampledChance(sum, expected);
}

/** What a horizon gave at whole years, on straight lines between; never falling. */
function byYear(points: readonly (readonly [year: number, expected: number])[]): number[] {
  const expectedBy = [0];
  let [beforeYear, before] = [0, 0];
  for (const [year, expected] of points) {
    const reached = Math.max(before, expected);
    for (let y = beforeYear + 1; y <= year; y++) {
      expectedBy.push(before + ((reached - before) * (y - beforeYear)) / (year - beforeYear));
    }
    [beforeYear, before] = [year, reached];
  }
  return expectedBy;
}

/** The odds of a stretch under the model, trees growing and clocks running. */
export function stretchOdds(site: Site, parts: readonly OddsPart[], scoring: Scoring): StretchOdds {
  const ranges = new Map<number, Chance>();
  const points = HORIZONS.map((horizonYears) => {
    const { context } = seenContextOf(site, { ...scoring, horizonYears });
    const segments = segmentsOf(context, parts);
    const expected = expectedIn(context, segments);
    if (RANGES.includes(horizonYears)) ranges.set(horizonYears, rangeOf(context, segments, expected));
    return [horizonYears, expected] as const;
  });
  const [ten, later] = RANGES.map((years) => ranges.get(years) as Chance) as [Chance, Chance];
  return { expectedBy: byYear(points), chance: { '10': ten, '25': later } };
}

/** A chance with events of a further, certain rate added. */
export function withRate({ low, likely, high }: Chance, expected: number): Chance {
  const more = (chance: number): number => chanceOf(-Math.log1p(-Math.min(chance, 1 - 1e-12)) + expected);
  return { low: more(low), likely: more(likely), high: more(high) };
}
