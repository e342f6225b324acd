import type { Chance } from '../model/result.js';
import { type PreparedLine, prepareLine, type RiskContext } from './context.js';
import { drawsOf, normals, seedFrom } from './draws.js';
import { lineLogSd, treesLogSd } from './interval.js';
import { addLoad, Load } from './load.js';
import { type DrawTable, drawTableOf, expectedUnder, sampledChance, surfaceOf } from './sampling.js';
import type { ScoreColumns } from './score-all.js';
import { WORST_SHARE } from './worst-tenth.js';

/** Draws of the 80 % interval. */
const DRAWS = 400;
/** Up to this many segments all are sampled; beyond, those reported and a random lot to compare them with. */
export const SAMPLE_ALL = 3000;
const COMPARED = 250;
/** Below this elasticity on the clock all roots are back, whatever the clock's spread. */
const STEADY = 1e-6;

export interface SampledRow {
  readonly chance: Chance;
  readonly inWorstTenth: number;
}

/** Prepares each line once and keeps the last one: rows come line by line. */
export function linePreparer(context: RiskContext): (line: number) => PreparedLine {
  let at = -1;
  let prepared: PreparedLine | null = null;
  return (line) => {
    if (line !== at || prepared === null) {
      prepared = prepareLine(context, context.lines.at(line));
      at = line;
    }
    return prepared;
  };
}

function comparedRows(columns: ScoreColumns, rows: readonly number[], seed: number): number[] {
  if (columns.count <= SAMPLE_ALL) return Array.from({ length: columns.count }, (_, row) => row);
  const z = normals(seedFrom('compared rows', seed));
  const chosen = new Set<number>();
  while (chosen.size < Math.min(COMPARED, columns.count)) {
    // any smooth stream does: the fraction of a normal deviate is uniform to well below a row
    const u = Math.abs(z()) * 1000;
    chosen.add(Math.floor((u - Math.floor(u)) * columns.count));
  }
  return [...new Set([...rows, ...chosen])].sort((a, b) => a - b);
}

/** Samples rows one after another; rows of one line share the deviates of what is not known of the line. */
export class RowSampler {
  private readonly table: DrawTable;
  private readonly load: Load;
  private deviatesOf = '';
  private deviates: Float64Array = new Float64Array(0);

  constructor(
    private readonly context: RiskContext,
    private readonly seed: number,
  ) {
    this.table = drawTableOf(drawsOf(DRAWS, seed));
    this.load = new Load(context.field.moments, 0);
  }

  private deviatesFor(drainId: string): Float64Array {
    if (this.deviatesOf !== drainId || this.deviates.length === 0) {
      const z = normals(seedFrom(drainId, this.seed));
      this.deviates = Float64Array.from({ length: DRAWS }, z);
      this.deviatesOf = drainId;
    }
    return this.deviates;
  }

  /** Expected entries of one segment in every draw. */
  sample(prepared: PreparedLine, segment: number): Float64Array {
    const { inputs, near, line, clock } = prepared;
    const from = inputs.openings.first[segment] as number;
    const to = inputs.openings.first[segment + 1] as number;
    const { load } = this;
    load.clear(near.count);
    addLoad(inputs, from, to, load);
    const steady = Math.abs(load.clockPull) <= STEADY * load.total && clock.sinceCut === null;
    const extraLogSd = Math.hypot(lineLogSd(line, clock), treesLogSd(load, near, this.context.field));
    const extra = this.deviatesFor(line.drain.id).map((z) => Math.exp(extraLogSd * z));
    return expectedUnder(surfaceOf(inputs, from, to, steady), this.table, extra, prepared.scale);
  }
}

/** Threshold of the worst tenth in each draw, from the samples of the rows that are compared. */
export function thresholds(samples: readonly Float64Array[]): Float64Array {
  const worst = Math.max(1, Math.ceil(WORST_SHARE * samples.length));
  const column = new Float64Array(samples.length);
  return Float64Array.from({ length: DRAWS }, (_, d) => {
    samples.forEach((sample, i) => {
      column[i] = sample[d] as number;
    });
    return column.sort()[samples.length - worst] as number;
  });
}

/** Share of the draws in which a row is among the worst tenth. */
export function shareAbove(sample: Float64Array, limit: Float64Array): number {
  let above = 0;
  sample.forEach((value, d) => {
    if (value > 0 && value >= (limit[d] as number)) above++;
  });
  return above / DRAWS;
}

/**
 * Sampled interval of the wanted rows, and the share of draws in which each is among the worst tenth. The draws
 * are the same for all rows. On a large net the worst tenth is taken of a random lot of the other rows.
 */
export function sampleRows(
  context: RiskContext,
  columns: ScoreColumns,
  wanted: readonly number[],
  seed: number,
): ReadonlyMap<number, SampledRow> {
  const sampler = new RowSampler(context, seed);
  const all = comparedRows(columns, wanted, seed);
  const isWanted = new Set(wanted);
  const prepare = linePreparer(context);
  const samples = new Map<number, Float64Array>();
  for (const row of all) {
    const prepared = prepare(columns.line[row] as number);
    samples.set(row, sampler.sample(prepared, columns.segment[row] as number));
  }
  const compared = columns.count <= SAMPLE_ALL ? all : comparedRows(columns, [], seed);
  const limit = thresholds(compared.map((row) => samples.get(row) as Float64Array));
  const found = new Map<number, SampledRow>();
  for (const [row, sample] of samples) {
    if (!isWanted.has(row)) continue;
    found.set(row, {
      chance: sampledChance(sample, columns.expected[row] as number),
      inWorstTenth: shareAbove(sample, limit),
    });
  }
  return found;
}
