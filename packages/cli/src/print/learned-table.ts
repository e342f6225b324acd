import type { LearnedGroup } from '@rootreach/core';
import { count } from './count.js';
import { groupName } from './group-name.js';
import { groupSentence, isCrush, seenIn, wordRate } from './group-sentence.js';
import type { Page } from './rank-table.js';
import { wrap } from './wrap.js';

/** Fewer expected entries than this, and none seen, teach next to nothing. */
const TELLING = 0.5;

/** Widths of the columns of numbers, with the room before them. */
const SEEN = 8;
const EXPECTED = 11;
const TIMES = 20;

/** Entries first, then breaks; where most was seen stands first. */
const byWeight = (groups: readonly LearnedGroup[]): LearnedGroup[] =>
  [...groups].sort(
    (a, b) =>
      Number(isCrush(a)) - Number(isCrush(b)) || seenIn(b) - seenIn(a) || (a.group < b.group ? -1 : 1),
  );

const times = ({ multiplier: { low, mean, high } }: LearnedGroup): string =>
  `${mean.toFixed(1)} (${low.toFixed(1)} to ${high.toFixed(1)})`;

const seen = ({ entries, someStretches }: LearnedGroup): string =>
  someStretches === 0 ? `${entries}` : `${entries} +${someStretches}`;

const numbers = (a: string, b: string, c: string): string =>
  `${a.padStart(SEEN)}${b.padStart(EXPECTED)}${c.padStart(TIMES)}`;

function groupRow(group: LearnedGroup, nameWidth: number, { style }: Page): string {
  const columns = numbers(seen(group), group.expected.toFixed(1), times(group));
  const [first = '', ...rest] = wrap(groupName(group.group), nameWidth, 2).split('\n');
  const lines = [`${first.padEnd(nameWidth)}${columns}`, ...rest, style.faint(`  ${wordRate(group)}`)];
  return lines.join('\n');
}

/** What the numbers of the table mean. */
function notes(groups: readonly LearnedGroup[], silent: readonly LearnedGroup[]): string[] {
  const [heaviest] = groups;
  const lines: string[] = [];
  if (heaviest !== undefined) {
    lines.push(
      `In words: ${groupName(heaviest.group)}: ${groupSentence(heaviest)}. The true rate should lie in the range in brackets 8 times in 10.`,
    );
  }
  if (groups.some(({ someStretches }) => someStretches > 0)) {
    lines.push('+2: so many more stretches with roots that nobody counted.');
  }
  if (silent.length > 0) {
    const names = silent.map(({ group }) => groupName(group)).join('; ');
    lines.push(`Too little looked at to say anything: ${names}.`);
  }
  return lines;
}

/** Entries seen and expected by kind of opening, and what that makes of the rate. */
export function learnedTable(all: readonly LearnedGroup[], page: Page): string[] {
  const { width, style } = page;
  const telling = (group: LearnedGroup): boolean => seenIn(group) > 0 || group.expected >= TELLING;
  const groups = byWeight(all.filter(telling));
  const silent = byWeight(all.filter((group) => !telling(group)));
  const nameWidth = Math.min(58, width - SEEN - EXPECTED - TIMES);
  return [
    style.strong(`What the cameras say of ${count(all.length, 'kind')} of opening`),
    style.faint(`${'openings'.padEnd(nameWidth)}${numbers('seen', 'expected', 'times our rate')}`),
    ...groups.map((group) => groupRow(group, nameWidth, page)),
    '',
    ...notes(groups, silent).map((line) => wrap(line, width)),
  ];
}
