import type { RankResult, SegmentResult, Units } from '@rootreach/core';
import { shortCautions } from './cautions.js';
import { chanceRange } from './chance.js';
import { count } from './count.js';
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

/** No odds either where something was seen that no tree of the file explains. */
const odds = ({ band, chance, known, trees }: SegmentResult): string =>
  band === 'cannot-say' || (known !== null && trees.length === 0) ? NO_ODDS : chanceRange(chance);

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
    sentences.push(`${changePhrase(example)} means: so far the chance would fall with that one thing done.`);
  }
  if (segments.some(({ known }) => known !== null)) {
    sentences.push('Where trouble was seen: the chance that it stops the line.');
  }
  if (segments.some(({ band }) => band === 'cannot-say'))
    sentences.push(`${NO_ODDS}: too little is known for odds.`);
  return sentences;
}

/** What stands above the list: the site, how much there is, how much of it to do something about. */
function head(
  { site, asOf, horizonYears, totals, model }: RankResult,
  { units, width, style }: Page,
): string[] {
  const when = `As of ${asOf}, looking ${count(horizonYears, 'year')} ahead`;
  return [
    style.strong(wrap(siteTitle(site), width)),
    wrap(`${when}: ${extent(totals, units)}`, width),
    ...(model.learned === undefined ? [] : [`Rates as learned from findings (model ${model.learned}).`]),
    wrap(`To do: ${bandTotals(totals, units)}`, width),
  ];
}

/** What stands below: how to see more, what the numbers mean, what to mind. */
function foot(result: RankResult, { width, style }: Page): string[] {
  const { segments, totals, cautions } = result;
  const lines: string[] = [];
  const more = totals.segments - segments.length;
  if (more > 0) lines.push(`${count(more, 'more segment')} below these: --top ${totals.segments} lists all.`);
  const [worst] = segments;
  if (worst !== undefined) {
    lines.push(`Why one stands where it does: rootreach explain FILE --segment ${shellWord(worst.id)}`, '');
  }
  return [
    ...lines.map((line) => wrap(line, width)),
    ...meaning(result).map((sentence) => style.faint(wrap(sentence, width))),
    wrap(shortCautions(cautions), width),
  ];
}

/** The ranking as a crew reads it in a terminal or on paper. */
export function rankTable(given: RankResult, page: Page): string {
  const result = printable(given);
  const columns = columnsFor(result.segments);
  const lines = [
    ...head(result, page),
    '',
    page.style.faint(headings(columns)),
    ...result.segments.map((segment) => segmentBlock(segment, columns, page)),
    '',
    ...foot(result, page),
  ];
  return `${lines.join('\n')}\n`;
}
