import {
  type LineWater,
  type WaterGap,
  type WaterResult,
  type WaterWarning,
  wordWaterGap,
  wordWaterWarning,
} from '@rootreach/core';
import { assumptionLines } from './assumptions.js';
import { shortCautions } from './cautions.js';
import { count } from './count.js';
import { depth, length, pipeSize, span, type Units } from './lengths.js';
import { printable } from './printable.js';
import type { Page } from './rank-table.js';
import { siteTitle } from './site-title.js';
import {
  flow,
  flowRange,
  percent,
  rain,
  slopeRange,
  used,
  usedRange,
  velocity,
  velocityRange,
} from './water-numbers.js';
import { wrap, wrapPhrases } from './wrap.js';

/** Stands where nothing can be said; never a nought. */
const UNKNOWN = '?';
const NOTHING = '-';
const INDENT = 2;

/** One line's cells with their ranges, and in few words for narrow pages. */
interface Row {
  readonly line: LineWater;
  readonly long: readonly string[];
  readonly short: readonly string[];
}

const HEADINGS = ['slope', 'carries', 'rain to carry', 'used', 'cleans itself', 'with roots'];

function cleans({ selfCleansing, selfCleansingIsSure }: LineWater): string {
  if (selfCleansing === null) return UNKNOWN;
  if (selfCleansingIsSure) return selfCleansing ? 'yes' : 'no';
  return selfCleansing ? 'likely' : 'unlikely';
}

const isFoul = ({ unknown }: LineWater): boolean => unknown.some(({ why }) => why === 'foul');
const noRainWord = (line: LineWater): string => (isFoul(line) ? 'foul' : UNKNOWN);

