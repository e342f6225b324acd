import { prepareLine, type RiskContext } from './context.js';
import { intervalOf, lineLogSd, logSdOf, treesLogSd } from './interval.js';
import { addLoad, Load } from './load.js';

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
}

/** Scores every segment of every line, likely value and closed-form spread, without detail. */
export function scoreAll(context: RiskContext): ScoreColumns {
  const count = context.lines.reduce((sum, line) => sum + line.segments.length, 0);
  const columns: ScoreColumns = {
    count,
    line: new Int32Array(count),
    segment: new Int32Array(count),
    lengthM: new Float64Array(count),
    expected: new Float64Array(count),
    logSd: new Float64Array(count),
  };
  let row = 0;
  context.lines.forEach((line, number) => {
    const prepared = prepareLine(context, line);
    const { first } = prepared.inputs.openings;
    const load = new Load(context.field.moments, prepared.near.number.length);
    const ofLine = lineLogSd(line, prepared.clock);
    line.segments.forEach(({ fromM, toM }, i) => {
      load.clear();
      addLoad(prepared.inputs, first[i] as number, first[i + 1] as number, load);
      columns.line[row] = number;
      columns.segment[row] = i;
      columns.lengthM[row] = toM - fromM;
      columns.expected[row] = load.total;
      columns.logSd[row] = logSdOf(load, Math.hypot(ofLine, treesLogSd(load, prepared.near, context.field)));
      row++;
    });
  });
  return columns;
}

/** Chance of one row with its closed-form interval. */
export const closedFormChance = (columns: ScoreColumns, row: number): ReturnType<typeof intervalOf> =>
  intervalOf(columns.expected[row] as number, columns.logSd[row] as number);
