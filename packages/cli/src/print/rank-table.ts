import type { RankResult, SegmentResult } from '@rootreach/core';
import { shortCautions } from './cautions.js';
import { chanceRange } from './chance.js';
import { count } from './count.js';
import type { Units } from './lengths.js';
import { printable } from './printable.js';
import { changePhrase, doPhrases, whyPhrases } from './segment-phrases.js';
import { shellWord } from './shell-word.js';
import { siteTitle } from './site-title.js';
import type { Style } from './style.js';
import { bandTotals, extent } from './totals.js';
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

/** Stands for a chance where too little is known. */
const NO_ODDS = '?';

const odds = ({ band, chance }: SegmentResult): string =>
  band === 'cannot-say' ? NO_ODDS : chanceRange(chance);

/** Widths of the columns that stand before the place. */
interface Columns {
  readonly band: number;
  readonly chance: number;
}

function columnsFor(segments: readonly SegmentResult[]): Columns {
  const widest = (texts: readonly string[]): number => Math.max(...texts.map((text) => text.length));
  return {
    band: widest(['inspect', ...segments.map(({ band }) => band)]),
    chance: widest(['57 % (23-96)', ...segments.map(odds)]),
  };
}

const headings = ({ band, chance }: Columns): string =>
  `rank  ${'do'.padEnd(band)}  ${'chance'.padEnd(chance)}  where`;

/** The first line of a segment: how bad, how likely, where. */
function headLine(
  segment: SegmentResult,
  where: string,
  before: string,
  { band, chance }: Columns,
  page: Page,
) {
  const { style, width } = page;
  const word = style.band(segment.band, segment.band) + ' '.repeat(band - segment.band.length);
  const likely = style.strong(odds(segment).padEnd(chance));
  const place = wrap(where, width - before.length).replaceAll('\n', `\n${before}`);
  return `${`${segment.rank}`.padStart(4)}  ${word}  ${likely}  ${place}`;
}

/** The id stands at the right edge of the first line that has room for it, else on its own. */
function withId(lines: readonly string[], id: string, room: number, style: Style): string[] {
  const at = lines.findIndex((line) => line.length + 2 + id.length <= room);
  if (at < 0) return [...lines, style.faint(id)];
  return lines.map((line, i) => (i === at ? `${line.padEnd(room - id.length)}${style.faint(id)}` : line));
}

function segmentBlock(segment: SegmentResult, columns: Columns, page: Page): string {
  const before = ' '.repeat(INDENT + columns.band + 2 + columns.chance + 2);
  const room = page.width - INDENT;
  const place = whereOf(segment, page.units);
  const onLine = `on ${lineName(segment)}`;
  // a place too long for its line leaves the line's name to the next one
  const fits = before.length + place.length + 2 + onLine.length <= page.width;
  const why = [...(fits ? [] : [onLine]), ...whyPhrases(segment, page.units)];
  const todo = doPhrases(segment);
  const groups = page.width >= WIDE ? [[...why, ...todo]] : [why, todo];
  const lines = groups.flatMap((phrases) => wrapPhrases(phrases, room));
  return [
    headLine(segment, fits ? `${place}, ${onLine}` : place, before, columns, page),
    ...withId(lines, segment.id, room, page.style).map((line) => ' '.repeat(INDENT) + line),
  ].join('\n');
}

/** What the numbers mean, by the example of the worst segment that has any. */
function meaning({ segments, horizonYears }: RankResult): string[] {
  const sentences: string[] = [];
  const example = segments.find(({ band }) => band !== 'cannot-say');
  if (example !== undefined) {
    sentences.push(
      `${chanceRange(example.chance)}: chance that roots get in within ${count(horizonYears, 'year')}, and the range it may well lie in.`,
    );
  }
  if (example !== undefined && changePhrase(example) !== null) {
    sentences.push(`${changePhrase(example)}: the same with that one thing changed.`);
  }
  if (segments.some(({ known }) => known !== null)) {
    sentences.push('Where trouble was seen: the chance that it stops the line.');
  }
  if (segments.some(({ band }) => band === 'cannot-say'))
    sentences.push(`${NO_ODDS}: too little is known for odds.`);
  return sentences;
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
      `As of ${result.asOf}, looking ${count(result.horizonYears, 'year')} ahead: ${extent(result.totals, page.units)}`,
      width,
    ),
    wrap(`To do: ${bandTotals(result.totals, page.units)}`, width),
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
      : [
          wrap(
            `Why one stands where it does: rootreach explain FILE --segment ${shellWord(worst.id)}`,
            width,
          ),
        ]),
    '',
    ...meaning(result).map((sentence) => style.faint(wrap(sentence, width))),
    wrap(shortCautions(result.cautions), width),
  ];
  return `${parts.join('\n')}\n`;
}
