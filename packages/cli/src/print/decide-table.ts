import {
  type Chance,
  type Choice,
  type DecideResult,
  pipeRow,
  type Recurring,
  type Units,
} from '@rootreach/core';
import { shortCautions } from './cautions.js';
import { chanceRange, percent } from './chance.js';
import { count } from './count.js';
import { workAssumptionLines } from './decide-assumptions.js';
import { switchLines } from './decide-switches.js';
import { length, pipeSize, span } from './lengths.js';
import { wholeMoney } from './money.js';
import { datesText, priceNote } from './price-note.js';
import { printable } from './printable.js';
import type { Page } from './rank-table.js';
import { seenWords } from './seen-words.js';
import { siteTitle } from './site-title.js';
import { wrap, wrapPhrases } from './wrap.js';

const INDENT = 4;
const NOTHING = '-';

/** `all 35 ft of it`, `its lowest 9 ft`, `17 to 26 ft up from its lower end`. */
function whereOnLine({ fromM, toM, lengthM, lineLengthM }: DecideResult['target'], units: Units): string {
  if (lengthM > lineLengthM - 0.1) return `all ${length(lengthM, units)} of it`;
  return fromM < 0.05
    ? `its lowest ${length(lengthM, units)}`
    : `${span(fromM, toM, units)} up from its lower end`;
}

/** `old clay tail, all 35 ft: 4 in clay tile; seen full of roots over 17 ft in 2026`. */
function targetLine({ target }: DecideResult, units: Units): string {
  const { drainName, drainId, material, sizeM, known } = target;
  const size = sizeM === null ? 'size not given,' : pipeSize(sizeM, units);
  const name = `${drainName ?? `line ${drainId}`} (${drainId}), ${whereOnLine(target, units)}`;
  if (known === null)
    return `${name}: ${size} ${pipeRow(material).name}; nothing seen in it that was not dealt with.`;
  const { year } = known.trouble;
  const when = year === null ? '' : ` in ${Math.floor(year)}`;
  const over = known.lengthM < 0.3 ? 'at one place' : `over ${length(known.lengthM, units)}`;
  return `${name}: ${size} ${pipeRow(material).name}; seen ${seenWords[known.seen]} ${over}${when}.`;
}

const money = (amount: number | null, { currency }: DecideResult): string =>
  amount === null ? '?' : wholeMoney(amount, currency);

/** The answer in two sentences. */
function answer(result: DecideResult): string[] {
  const named = (id: string | null): Choice | undefined => result.choices.find((choice) => choice.id === id);
  const [first, second] = [named(result.recommended), named(result.runnerUp)];
  if (first === undefined) return ['None of the choices is within the limits and priced.'];
  const over = `over ${count(result.horizonYears, 'year')}`;
  const of = ({ name, now, presentValue }: Choice): string =>
    `${name}: ${money(now, result)} now, ${money(presentValue, result)} ${over}, trouble included.`;
  return [`Cheapest ${over}: ${of(first)}`, ...(second === undefined ? [] : [`Next: ${of(second)}`])];
}

const VISITS: Readonly<Record<Recurring['what'], string>> = {
  'camera-look': 'camera',
  'clear-by-jet': 'jet',
  'clear-by-cutter': 'cut',
};

const visits = ({ recurring }: Choice, result: DecideResult): string[] =>
  recurring.map(
    ({ what, everyYears, each }) =>
      `${VISITS[what]} every ${count(everyYears, 'year')} (${money(each, result)})`,
  );

const BREAKS: Readonly<Record<Choice['breaks'][number], string>> = {
  'most-now': 'over the budget',
  'most-chance-10': 'more chance of trouble than the owner bears',
  'keep-trees': 'the owner keeps the tree',
  'no-trench': 'the owner wants no trench',
  'tree-must-stand': 'within three trunk diameters of a stem',
};

interface Row {
  readonly choice: Choice;
  readonly cells: readonly string[];
}

/** A range whose ends are printed alike is none. */
function chanceText(chance: Chance | undefined): string {
  if (chance === undefined) return NOTHING;
  const { low, likely, high } = chance;
  return percent(low) === percent(high) ? `${percent(likely)} %` : chanceRange(chance);
}

