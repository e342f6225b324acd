import type { LineWater, Units } from '@rootreach/core';
import { flow, flowRange, percent, used, usedRange } from './water-numbers.js';

/** Stands where nothing can be said; never a nought. */
export const UNKNOWN = '?';
const NOTHING = '-';
export const INDENT = 2;

/** One line's cells with their ranges, and in few words for narrow pages. */
export interface Row {
  readonly line: LineWater;
  readonly long: readonly string[];
  readonly short: readonly string[];
}

const HEADINGS = {
  long: ['slope', 'carries', 'rain to carry', 'used', 'cleans itself', 'with roots'],
  short: ['slope', 'carries', 'rain', 'used', 'cleans', 'w. roots'],
} as const;

function cleans({ selfCleansing, selfCleansingIsSure }: LineWater): string {
  if (selfCleansing === null) return UNKNOWN;
  if (selfCleansingIsSure) return selfCleansing ? 'yes' : 'no';
  return selfCleansing ? 'likely' : 'unlikely';
}

const isFoul = ({ unknown }: LineWater): boolean => unknown.some(({ why }) => why === 'foul');
const noRainWord = (line: LineWater): string => (isFoul(line) ? 'foul' : UNKNOWN);

/** Cells of a line. */
export function rowOf(line: LineWater, units: Units): Row {
  const { slope, fullFlowM3s, designFlowM3s, usedShare, withRootsM3s, blockage } = line;
  const more = line.notCounted.lines > 0 ? '+' : '';
  const fall = slope === null ? UNKNOWN : percent(slope);
  const roots = blockage === null ? NOTHING : UNKNOWN;
  const cells = (range: typeof flowRange, share: typeof usedRange): string[] => [
    fall,
    fullFlowM3s === null ? UNKNOWN : range(fullFlowM3s, units),
    designFlowM3s === null ? noRainWord(line) : `${range(designFlowM3s, units)}${more}`,
    usedShare === null ? (isFoul(line) ? NOTHING : UNKNOWN) : `${share(usedShare)}${more}`,
    cleans(line),
    withRootsM3s === null ? roots : range(withRootsM3s, units),
  ];
  return { line, long: cells(flowRange, usedRange), short: cells((r, u) => flow(r.mid, u), used) };
}

type Form = keyof typeof HEADINGS;

const aligned = (cells: readonly string[], widths: readonly number[]): string =>
  `${' '.repeat(INDENT)}${cells.map((cell, i) => cell.padEnd(widths[i] as number)).join('  ')}`.trimEnd();

/** Headings and cells set in columns. */
export interface Columns {
  readonly headings: string;
  readonly of: (row: Row) => string;
}

/** With ranges where they fit, else the middles; roots only where some were seen. */
export function columnsOf(rows: readonly Row[], width: number): Columns {
  const seen = rows.some(({ line }) => line.blockage !== null);
  const kept = (cells: readonly string[]): readonly string[] => (seen ? cells : cells.slice(0, -1));
  const widthsOf = (form: Form): number[] =>
    kept(HEADINGS[form]).map((heading, i) =>
      Math.max(heading.length, ...rows.map((row) => (row[form][i] ?? '').length)),
    );
  const long = widthsOf('long');
  const room = INDENT + long.reduce((sum, w) => sum + w + 2, -2);
  const form: Form = room <= width ? 'long' : 'short';
  const widths = form === 'long' ? long : widthsOf('short');
  return {
    headings: aligned(kept(HEADINGS[form]), widths),
    of: (row) => aligned(kept(row[form]), widths),
  };
}
