import type { PlacedFinding } from '../line/find.js';
import type { LineModel } from '../line/line-model.js';
import type { Chance, LineResult, SegmentResult } from '../model/result.js';
import type { Tree } from '../model/site.js';
import { type PreparedLine, prepareLine, type RiskContext } from './context.js';
import { lineResult } from './line-result.js';
import type { Load } from './load.js';
import type { Observation } from './observed.js';
import { isSameValue } from './same-value.js';
import { sampledChance } from './sampling.js';
import { scoreOfLoad } from './score-all.js';
import { loadOf, worstTenthOf } from './scored-site.js';
import { segmentResult, zoneStretches } from './segment-result.js';

/** Everything that the scores of one line hang on, besides the date, the soil and the options. */
export interface LineBasis {
  readonly model: LineModel;
  /** Trees that may reach it, and their numbers in the field. */
  readonly trees: readonly Tree[];
  readonly numbers: readonly number[];
  readonly findings: readonly PlacedFinding[];
}

/** True where a line would be scored again from the same things. */
export function isSameBasis(a: LineBasis, b: LineBasis): boolean {
  return (
    a.model === b.model &&
    a.trees.length === b.trees.length &&
    a.trees.every((tree, i) => tree === b.trees[i] && a.numbers[i] === b.numbers[i]) &&
    isSameValue(a.findings, b.findings)
  );
}

/** What a ranking adds to a row that is scored: these change with the other rows too. */
export interface Standing {
  readonly rank: number;
  readonly chance: Chance;
  readonly interval: SegmentResult['interval'];
  readonly inWorstTenth: number;
}

const hasStanding = (row: SegmentResult, { rank, chance, interval, inWorstTenth }: Standing): boolean =>
  row.rank === rank &&
  row.interval === interval &&
  row.inWorstTenth === inWorstTenth &&
  isSameValue(row.chance, chance);

/** One line with its scores, kept from edit to edit as long as what it hangs on stays the same. */
export class ScoredLine {
  readonly prepared: PreparedLine;
  readonly scores: readonly ReturnType<typeof scoreOfLoad>[];
  /** Expected entries in every draw, by segment; null where not sampled yet. */
  readonly samples: (Float64Array | null)[];
  /** Share of the draws among the worst tenth, as last counted. */
  readonly inWorstTenth: (number | null)[];
  private readonly chances: (Chance | null)[];
  private readonly loads: readonly Load[];
  private readonly rows: (SegmentResult | null)[];
  private stretches: ReturnType<typeof zoneStretches> | null = null;
  private result: LineResult | null = null;

  constructor(
    context: RiskContext,
    readonly basis: LineBasis,
    readonly own: readonly Observation[],
  ) {
    const { model } = basis;
    this.prepared = prepareLine(context, model);
    this.loads = model.segments.map((_, i) => loadOf(context, this.prepared, i));
    this.scores = this.loads.map((load) => scoreOfLoad(context, this.prepared, load));
    this.samples = model.segments.map(() => null);
    this.inWorstTenth = model.segments.map(() => null);
    this.rows = model.segments.map(() => null);
    this.chances = model.segments.map(() => null);
  }

  /** Chance of segment `i` with its sampled interval; null where it has not been sampled. */
  sampledChance(i: number): Chance | null {
    const sample = this.samples[i] ?? null;
    if (sample === null) return null;
    this.chances[i] ??= sampledChance(sample, (this.scores[i] as { expected: number }).expected);
    return this.chances[i];
  }

  /** Chance of segment `i` to be among the worst tenth, in closed form. */
  worstTenth(context: RiskContext, i: number, limit: number): number {
    return worstTenthOf(context, this.prepared, this.loads[i] as Load, limit);
  }

  /** Everything about segment `i`: the very row of before where nothing of it has changed. */
  row(context: RiskContext, i: number, standing: Standing): SegmentResult {
    const before = this.rows[i];
    if (before && hasStanding(before, standing)) return before;
    const row = before ? { ...before, ...standing } : this.described(context, i, standing);
    this.rows[i] = row;
    return row;
  }

  private described(context: RiskContext, i: number, standing: Standing): SegmentResult {
    const { prepared } = this;
    this.stretches ??= zoneStretches(context, prepared);
    return segmentResult(context, {
      prepared,
      i,
      load: this.loads[i] as Load,
      ...standing,
      findings: this.basis.findings,
      stretches: this.stretches,
    });
  }

  line(context: RiskContext, number: number, expectedEntries: number): LineResult {
    this.result ??= lineResult(context, number, expectedEntries, this.basis.findings);
    return this.result;
  }
}
