import type { Band, RankResult, SegmentResult } from '../model/result.js';
import type { Site } from '../model/site.js';
import { judgement } from '../tables/judgement.js';
import { bandOf } from './band.js';
import { cautions } from './cautions.js';
import type { PreparedLine, RankOptions, RiskContext } from './context.js';
import { MODEL_VERSION, modelFingerprint } from './fingerprint.js';
import { chanceOf, lineLogSd, ownLogSdOf, treesLogSd } from './interval.js';
import { type KnownByLine, knownIn } from './known.js';
import { lineResult } from './line-result.js';
import { addLoad, Load } from './load.js';
import { worstFirst } from './order.js';
import { closedFormChance, type ScoreColumns, scoreAll } from './score-all.js';
import { seenContextOf } from './seen-context.js';
import { segmentId, segmentResult, type ZoneCircles, zoneStretches } from './segment-result.js';
import { linePreparer, SAMPLE_ALL, sampleRows } from './spread-of-rows.js';
import { treeZones } from './tree-zones.js';
import { inWorstTenth, worstTenthFrom } from './worst-tenth.js';

/** On a net too large to sample whole, no more reported segments than this are sampled; else in closed form. */
const MOST_SAMPLED = 200;
/** Up to this many trees all are described; beyond, those that bear on a reported segment. */
const MOST_TREES = 5000;
const DEFAULT_SEED = 20_240_229;

/** Rows with trouble that only digging can mend. */
function severeRows(context: RiskContext, columns: ScoreColumns, known: KnownByLine): Set<number> {
  const rows = new Set<number>();
  if (known.size === 0) return rows;
  for (let row = 0; row < columns.count; row++) {
    const number = columns.line[row] as number;
    const findings = known.get(number);
    if (!findings) continue;
    const line = context.lines.at(number);
    const { fromM, toM } = line.segments[columns.segment[row] as number] as { fromM: number; toM: number };
    const trouble = knownIn(line, findings, fromM, toM);
    if (trouble !== null && bandOf(0, trouble, false) === 'act') rows.add(row);
  }
  return rows;
}

/** Chance of being among the worst tenth where the row was not sampled. */
function worstTenthOf(context: RiskContext, prepared: PreparedLine, load: Load, limit: number): number {
  const ofLine = lineLogSd(prepared.line, prepared.clock);
  const ofTrees = treesLogSd(load, prepared.near, context.field);
  return inWorstTenth(load.total, limit, ownLogSdOf(load, Math.hypot(ofLine, ofTrees)));
}

function detail(
  context: RiskContext,
  columns: ScoreColumns,
  order: readonly number[],
  rankOf: ReadonlyMap<number, number>,
  known: KnownByLine,
  seed: number,
): SegmentResult[] {
  const sample = columns.count <= SAMPLE_ALL || order.length <= MOST_SAMPLED;
  const sampled = sample ? sampleRows(context, columns, order, seed) : null;
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
    const { first } = prepared.inputs.openings;
    const load = new Load(context.field.moments, prepared.near.count);
    addLoad(prepared.inputs, first[i] as number, first[i + 1] as number, load);
    const own = sampled?.get(row);
    results.push(
      segmentResult(context, {
        prepared,
        i,
        load,
        rank: rankOf.get(row) as number,
        chance: own?.chance ?? closedFormChance(columns, row),
        interval: own ? 'sampled' : 'closed-form',
        inWorstTenth: own?.inWorstTenth ?? worstTenthOf(context, prepared, load, limit),
        findings: known.get(number) ?? [],
        stretches,
      }),
    );
  }
  return results.sort((a, b) => a.rank - b.rank);
}

const idOf = (context: RiskContext, columns: ScoreColumns, row: number): string =>
  segmentId(context.site.drains[columns.line[row] as number]?.id ?? '', columns.segment[row] as number);

type Tally = Record<Band, { segments: number; lengthM: number }>;

/** Metres by band over all segments; of those reported, as reported; of the rest, by score alone. */
function tally(context: RiskContext, columns: ScoreColumns, reported: ReadonlyMap<number, Band>): Tally {
  const empty = (): { segments: number; lengthM: number } => ({ segments: 0, lengthM: 0 });
  const by: Tally = { leave: empty(), watch: empty(), inspect: empty(), act: empty(), 'cannot-say': empty() };
  const noTrees = context.site.trees.length === 0;
  for (let row = 0; row < columns.count; row++) {
    const score = 100 * chanceOf(columns.expected[row] as number);
    const slot = by[reported.get(row) ?? bandOf(score, null, noTrees)];
    slot.segments++;
    slot.lengthM += columns.lengthM[row] as number;
  }
  return by;
}

/**
 * Scores every segment of a site's drain lines and ranks them, worst first.
 * @throws RangeError for options that make no sense; bad data never throws.
 */
export function rank(site: Site, options: RankOptions): RankResult {
  const { context, known, misplaced } = seenContextOf(site, options);
  const columns = scoreAll(context);
  const severe = severeRows(context, columns, known);
  const { only } = options;
  const most = only === undefined ? (options.top ?? columns.count) : columns.count;
  const all = worstFirst(columns, site.drains, severe, most);
  const rankOf = new Map(all.map((row, i) => [row, i + 1]));
  const order = only === undefined ? all : all.filter((row) => idOf(context, columns, row) === only);
  const segments = detail(context, columns, order, rankOf, known, options.seed ?? DEFAULT_SEED);
  const bands = new Map(order.map((row, i) => [row, (segments[i] as SegmentResult).band]));
  const lines = new Map(order.map((row) => [columns.line[row] as number, 0]));
  columns.line.forEach((line, row) => {
    const sum = lines.get(line);
    if (sum !== undefined) lines.set(line, sum + (columns.expected[row] as number));
  });
  const bearing = new Set(segments.flatMap((s) => s.trees.map((t) => t.id)));
  return {
    schema: 1,
    model: {
      version: MODEL_VERSION,
      fingerprint: modelFingerprint(),
      ...(options.learned ? { learned: options.learned.data.fingerprint } : {}),
    },
    site: { name: site.name, invented: site.invented },
    asOf: options.asOf,
    horizonYears: context.horizon.years,
    segmentM: context.segmentM,
    segments,
    lines: [...lines].sort((a, b) => a[0] - b[0]).map(([i, sum]) => lineResult(context, i, sum)),
    trees: treeZones(context, site.trees.length <= MOST_TREES ? null : bearing),
    totals: {
      drains: context.lines.count,
      trees: site.trees.length,
      segments: columns.count,
      lengthM: columns.lengthM.reduce((sum, m) => sum + m, 0),
      byBand: tally(context, columns, bands),
      expectedEntries: columns.expected.reduce((sum, e) => sum + e, 0),
    },
    issues: [...context.lines.issues, ...columns.issues, ...misplaced],
    cautions,
  };
}

/** Score limits between the bands, for keys and legends. */
export const bandLimits: Readonly<Record<'watch' | 'inspect' | 'act', number>> = judgement.bandLimits.value;
