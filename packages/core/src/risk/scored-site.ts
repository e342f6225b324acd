import type { Band, LineResult, RankResult, SegmentResult, TreeZones } from '../model/result.js';
import type { Site } from '../model/site.js';
import type { MadeBefore, PreparedLine, RankOptions, RiskContext } from './context.js';
import { lineLogSd, ownLogSdOf, treesLogSd } from './interval.js';
import { lineResult } from './line-result.js';
import { addLoad, Load } from './load.js';
import { worstFirst } from './order.js';
import { bandOfRow, expectedByLine, rankResultOf } from './rank-result.js';
import { closedFormChance, type ScoreColumns, scoreAll } from './score-all.js';
import { type SeenContext, seenContextOf } from './seen-context.js';
import { segmentId, segmentResult, type ZoneCircles, zoneStretches } from './segment-result.js';
import { linePreparer, SAMPLE_ALL, sampleRows } from './spread-of-rows.js';
import { treesToDescribe, zonesOfTree } from './tree-zones.js';
import { type Troubles, troublesOf } from './troubles.js';
import { inWorstTenth, worstTenthFrom } from './worst-tenth.js';

/** On a net too large to sample whole, no more reported segments than this are sampled; else in closed form. */
const MOST_SAMPLED = 200;
const BANDS: readonly Band[] = ['leave', 'watch', 'inspect', 'act', 'cannot-say'];
export const DEFAULT_SEED = 20_240_229;

/** One line in full, with the segments asked for and the trees that bear on them. */
export interface LineDetail {
  readonly line: LineResult;
  readonly segments: readonly SegmentResult[];
  readonly trees: readonly TreeZones[];
}

/** Chance of being among the worst tenth where the row was not sampled. */
export function worstTenthOf(
  context: RiskContext,
  prepared: PreparedLine,
  load: Load,
  limit: number,
): number {
  const ofLine = lineLogSd(prepared.line, prepared.clock);
  const ofTrees = treesLogSd(load, prepared.near, context.field);
  return inWorstTenth(load.total, limit, ownLogSdOf(load, Math.hypot(ofLine, ofTrees)));
}

/** A site with every segment scored once, to be asked about as often as wanted. */
export class ScoredSite {
  private readonly seen: SeenContext;
  private readonly troubles: Troubles;
  private readonly seed: number;
  /** Rank of every row, made when first asked for. */
  private ranks: Int32Array | null = null;
  /** Band of every row, by its place among the bands; made when first asked for: sums over a town ask again and again. */
  private bands: Uint8Array | null = null;
  /** Scores of every segment, a row each. */
  readonly columns: ScoreColumns;

  /**
   * @param site as `readSite` gives it.
   * @param options as for `rank`.
   * @param scored Scores of all lines, where they were worked out before (by several threads).
   * @throws RangeError for options that make no sense; bad data never throws.
   */
  constructor(
    readonly site: Site,
    options: RankOptions,
    scored?: { readonly made: MadeBefore; readonly columns: ScoreColumns },
  ) {
    this.seen = seenContextOf(site, options, scored?.made);
    this.columns = scored?.columns ?? scoreAll(this.seen.context);
    this.troubles = troublesOf(this.seen.context, this.columns, this.seen.known);
    this.seed = options.seed ?? DEFAULT_SEED;
  }

  /** What the scores were worked out from. */
  get context(): RiskContext {
    return this.seen.context;
  }

  /** Band of a row of `columns`. */
  bandOf(row: number): Band {
    if (this.bands === null) {
      this.bands = new Uint8Array(this.columns.count);
      for (let i = 0; i < this.bands.length; i++)
        this.bands[i] = BANDS.indexOf(bandOfRow(this.columns, this.troubles, i));
    }
    return BANDS[this.bands[row] as number] as Band;
  }

  /** Rows worst first, as many as wanted. */
  private worst(most: number): number[] {
    return worstFirst(this.columns, this.site.drains, this.troubles.severe, most);
  }

  private idOf(row: number): string {
    const drain = this.site.drains[this.columns.line[row] as number];
    return segmentId(drain?.id ?? '', this.columns.segment[row] as number);
  }

