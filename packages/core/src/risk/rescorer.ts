import { boxOf } from '../geometry/box-index.js';
import { flowIssue, type LineModel } from '../line/line-model.js';
import type { RankResult, TreeZones } from '../model/result.js';
import type { Site, Tree } from '../model/site.js';
import { contextOf, type RankOptions, type RiskContext } from './context.js';
import { type KnownByLine, placeFindings } from './known.js';
import { type Observation, observationsOf } from './observed.js';
import { worstFirst } from './order.js';
import { expectedByLine, rankResultOf } from './rank-result.js';
import { isSameValue, keepSame } from './same-value.js';
import { closedFormChance, GrowingColumns, type ScoreColumns } from './score-all.js';
import { isSameBasis, type LineBasis, ScoredLine, type Standing } from './scored-line.js';
import { DEFAULT_SEED, ScoredSite } from './scored-site.js';
import type { SeenContext } from './seen-context.js';
import { RowSampler, SAMPLE_ALL, shareAbove, thresholds } from './spread-of-rows.js';
import { treesToDescribe, zonesOfTree } from './tree-zones.js';
import { troublesOf } from './troubles.js';
import { worstTenthFrom } from './worst-tenth.js';

/** What stays the same for all the edits that a rescorer follows. */
export type RescoreOptions = Pick<RankOptions, 'horizonYears' | 'segmentM' | 'seed' | 'learned'>;

/** The site as last taken, with what was worked out for it. */
interface Held extends SeenContext {
  readonly site: Site;
  readonly models: readonly LineModel[];
  readonly lines: readonly ScoredLine[];
  readonly columns: ScoreColumns;
  readonly zones: ReadonlyMap<Tree, TreeZones>;
}

const EMPTY: Site = {
  name: null,
  invented: false,
  units: null,
  soil: null,
  biome: null,
  protection: 'trunk-multiple',
  rainMmPerHour: null,
  trees: [],
  drains: [],
  fittings: [],
  findings: [],
  obstacles: [],
  barriers: [],
  levels: [],
};

/** The site with every part the very object of before where it holds the same. */
function kept(before: Site, now: Site): Site {
  return {
    ...now,
    trees: keepSame(before.trees, now.trees),
    drains: keepSame(before.drains, now.drains),
    fittings: keepSame(before.fittings, now.fittings),
    findings: keepSame(before.findings, now.findings),
    obstacles: keepSame(before.obstacles, now.obstacles),
    barriers: keepSame(before.barriers, now.barriers),
    levels: keepSame(before.levels, now.levels),
  };
}

const sameLayout = (a: Site, b: Site): boolean =>
  a.drains === b.drains && a.fittings === b.fittings && a.levels === b.levels;

/** What every line hangs on: where it changes, all are scored again. */
const sameGround = (a: Site, b: Site): boolean =>
  a.obstacles === b.obstacles &&
  a.barriers === b.barriers &&
  a.soil === b.soil &&
  (a.trees.length === 0) === (b.trees.length === 0);

/**
 * Ranks a site again and again while it is edited. Only the lines within reach of what changed are scored anew; the
 * rest is kept, object for object. Right after an edit the rows that were scored anew have closed-form intervals;
 * once `settle` has sampled them the result is that of `rank`. Likely scores and order are those of `rank` always.
 */
export class Rescorer {
  private held: Held | null = null;
  private sampler: RowSampler | null = null;

  /** @param options stay the same for all edits. */
  constructor(private readonly options: RescoreOptions = {}) {}

  /**
   * Takes the site as it now is.
   * @param site as `SiteReader` or `readSite` gives it.
   * @param asOf ISO date that the scores are for.
   * @throws RangeError for a date or options that make no sense; bad data never throws.
   */
  take(site: Site, asOf: string): void {
    const before = this.held;
    const now = kept(before?.site ?? EMPTY, site);
    const fresh = before === null || before.context.asOf !== asOf || !sameGround(before.site, now);
    const laidOut = before && sameLayout(before.site, now) ? before.context.lines : undefined;
    const base = contextOf(now, { ...this.options, asOf }, { laidOut });
    const models = this.modelsOf(base, now, before);
    const context = { ...base, lines: { ...base.lines, at: (n: number) => models[n] as LineModel } };
    const { known, misplaced } = this.findingsOf(context, now, before);
    const lines = linesOf(context, known, fresh ? null : before);
    const own = new Map(lines.map((line) => [line.basis.model.drain.id, line.own]));
    const zones = before && !fresh && before.site.protection === now.protection ? before.zones : new Map();
    const all = { ...context, own };
    this.sampler = null;
    this.held = {
      site: now,
      context: all,
      known,
      misplaced,
      models,
      lines,
      columns: columnsOf(lines),
      zones,
    };
  }

  private modelsOf(context: RiskContext, site: Site, before: Held | null): readonly LineModel[] {
    if (before && sameLayout(before.site, site)) return before.models;
    const earlier = new Map(before?.models.map((model) => [model.drain.id, model]));
    return site.drains.map((drain, n) => {
      const model = context.lines.at(n);
      const old = earlier.get(drain.id);
      return old && isSameValue(old, model) ? old : model;
    });
  }