function rowOf(line: LineWater, units: Units): Row {
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

/** Columns to print: those of the ranges where they fit, else of the middles; roots only where some were seen. */
function columnsOf(
  rows: readonly Row[],
  width: number,
): { cells: (row: Row) => readonly string[]; widths: number[] } {
  const seen = rows.some(({ line }) => line.blockage !== null);
  const kept = (cells: readonly string[]): readonly string[] => (seen ? cells : cells.slice(0, -1));
  const widthsOf = (form: 'long' | 'short'): number[] =>
    kept(HEADINGS).map((heading, i) =>
      Math.max(heading.length, ...rows.map((row) => (row[form][i] ?? '').length)),
    );
  const roomFor = (widths: readonly number[]): number => INDENT + widths.reduce((sum, w) => sum + w + 2, -2);
  const long = widthsOf('long');
  return roomFor(long) <= width
    ? { cells: (row) => kept(row.long), widths: long }
    : { cells: (row) => kept(row.short), widths: widthsOf('short') };
}

const aligned = (cells: readonly string[], widths: readonly number[]): string =>
  `${' '.repeat(INDENT)}${cells.map((cell, i) => cell.padEnd(widths[i] as number)).join('  ')}`.trimEnd();

/** `west collector: 4 in thin-wall PVC drain pipe, 84 ft, into old clay tail`. */
function titleOf(line: LineWater, nameOf: (id: string) => string, units: Units): string {
  const size = line.sizeM === null ? 'size not given' : pipeSize(line.sizeM, units);
  const into = line.drainsInto === null ? '' : `, into ${nameOf(line.drainsInto)}`;
  return `${nameOf(line.drainId)}: ${size} ${line.materialName}, ${length(line.lengthM, units)}${into}`;
}

/** Gaps told once for the whole list, or by another word in the row. */
const TOLD_ELSEWHERE: readonly WaterGap[] = ['rain-not-given', 'nothing-seen', 'no-fall', 'foul'];

/** Gaps that many lines share, and what to do about them. */
const SHARED: Readonly<Partial<Record<WaterGap, string>>> = {
  'size-not-given': 'look at an end or a fitting',
  'depths-not-given': 'measure down at both ends, or give --slope PERCENT',
  'levels-not-given': 'take spot levels there, or give --slope PERCENT',
  'one-level-for-both-ends': 'take one at each end, or give --slope PERCENT',
  'area-not-given': 'measure the roof and paving that run to it (serves_ft2 or serves_m2)',
};

const isShared = (why: WaterGap): boolean => SHARED[why] !== undefined;

/** `4 lines: no ground level near both ends: take spot levels there, ...`. */
function sharedGaps({ lines }: WaterResult): string[] {
  return Object.entries(SHARED).flatMap(([gap, todo]) => {
    const why = gap as WaterGap;
    const many = lines.filter(({ unknown }) => unknown.some((each) => each.why === why)).length;
    return many === 0 ? [] : [`${count(many, 'line')}: ${wordWaterGap(why)}; ${todo}`];
  });
}

function numbersOf(line: LineWater, result: WaterResult, units: Units) {
  const { fullVelocityMs, selfCleansingSlope, blockage, withRootsM3s } = line;
  return {
    cleansing: velocity(result.selfCleansingMs, units),
    velocity: fullVelocityMs === null ? UNKNOWN : velocityRange(fullVelocityMs, units),
    slopeNeeded: selfCleansingSlope === null ? UNKNOWN : slopeRange(selfCleansingSlope),
    headLoss: blockage?.headLossM == null ? UNKNOWN : depth(blockage.headLossM, units),
    withRoots: withRootsM3s === null ? UNKNOWN : flow(withRootsM3s.mid, units),
  };
}

function seenWords({ blockage }: LineWater, units: Units): string[] {
  if (blockage === null) return [];
  const { seen, share, shareFrom, fromM, toM, year } = blockage;
  const where = fromM === toM ? length(fromM, units) : span(fromM, toM, units);
  const when = year === null ? '' : ` in ${Math.floor(year)}`;
  const how = shareFrom === 'given' ? 'by the log' : 'as is usual';
  return [`seen${when}: ${seen} ${where} up from its outlet end, ${percent(share)} of the bore lost ${how}`];
}

/** What stands below a line's numbers. */
function notes(line: LineWater, result: WaterResult, units: Units): string[] {
  const gaps = line.unknown.filter(({ why }) => !TOLD_ELSEWHERE.includes(why) && !isShared(why));
  const numbers = numbersOf(line, result, units);
  return [
    ...seenWords(line, units),
    ...line.warnings.map((warning) => wordWaterWarning(warning, numbers)),
    ...new Set(gaps.map(({ why }) => wordWaterGap(why))),
  ];
}

const GRAVE: readonly (readonly [WaterWarning, string])[] = [
  ['too-small', 'too small for the rain'],
  ['too-small-with-roots', 'too small with what was seen in it'],
  ['no-fall', 'without a fall'],
  ['not-self-cleansing', 'not cleaning itself'],
];

/** How many lines have what wrong with them. */
function summary({ lines }: WaterResult): string {
  const many = (code: WaterWarning): number => lines.filter(({ warnings }) => warnings.includes(code)).length;
  const bad = GRAVE.filter(([code]) => many(code) > 0).map(([code, words]) => `${many(code)} ${words}`);
  const blind = lines.filter(
    ({ fullFlowM3s, warnings }) => fullFlowM3s === null && !warnings.includes('no-fall'),
  );
  const parts = [...bad, ...(blind.length > 0 ? [`${blind.length} whose size or fall is not known`] : [])];
  return `${count(lines.length, 'line')}${parts.length > 0 ? `: ${parts.join(', ')}` : ''}.`;
}

function head(result: WaterResult, { units, width, style }: Page): string[] {
  const {
    rain: { mmPerHour, from, lookUp },
    runoff,
    site,
  } = result;
  const percentOf = (value: number): string => `${Math.round(100 * value)}`;
  const runsOff = `${percentOf(runoff.mid)} % (${percentOf(runoff.low)}-${percentOf(runoff.high)}) runs off, as from ${runoff.name}`;
  const what =
    mmPerHour === null
      ? `${lookUp} Then: --rain-${units === 'us' ? 'in' : 'mm'}-h N.`
      : `Rain to carry: ${rain(mmPerHour, units)}${from === 'site' ? ', as the site file says' : ''}; ${runsOff}.`;
  return [style.strong(wrap(siteTitle(site), width)), wrap(what, width), wrap(summary(result), width)];
}

function meaning(result: WaterResult, { units }: Page): string[] {
  const { lines } = result;
  const uncounted = [...new Set(lines.flatMap(({ notCounted }) => notCounted.examples))];
  return [
    ...(lines.some(({ fullFlowM3s }) => fullFlowM3s !== null)
      ? [
          `Carries: full pipe by Manning's formula; in brackets for the roughest and the smoothest that sources give for such a pipe.`,
        ]
      : []),
    `Cleans itself: ${velocity(result.selfCleansingMs, units)} in the full pipe.`,
    ...(lines.some(({ designFlowM3s, notCounted }) => designFlowM3s !== null && notCounted.lines > 0)
      ? [
          `+: at least; water also comes from lines whose area is not given (${uncounted.slice(0, 3).join(', ')}).`,
        ]
      : []),
    ...(lines.some(({ blockage }) => blockage !== null)
      ? [
          'With roots: an estimate for the worst place known, as if it were lined evenly; what catches there adds to it.',
        ]
      : []),
  ];
}

/** What each line carries and has to carry, as a crew reads it. */
export function waterTable(given: WaterResult, page: Page): string {
  const result = printable(given);
  const { units, width, style } = page;
  const names = new Map(result.lines.map(({ drainId, name }) => [drainId, name ?? drainId]));
  const nameOf = (id: string): string => names.get(id) ?? id;
  const rows = result.lines.map((line) => rowOf(line, units));
  const { cells, widths } = columnsOf(rows, width);
  const pad = ' '.repeat(INDENT);
  const blocks = rows.map((row) => [
    style.strong(wrap(titleOf(row.line, nameOf, units), width, INDENT)),
    aligned(cells(row), widths),
    ...wrapPhrases(notes(row.line, result, units), width - INDENT).map((line) => pad + line),
  ]);
  const assumed = assumptionLines(result.assumed, units);
  const gaps = sharedGaps(result);
  const lines = [
    ...head(result, page),
    '',
    style.faint(aligned(HEADINGS.slice(0, widths.length), widths)),
    ...blocks.flat(),
    '',
    ...(gaps.length === 0 ? [] : ['Not known (?):']),
    ...gaps.map((line) => `${pad}${wrap(line, width - INDENT, 4)}`),
    ...(assumed.length === 0 ? [] : ['Assumed, since it was not given:']),
    ...assumed.map((line) => `${pad}${wrap(line, width - INDENT, 4)}`),
    ...meaning(result, page).map((sentence) => style.faint(wrap(sentence, width))),
    wrap(shortCautions(result.cautions), width),
  ];
  return `${lines.join('\n')}\n`;
}