  /** The ranking: all segments, the worst `top` of them, or the one whose id is `only`. */
  result({ top, only }: Pick<RankOptions, 'top' | 'only'> = {}): RankResult {
    const { columns, context } = this;
    const all = this.worst(only === undefined ? (top ?? columns.count) : columns.count);
    const rankOf = new Map(all.map((row, i) => [row, i + 1]));
    const order = only === undefined ? all : all.filter((row) => this.idOf(row) === only);
    const segments = this.detail(order, (row) => rankOf.get(row) as number);
    return rankResultOf(this.seen, columns, this.troubles, {
      segments,
      lines: [...expectedByLine(columns, order)].map(([i, sum]) => this.lineOf(i, sum)),
      trees: treesToDescribe(context, segments).map((i) => zonesOfTree(context, i)),
    });
  }

  private lineOf(number: number, expectedEntries: number): LineResult {
    return lineResult(this.context, number, expectedEntries, this.seen.known.get(number) ?? []);
  }

  private rankOf(row: number): number {
    if (this.ranks === null) {
      const ranks = new Int32Array(this.columns.count);
      this.worst(this.columns.count).forEach((at, i) => {
        ranks[at] = i + 1;
      });
      this.ranks = ranks;
    }
    return this.ranks[row] as number;
  }

  /**
   * A line with some of its segments in full.
   * @param lineNumber number of the line in the site, from 0.
   * @param segment number of the segment in the middle, from 0 at the outlet end.
   * @param beside how many on either side of it.
   * @returns null where there is no such segment.
   */
  around(lineNumber: number, segment: number, beside: number): LineDetail | null {
    const { columns } = this;
    const rows: number[] = [];
    for (let row = columns.line.indexOf(lineNumber); row >= 0 && columns.line[row] === lineNumber; row++) {
      if (Math.abs((columns.segment[row] as number) - segment) <= beside) rows.push(row);
    }
    if (!rows.some((row) => columns.segment[row] === segment)) return null;
    const segments = this.detail(rows, (row) => this.rankOf(row));
    const sum = expectedByLine(columns, rows).get(lineNumber) ?? 0;
    return { line: this.lineOf(lineNumber, sum), segments, trees: this.treesOf(segments) };
  }

  /** The trees that bear on some segments. */
  private treesOf(segments: readonly SegmentResult[]): TreeZones[] {
    const { context } = this;
    const bearing = new Set(segments.flatMap((segment) => segment.trees.map(({ id }) => id)));
    return context.field.trees.flatMap(({ id }, i) => (bearing.has(id) ? [zonesOfTree(context, i)] : []));
  }

  /** Everything about some rows, worst first. */
  private detail(order: readonly number[], rankOf: (row: number) => number): SegmentResult[] {
    const { columns, context } = this;
    const sample = columns.count <= SAMPLE_ALL || order.length <= MOST_SAMPLED;
    const sampled = sample ? sampleRows(context, columns, order, this.seed) : null;
    const limit = sample ? 0 : worstTenthFrom(columns);
    const prepare = linePreparer(context);
    let stretchesOf = -1;
    let stretches: ZoneCircles | null = null;
    const results: SegmentResult[] = [];
    for (const row of [...order].sort((a, b) => a - b)) {
      const number = columns.line[row] as number;
      const i = columns.segment[row] as number;
      const prepared = prepare(number);
      if (stretches === null || stretchesOf !== number) stretches = zoneStretches(context, prepared);
      stretchesOf = number;
      const load = loadOf(context, prepared, i);
      const own = sampled?.get(row);
      results.push(
        segmentResult(context, {
          prepared,
          i,
          load,
          rank: rankOf(row),
          chance: own?.chance ?? closedFormChance(columns, row),
          interval: own ? 'sampled' : 'closed-form',
          inWorstTenth: own?.inWorstTenth ?? worstTenthOf(context, prepared, load, limit),
          findings: this.seen.known.get(number) ?? [],
          stretches,
        }),
      );
    }
    return results.sort((a, b) => a.rank - b.rank);
  }
}

/** Load of segment `i` of a line. */
export function loadOf(context: RiskContext, prepared: PreparedLine, i: number): Load {
  const { first } = prepared.inputs.openings;
  const load = new Load(context.field.moments, prepared.near.count);
  addLoad(prepared.inputs, first[i] as number, first[i + 1] as number, load);
  return load;
}
