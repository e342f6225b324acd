import type { Chance } from '../model/result.js';
import type { Site } from '../model/site.js';
import type { RankOptions } from '../risk/context.js';
import { chanceOf } from '../risk/interval.js';
import { sampledChance } from '../risk/sampling.js';
import { type ScoreColumns, scoreAll } from '../risk/score-all.js';
import { seenContextOf } from '../risk/seen-context.js';
import { linePreparer, RowSampler } from '../risk/spread-of-rows.js';

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
const HORIZONS: readonly number[] = [1, 2, 3, 5, 7, 10, 15, 20, 25, 35, 50];
export const MOST_YEARS = 50;
/** The draws of the ranking. */
const SEED = 20_240_229;

type Scoring = Pick<RankOptions, 'asOf' | 'segmentM' | 'learned'>;

interface WeightedRow {
  readonly row: number;
  /** Share of the segment that lies in the stretch. */
  readonly share: number;
}

/** Rows of the parts, each with how much of it counts. */
function rowsOf(
  { context }: ReturnType<typeof seenContextOf>,
  columns: ScoreColumns,
  parts: readonly OddsPart[],
): WeightedRow[] {
  const rows: WeightedRow[] = [];
  for (let row = 0; row < columns.count; row++) {
    const line = context.lines.at(columns.line[row] as number);
    const segment = line.segments[columns.segment[row] as number] as { fromM: number; toM: number };
    for (const { drainId, fromM, toM } of parts) {
      if (line.drain.id !== drainId) continue;
      const overlap = Math.min(segment.toM, toM) - Math.max(segment.fromM, fromM);
      if (overlap > 0) rows.push({ row, share: Math.min(1, overlap / (segment.toM - segment.fromM)) });
    }
  }
  return rows;
}

const expectedIn = (columns: ScoreColumns, rows: readonly WeightedRow[]): number =>
  rows.reduce((sum, { row, share }) => sum + share * (columns.expected[row] as number), 0);

/** Range of the chance that anything comes into the stretch: draw by draw over all of its segments. */
function sampled(site: Site, parts: readonly OddsPart[], scoring: Scoring, horizonYears: number): Chance {
  const seen = seenContextOf(site, { ...scoring, horizonYears });
  const columns = scoreAll(seen.context);
  const rows = rowsOf(seen, columns, parts);
  if (rows.length === 0) return { low: 0, likely: 0, high: 0 };
  const sampler = new RowSampler(seen.context, SEED);
  const prepare = linePreparer(seen.context);
  let sum: Float64Array | null = null;
  for (const { row, share } of rows) {
    const draws = sampler.sample(prepare(columns.line[row] as number), columns.segment[row] as number);
    const before: Float64Array = sum ?? new Float64Array(draws.length);
    sum = before.map((value, d) => value + share * (draws[d] as number));
  }
  return sampledChance(sum as Float64Array, expectedIn(columns, rows));
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
  const points = HORIZONS.map((horizonYears) => {
    const seen = seenContextOf(site, { ...scoring, horizonYears });
    const columns = scoreAll(seen.context);
    return [horizonYears, expectedIn(columns, rowsOf(seen, columns, parts))] as const;
  });
  return {
    expectedBy: byYear(points),
    chance: { '10': sampled(site, parts, scoring, 10), '25': sampled(site, parts, scoring, 25) },
  };
}

/** A chance with events of a further, certain rate added. */
export function withRate({ low, likely, high }: Chance, expected: number): Chance {
  const more = (chance: number): number => chanceOf(-Math.log1p(-Math.min(chance, 1 - 1e-12)) + expected);
  return { low: more(low), likely: more(likely), high: more(high) };
}
