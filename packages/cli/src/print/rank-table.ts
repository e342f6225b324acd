import type { RankResult, SegmentResult } from '@rootreach/core';
import { shortCautions } from './cautions.js';
import { chanceRange, fall } from './chance.js';
import { count } from './count.js';
import type { Units } from './lengths.js';
import { printable } from './printable.js';
import { bestChange, doPhrases, whyPhrases } from './segment-phrases.js';
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

/** Widths of the columns that stand before the place. */
interface Columns {
  readonly band: number;
  readonly chance: number;
}

function columnsFor(segments: readonly SegmentResult[]): Columns {
  const widest = (texts: readonly string[]): number => Math.max(...texts.map((text) => text.length));
  return {
    band: widest(['inspect', ...segments.map(({ band }) => band)]),
    chance: widest(['57 % (23-96)', ...segments.map(({ chance }) => chanceRange(chance))]),
  };
}

const headings = ({ band, chance }: Columns): string =>
  `rank  ${'do'.padEnd(band)}  ${'chance'.padEnd(chance)}  where`;

/** The first line of a segment: how bad, how likely, where. */
function headLine(segment: SegmentResult, { band, chance }: Columns, { units, width, style }: Page): string {
  const before = INDENT + band + 2 + chance + 2;
  const where = wrap(`${whereOf(segment, units)}, on ${lineName(segment)}`, width - before);
  const word = style.band(segment.band, segment.band) + ' '.repeat(band - segment.band.length);
  const odds = style.strong(chanceRange(segment.chance).padEnd(chance));
  return `${`${segment.rank}`.padStart(4)}  ${word}  ${odds}  ${where.replaceAll('\n', `\n${' '.repeat(before)}`)}`;
}

/** The id stands at the right edge of the first line that has room for it, else on its own. */
function withId(lines: readonly string[], id: string, room: number, style: Style): string[] {
  const at = lines.findIndex((line) => line.length + 2 + id.length <= room);
  if (at < 0) return [...lines, style.faint(id)];
  return lines.map((line, i) => (i === at ? `${line.padEnd(room - id.length)}${style.faint(id)}` : line));
}

function segmentBlock(segment: SegmentResult, columns: Columns, page: Page): string {
  const why = whyPhrases(segment, page.units);
  const todo = doPhrases(segment);
  const room = page.width - INDENT;
  const groups = page.width >= WIDE ? [[...why, ...todo]] : [why, todo];
  const lines = withId(
    groups.flatMap((phrases) => wrapPhrases(phrases, room)),
    segment.id,
    room,
    page.style,
  );
  return [headLine(segment, columns, page), ...lines.map((line) => ' '.repeat(INDENT) + line)].join('\n');
}

/** What the numbers mean, by the example of the worst segment. */
function meaning({ segments, horizonYears }: RankResult): string {
  const [worst] = segments;
  if (worst === undefined) return '';
  const change = bestChange(worst);
  const parts = [
    `${chanceRange(worst.chance)}: the chance that roots get in within ${count(horizonYears, 'year')}, and the range it may well lie in.`,
  ];
  if (change !== undefined) {
    parts.push(`${fall(worst.score, change.scoreWithout)}: the chance with that one thing changed.`);
  }
  if (segments.some(({ known }) => known !== null)) {
    parts.push('Where trouble was seen it is the chance that it stops the line.');
  }
  return parts.join(' ');
}

/** The ranking as a crew reads it in a terminal or on paper. */
export function rankTable(given: RankResult, page: Page): string {
  const result = printable(given);
  const { width, style } = page;
  const columns = columnsFor(result.segments);
  const more = result.totals.segments - result.segments.length;
  const worst = result.segments[0];
  const parts = [
    style.strong(wrap(siteTitle(result.site), width)),
    wrap(
      `As of ${result.asOf}, looking ${count(result.horizonYears, 'year')} ahead. ${totalsLine(result.totals, page.units)}`,
      width,
    ),
    '',
    style.faint(headings(columns)),
    ...result.segments.map((segment) => segmentBlock(segment, columns, page)),
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