const HEADINGS: readonly string[] = ['choice', 'now', 'over the years', 'trouble in 10', 'in 25'];

function rowOf(choice: Choice, result: DecideResult): Row {
  const { name, now, presentValue, chance } = choice;
  return {
    choice,
    cells: [
      name,
      money(now, result),
      money(presentValue, result),
      chanceText(chance?.['10']),
      chanceText(chance?.['25']),
    ],
  };
}

const aligned = (cells: readonly string[], widths: readonly number[]): string =>
  cells
    .map((cell, i) =>
      i === 1 || i === 2 ? cell.padStart(widths[i] as number) : cell.padEnd(widths[i] as number),
    )
    .join('  ')
    .trimEnd();

function blockOf(
  row: Row,
  widths: readonly number[],
  result: DecideResult,
  { style, width }: Page,
): string[] {
  const { choice } = row;
  const phrases = [
    ...choice.breaks.map((code) => `OUTSIDE THE LIMITS: ${BREAKS[code]}`),
    ...choice.why.split('; '),
    ...visits(choice, result),
    ...(choice.garden === 'none' && choice.tree.effect === 'none' ? [] : choice.effect.split('; ')),
  ].filter((phrase) => phrase !== '');
  const line = aligned(row.cells, widths);
  const head = choice.id === result.recommended ? style.strong(line) : line;
  return [head, ...wrapPhrases(phrases, width - INDENT).map((text) => ' '.repeat(INDENT) + text)];
}

/** Within the limits and cheap first, what breaks them last. */
const inOrder = (choices: readonly Choice[]): Choice[] =>
  [...choices].sort(
    (a, b) =>
      a.breaks.length - b.breaks.length || (a.presentValue ?? Infinity) - (b.presentValue ?? Infinity),
  );

function meaning({ discountRate, horizonYears }: DecideResult): string[] {
  return [
    `over the years: what is paid now and in ${count(horizonYears, 'year')}, stopped lines included, later money at ${Number((100 * discountRate).toFixed(2))} % less a year.`,
    'trouble: chance that roots get in, or that what is known stops the line, and the range it may well lie in.',
  ];
}

/** The choices for a stretch as a contractor reads them. */
export function decideTable(given: DecideResult, page: Page): string {
  const result = printable(given);
  const { units, width, style } = page;
  const rows = inOrder(result.choices.filter(({ possible }) => possible)).map((choice) =>
    rowOf(choice, result),
  );
  const widths = HEADINGS.map((heading, i) =>
    Math.max(heading.length, ...rows.map(({ cells }) => (cells[i] ?? '').length)),
  );
  const not = result.choices.filter(({ possible }) => !possible);
  const changes = switchLines(result);
  const lines = [
    style.strong(wrap(siteTitle(result.site), width)),
    wrap(targetLine(result, units), width),
    wrap(priceNote({ invented: result.prices.invented, dated: datesText(result.prices.dated) }), width),
    ...(result.missing.length === 0 ? [] : [wrap(`No price for: ${result.missing.join(', ')}.`, width)]),
    '',
    ...answer(result).map((sentence, i) =>
      i === 0 ? style.strong(wrap(sentence, width)) : wrap(sentence, width),
    ),
    '',
    style.faint(aligned(HEADINGS, widths)),
    ...rows.flatMap((row) => blockOf(row, widths, result, page)),
    ...(not.length === 0 ? [] : ['', 'Not here:']),
    ...not.map(({ name, why }) => `  ${wrap(`${name}: ${why}`, width - 2, 4)}`),
    ...(changes.length === 0 ? [] : ['', 'What would change the answer, each taken alone:']),
    ...changes.map((line) => `  ${wrap(line, width - 2, 4)}`),
    '',
    'Assumed (change with --assume KEY=N; --json lists all):',
    ...workAssumptionLines(result).map((line) => `  ${wrap(line, width - 2, 4)}`),
    '',
    ...meaning(result).map((sentence) => style.faint(wrap(sentence, width))),
    wrap(shortCautions(result.cautions), width),
  ];
  return `${lines.join('\n')}\n`;
}
