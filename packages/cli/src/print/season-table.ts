import { type SeasonLook, type SeasonResult, wordLook } from '@rootreach/core';
import { shortCautions } from './cautions.js';
import { percent } from './chance.js';
import { count } from './count.js';
import { printable } from './printable.js';
import type { Page } from './rank-table.js';
import { seenWords } from './seen-words.js';
import { siteTitle } from './site-title.js';
import { wrap, wrapPhrases } from './wrap.js';

const MONTHS = 'January February March April May June July August September October November December'.split(
  ' ',
);
const WEEKDAYS = 'Sunday Monday Tuesday Wednesday Thursday Friday Saturday'.split(' ');

/** `Monday 2027-04-05`. */
const dayWords = (day: string): string => `${WEEKDAYS[new Date(`${day}T00:00:00Z`).getUTCDay()]} ${day}`;

/** `April 2027`. */
function monthWords(month: string): string {
  const [year, number] = month.split('-');
  return `${MONTHS[Number(number) - 1]} ${year}`;
}

/** Looks under the heading that they share, in the order in which they come. */
function grouped(
  looks: readonly SeasonLook[],
  headingOf: (look: SeasonLook) => string,
): [string, SeasonLook[]][] {
  const groups = new Map<string, SeasonLook[]>();
  for (const look of looks) groups.set(headingOf(look), [...(groups.get(headingOf(look)) ?? []), look]);
  return [...groups];
}

function lookLines(look: SeasonLook, { units, width }: Page): string[] {
  const line = look.drainName ?? `line ${look.drainId}`;
  const odds =
    look.seen === null ? `${percent(look.chance)} %` : `SEEN ${seenWords[look.seen]}, not dealt with`;
  const late =
    !look.overdue && look.day !== null && look.day.slice(0, 7) > look.due
      ? [`late: due in ${monthWords(look.due)}`]
      : [];
  const phrases = [`${line}: ${wordLook(look, units)}`, odds, ...late];
  return wrapPhrases(phrases, width - 6).map((text, i) => `${' '.repeat(i === 0 ? 4 : 6)}${text}`);
}

const whenOf = (look: SeasonLook, withDays: boolean): string => {
  if (look.day !== null) return dayWords(look.day);
  if (withDays) return 'No day left';
  return look.overdue ? 'Due already' : `Due in ${monthWords(look.due)}`;
};

/** The season's looks by day, site and way in. */
export function seasonTable(given: SeasonResult, page: Page): string {
  const result = printable(given);
  const { style, width } = page;
  const { looks, until, horizonYears } = result;
  const withDays = looks.some(({ day }) => day !== null);
  const sites = new Set(looks.map(({ site }) => site)).size;
  const ordered = [...looks].sort((a, b) =>
    withDays ? (a.day ?? '9').localeCompare(b.day ?? '9') : a.due.localeCompare(b.due),
  );
  const body = grouped(ordered, (look) => whenOf(look, withDays)).flatMap(([when, own]) => [
    style.strong(when),
    ...grouped(own, ({ site }) => site).flatMap(([site, there]) => [
      `  ${siteTitle({ name: site, invented: /^invented:/i.test(site) })}`,
      ...there.flatMap((look) => lookLines(look, page)),
    ]),
  ]);
  const head =
    looks.length === 0
      ? `No look falls due up to ${monthWords(until)}.`
      : `${count(looks.length, 'push', 'pushes')} of the camera on ${count(sites, 'site')}, due up to ${monthWords(until)}.`;
  const left =
    result.unplaced > 0
      ? [
          wrap(
            `${count(result.unplaced, 'push', 'pushes')} found no room: give more --days or more --looks-a-day.`,
            width,
          ),
        ]
      : [];
  const lines = [
    style.strong(head),
    ...left,
    '',
    ...body,
    '',
    style.faint(
      wrap(`Percent: chance of roots at the likeliest place within ${count(horizonYears, 'year')}.`, width),
    ),
    wrap(shortCautions(result.cautions), width),
  ];
  return `${lines.join('\n')}\n`;
}
