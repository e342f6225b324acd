import type { LineWater, Units, WaterResult, WaterWarning } from '@rootreach/core';
import { assumptionLines } from './assumptions.js';
import { shortCautions } from './cautions.js';
import { count } from './count.js';
import { length, pipeSize } from './lengths.js';
import { printable } from './printable.js';
import type { Page } from './rank-table.js';
import { siteTitle } from './site-title.js';
import { columnsOf, INDENT, rowOf } from './water-columns.js';
import { sharedGaps, waterNotes } from './water-notes.js';
import { rain, velocity } from './water-numbers.js';
import { wrap, wrapPhrases } from './wrap.js';

/** `west collector: 4 in thin-wall PVC drain pipe, 84 ft, into old clay tail`. */
function titleOf(line: LineWater, nameOf: (id: string) => string, units: Units): string {
  const size = line.sizeM === null ? 'size not given' : pipeSize(line.sizeM, units);
  const into = line.drainsInto === null ? '' : `, into ${nameOf(line.drainsInto)}`;
  return `${nameOf(line.drainId)}: ${size} ${line.materialName}, ${length(line.lengthM, units)}${into}`;
}

const GRAVE: readonly (readonly [WaterWarning, string])[] = [
  ['too-small', 'too small for the rain'],
  ['too-small-with-roots', 'too small with what was seen in it'],
  ['no-fall', 'without a fall'],
  ['not-self-cleansing', 'not self-cleaning'],
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
  const columns = columnsOf(rows, width);
  const pad = ' '.repeat(INDENT);
  const blocks = rows.map((row) => [
    style.strong(wrap(titleOf(row.line, nameOf, units), width, INDENT)),
    columns.of(row),
    ...wrapPhrases(waterNotes(row.line, result, units), width - INDENT).map((line) => pad + line),
  ]);
  const assumed = assumptionLines(result.assumed, units);
  const gaps = sharedGaps(result);
  const lines = [
    ...head(result, page),
    '',
    style.faint(columns.headings),
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
