import type { RankResult, SegmentResult } from '@rootreach/core';
import { shortCautions } from './cautions.js';
import { chanceRange } from './chance.js';
import { count } from './count.js';
import type { Units } from './lengths.js';
import { printable } from './printable.js';
import { doPhrases, whyPhrases } from './segment-phrases.js';
import { siteTitle } from './site-title.js';
import type { Style } from './style.js';
import { totalsLine } from './totals.js';
import { lineName, whereOf } from './where.js';
import { wrap, wrapPhrases } from './wrap.js';

export interface Page {
  readonly units: Units;
  readonly width: number;
  readonly style: Style;
}

/** From this width on the reasons and the advice share a line. */
const WIDE = 120;
const INDENT = 6;
const BAND_WIDTH = 'cannot-say'.length;
const CHANCE_WIDTH = '>99 % (>99->99)'.length;

/** The first line of a segment: its columns, and its id at the right edge where there is room. */
function headLine(segment: SegmentResult, { units, width, style }: Page): string {
  const rank = `${segment.rank}`.padStart(4);
  const chance = chanceRange(segment.chance).padEnd(CHANCE_WIDTH);
  const word = segment.band.padEnd(BAND_WIDTH);
  const left = `${rank}  ${word}  ${chance}  `;
  const where = `${whereOf(segment, units)}, on ${lineName(segment)}`;
  const fits = left.length + where.length + 2 + segment.id.length <= width;
  const room = width - left.length - (fits ? segment.id.length + 2 : 0);
  const [first = '', ...more] = wrap(where, room).split('\n');
  const right = fits ? `  ${' '.repeat(Math.max(0, room - first.length))}${style.faint(segment.id)}` : '';
  const bands = style.band(segment.band, segment.band) + ' '.repeat(BAND_WIDTH - segment.band.length);
  const lines = [`${rank}  ${bands}  ${style.strong(chance)}  ${first}${right}`];
  lines.push(...more.map((line) => `${' '.repeat(left.length)}${line}`));
  if (!fits) lines.push(`${' '.repeat(left.length)}${style.faint(segment.id)}`);
  return lines.join('\n');
}

function segmentBlock(segment: SegmentResult, page: Page): string {
  const why = whyPhrases(segment, page.units);
  const todo = doPhrases(segment);
  const room = page.width - INDENT;
  const groups = page.width >= WIDE ? [[...why, ...todo]] : [why, todo];
  const lines = groups.flatMap((phrases) => wrapPhrases(phrases, room));
  return [headLine(segment, page), ...lines.map((line) => `${' '.repeat(INDENT)}${line}`)].join('\n');
}

function meaning(result: RankResult): string {
  const parts = [
    `57 % (23-96): the chance that roots get in within ${result.horizonYears} years, and the range it may well lie in.`,
    "A tree's %: its part in that chance. 57 -> 19 %: the chance with that one thing changed.",
  ];
  if (result.segments.some(({ known }) => known !== null)) {
    parts.push('Where trouble was seen: the chance that it stops the line.');
  }
  return parts.join(' ');
}

/** The ranking as a crew reads it in a terminal or on paper. */
export function rankTable(given: RankResult, page: Page): string {
  const result = printable(given);
  const { width, style } = page;
  const columns = `${'rank'.padStart(4)}  ${'do'.padEnd(BAND_WIDTH)}  ${'chance'.padEnd(CHANCE_WIDTH)}  where`;
  const more = result.totals.segments - result.segments.length;
  const worst = result.segments[0];
  const parts = [
    style.strong(wrap(siteTitle(result.site), width)),
    wrap(
      `As of ${result.asOf}, looking ${count(result.horizonYears, 'year')} ahead. ${totalsLine(result.totals, page.units)}`,
      width,
    ),
    '',
    style.faint(columns),
    ...result.segments.map((segment) => segmentBlock(segment, page)),
    '',
    ...(more > 0
      ? [
          wrap(
            `${count(more, 'more segment')} below these: --top ${result.totals.segments} lists all.`,
            width,
          ),
        ]
      : []),
    ...(worst === undefined
      ? []
      : [wrap(`Why one stands where it does: rootreach explain FILE --segment ${worst.id}`, width)]),
    '',
    style.faint(wrap(meaning(result), width)),
    wrap(shortCautions(result.cautions), width),
  ];
  return `${parts.join('\n')}\n`;
}
