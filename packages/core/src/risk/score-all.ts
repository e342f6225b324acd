import { flowIssue } from '../line/line-model.js';
import type { Issue } from '../model/issue.js';
import { lineScratch, type PreparedLine, prepareLine, type RiskContext } from './context.js';
import { intervalOf, lineLogSd, logSdOf, treesLogSd } from './interval.js';
import { addLoad, Load } from './load.js';
import { tooLittleKnown } from './too-little-known.js';

/** Every segment of a site, as columns. */
export interface ScoreColumns {
  readonly count: number;
  /** Number of the line of each segment, and of the segment in its line. */
  readonly line: Int32Array;
  readonly segment: Int32Array;
  readonly lengthM: Float64Array;
  /** Likely expected entries over the horizon. */
  readonly expected: Float64Array;
  /** Standard deviation of their logarithm, closed form. */
  readonly logSd: Float64Array;
  /** 1 where too little is known for the score to be given as one. */
  readonly unsaid: Uint8Array;
  /** Found while the lines were laid out. */
  readonly issues: readonly Issue[];
}

/** Columns that grow by doubling: how many segments there are is known only at the end. */
export class GrowingColumns {
  private room = 1024;
  count = 0;
  line = new Int32Array(this.room);
  segment = new Int32Array(this.room);
  lengthM = new Float64Array(this.room);
  expected = new Float64Array(this.room);
  logSd = new Float64Array(this.room);
  unsaid = new Uint8Array(this.room);
  readonly issues: Issue[] = [];

  add(
    line: number,
    segment: number,
    lengthM: number,
    { expected, logSd, unsaid }: { expected: number; logSd: number; unsaid: boolean },
  ): void {
    if (this.count === this.room) this.grow();
    const row = this.count++;
    this.line[row] = line;
    this.segment[row] = segment;
    this.lengthM[row] = lengthM;
    this.expected[row] = expected;
    this.logSd[row] = logSd;
    this.unsaid[row] = unsaid ? 1 : 0;
  }

  private grow(): void {
    this.room *= 2;
    const wider = <T extends Int32Array | Float64Array | Uint8Array>(column: T, empty: T): T => {
      empty.set(column);
      return empty;
    };
    this.line = wider(this.line, new Int32Array(this.room));
    this.segment = wider(this.segment, new Int32Array(this.room));
    this.lengthM = wider(this.lengthM, new Float64Array(this.room));
    this.expected = wider(this.expected, new Float64Array(this.room));
    this.logSd = wider(this.logSd, new Float64Array(this.room));
    this.unsaid = wider(this.unsaid, new Uint8Array(this.room));
  }

  columns(): ScoreColumns {
    return {
      count: this.count,
      line: this.line.subarray(0, this.count),
      segment: this.segment.subarray(0, this.count),
      lengthM: this.lengthM.subarray(0, this.count),
      expected: this.expected.subarray(0, this.count),
      logSd: this.logSd.subarray(0, this.count),
      unsaid: this.unsaid.subarray(0, this.count),
      issues: this.issues,
    };
  }
}

/** What the columns hold of one segment, from its load. */
export function scoreOfLoad(
  context: RiskContext,
  prepared: PreparedLine,
  load: Load,
): { expected: number; logSd: number; unsaid: boolean } {
  const ofLine = lineLogSd(prepared.line, prepared.clock);
  const extra = Math.hypot(ofLine, treesLogSd(load, prepared.near, context.field));
  return {
    expected: load.total,
    logSd: logSdOf(load, extra, prepared.scale),
    unsaid: tooLittleKnown(context, prepared, load),
  };
}

/** Looks at each segment as it is scored; the load is used again for the next one. */
type Watcher = (prepared: PreparedLine, load: Load) => void;

/** Scores every segment of the lines from one number up to another, likely value and closed-form spread, without detail. */
export function scoreLines(context: RiskContext, from: number, to: number, watch?: Watcher): ScoreColumns {
  const rows = new GrowingColumns();
  const scratch = lineScratch();
  const load = new Load(context.field.moments, 0);
  for (let number = from; number < to; number++) {
    const line = context.lines.at(number);
    const issue = flowIssue(line);
    if (issue) rows.issues.push(issue);
    const prepared = prepareLine(context, line, scratch);
    const { first } = prepared.inputs.openings;
    line.segments.forEach(({ fromM, toM }, i) => {
      load.clear(prepared.near.count);
      addLoad(prepared.inputs, first[i] as number, first[i + 1] as number, load);
      rows.add(number, i, toM - fromM, scoreOfLoad(context, prepared, load));
      watch?.(prepared, load);
    });
  }
  return rows.columns();
}

/** Scores every segment of every line. */
export const scoreAll = (context: RiskContext): ScoreColumns => scoreLines(context, 0, context.lines.count);

/**
 * Chance of one row with its closed-form interval.
 * @param columns of a scored site.
 * @param row number of a segment in them.
 */
export const closedFormChance = (columns: ScoreColumns, row: number): ReturnType<typeof intervalOf> =>
  intervalOf(columns.expected[row] as number, columns.logSd[row] as number);
