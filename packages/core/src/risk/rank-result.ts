import type { Band, LineResult, RankResult, SegmentResult, TreeZones } from '../model/result.js';
import { bandOf } from './band.js';
import { rankCautions } from './cautions.js';
import { MODEL_VERSION, modelFingerprint } from './fingerprint.js';
import { chanceOf } from './interval.js';
import type { ScoreColumns } from './score-all.js';
import type { SeenContext } from './seen-context.js';
import type { Troubles } from './troubles.js';

/** Band of a row, whether it is reported or not. */
export function bandOfRow(columns: ScoreColumns, troubles: Troubles, row: number): Band {
  const score = 100 * chanceOf(columns.expected[row] as number);
  return bandOf(score, troubles.byRow.get(row) ?? null, columns.unsaid[row] === 1);
}

type Tally = Record<Band, { segments: number; lengthM: number }>;

/** Metres by band over all segments. */
function tally(columns: ScoreColumns, troubles: Troubles): Tally {
  const empty = (): { segments: number; lengthM: number } => ({ segments: 0, lengthM: 0 });
  const by: Tally = { leave: empty(), watch: empty(), inspect: empty(), act: empty(), 'cannot-say': empty() };
  for (let row = 0; row < columns.count; row++) {
    const slot = by[bandOfRow(columns, troubles, row)];
    slot.segments++;
    slot.lengthM += columns.lengthM[row] as number;
  }
  return by;
}

/** The parts of a ranking that are worked out row by row, line by line and tree by tree. */
export interface RankedParts {
  /** Worst first. */
  readonly segments: readonly SegmentResult[];
  readonly lines: readonly LineResult[];
  readonly trees: readonly TreeZones[];
}

/** Puts a ranking together: the parts, the sums over all rows, and what was found wrong. */
export function rankResultOf(
  { context, misplaced }: Pick<SeenContext, 'context' | 'misplaced'>,
  columns: ScoreColumns,
  troubles: Troubles,
  parts: RankedParts,
): RankResult {
  const { site, learned } = context;
  return {
    schema: 1,
    model: {
      version: MODEL_VERSION,
      fingerprint: modelFingerprint(),
      ...(learned ? { learned: learned.data.fingerprint } : {}),
    },
    site: { name: site.name, invented: site.invented },
    asOf: context.asOf,
    horizonYears: context.horizon.years,
    segmentM: context.segmentM,
    ...parts,
    totals: {
      drains: context.lines.count,
      trees: site.trees.length,
      segments: columns.count,
      lengthM: columns.lengthM.reduce((sum, m) => sum + m, 0),
      byBand: tally(columns, troubles),
      expectedEntries: columns.expected.reduce((sum, e) => sum + e, 0),
    },
    issues: [...context.lines.issues, ...columns.issues, ...misplaced],
    cautions: rankCautions,
  };
}

/** Entries expected in each of the lines that have a row among these, by line number. */
export function expectedByLine(columns: ScoreColumns, rows: readonly number[]): Map<number, number> {
  const lines = new Map(rows.map((row) => [columns.line[row] as number, 0]));
  columns.line.forEach((line, row) => {
    const sum = lines.get(line);
    if (sum !== undefined) lines.set(line, sum + (columns.expected[row] as number));
  });
  return new Map([...lines].sort((a, b) => a[0] - b[0]));
}