  private findingsOf(
    context: RiskContext,
    site: Site,
    before: Held | null,
  ): Pick<SeenContext, 'known' | 'misplaced'> {
    const same =
      before && sameLayout(before.site, site) && before.context.site.findings === context.site.findings;
    if (same) return before;
    const { byLine, issues } = placeFindings(context.site, context.lines);
    return { known: byLine, misplaced: issues };
  }

  private now(): Held {
    if (this.held === null) throw new RangeError('no site was taken yet');
    return this.held;
  }

  /** True where every row has its sampled interval. */
  get settled(): boolean {
    const { columns, lines } = this.now();
    return columns.count > SAMPLE_ALL || lines.every(({ samples }) => !samples.includes(null));
  }

  /**
   * Samples rows that have no sampled interval yet.
   * @param most no more rows than this, so that somebody waiting can be heard in between.
   * @returns true when none is left.
   */
  settle(most = Infinity): boolean {
    const { columns, context, lines } = this.now();
    if (columns.count > SAMPLE_ALL) return true;
    this.sampler ??= new RowSampler(context, this.options.seed ?? DEFAULT_SEED);
    let left = most;
    for (const { prepared, samples } of lines) {
      for (let i = 0; i < samples.length; i++) {
        if (samples[i] !== null) continue;
        if (left-- <= 0) return false;
        samples[i] = this.sampler.sample(prepared, i);
      }
    }
    return true;
  }

  /** The ranking as it now is: rows that did not change are the very objects of the one before. */
  result(): RankResult {
    const held = this.now();
    const { context, columns, lines, site } = held;
    if (columns.count > SAMPLE_ALL)
      return new ScoredSite(site, { ...this.options, asOf: context.asOf }).result();
    const troubles = troublesOf(context, columns, held.known);
    const order = worstFirst(columns, site.drains, troubles.severe, columns.count);
    const standing = standingsOf(held, this.settled);
    const segments = order.map((row, at) => {
      const line = lines[columns.line[row] as number] as ScoredLine;
      return line.row(context, columns.segment[row] as number, { ...standing(row), rank: at + 1 });
    });
    const trees = treesToDescribe(context, segments).map((i) => this.zonesAt(i));
    return rankResultOf(held, columns, troubles, {
      segments,
      lines: [...expectedByLine(columns, order)].map(([n, sum]) =>
        (lines[n] as ScoredLine).line(context, n, sum),
      ),
      trees,
    });
  }

  private zonesAt(i: number): TreeZones {
    const { context, zones } = this.now();
    const tree = context.field.trees[i] as Tree;
    const found = zones.get(tree) ?? zonesOfTree(context, i);
    (zones as Map<Tree, TreeZones>).set(tree, found);
    return found;
  }
}

/** The lines of now, each the very one of before where it hangs on the same things. */
function linesOf(context: RiskContext, known: KnownByLine, before: Held | null): ScoredLine[] {
  const earlier = new Map(before?.lines.map((line) => [line.basis.model.drain.id, line]));
  return Array.from({ length: context.lines.count }, (_, n) => {
    const basis = basisOf(context, known, n);
    const old = earlier.get(basis.model.drain.id);
    if (old && isSameBasis(old.basis, basis)) return old;
    const own = ownOf(context, basis, n);
    return new ScoredLine({ ...context, own: new Map([[basis.model.drain.id, own]]) }, basis, own);
  });
}

function basisOf(context: RiskContext, known: KnownByLine, n: number): LineBasis {
  const model = context.lines.at(n);
  const [west, south, east, north] = boxOf(model.drain.path);
  const numbers = context.field.index.search(west, south, east, north);
  const trees = numbers.map((number) => context.field.trees[number] as Tree);
  return { model, trees, numbers, findings: known.get(n) ?? [] };
}

const ownOf = (context: RiskContext, { findings }: LineBasis, n: number): readonly Observation[] =>
  findings.length === 0 ? [] : observationsOf(context, new Map([[n, findings]]));

function columnsOf(lines: readonly ScoredLine[]): ScoreColumns {
  const rows = new GrowingColumns();
  lines.forEach(({ basis: { model }, scores }, n) => {
    const issue = flowIssue(model);
    if (issue) rows.issues.push(issue);
    model.segments.forEach(({ fromM, toM }, i) => {
      rows.add(n, i, toM - fromM, scores[i] as ScoredLine['scores'][number]);
    });
  });
  return rows.columns();
}

/** How each row stands: by its draws where it has been sampled, else in closed form. */
function standingsOf(
  { context, columns, lines }: Held,
  settled: boolean,
): (row: number) => Omit<Standing, 'rank'> {
  const samples = settled ? lines.flatMap((line) => line.samples as Float64Array[]) : [];
  const limits = settled && samples.length > 0 ? thresholds(samples) : null;
  const limit = columns.count > 0 && limits === null ? worstTenthFrom(columns) : 0;
  return (row) => {
    const line = lines[columns.line[row] as number] as ScoredLine;
    const i = columns.segment[row] as number;
    const sample = line.samples[i] ?? null;
    if (sample !== null && limits !== null) line.inWorstTenth[i] = shareAbove(sample, limits);
    return {
      chance: line.sampledChance(i) ?? closedFormChance(columns, row),
      interval: sample === null ? 'closed-form' : 'sampled',
      inWorstTenth: line.inWorstTenth[i] ?? line.worstTenth(context, i, limit),
    };
  };
}
