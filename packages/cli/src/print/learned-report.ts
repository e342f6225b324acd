import type { Finding } from '@rootreach/core';
import type { Learning } from '../learning.js';
import { backtestTable } from './backtest-table.js';
import { calibrationTable } from './calibration-table.js';
import { count } from './count.js';
import { learnedTable } from './learned-table.js';
import type { Page } from './rank-table.js';
import { shellWord } from './shell-word.js';
import { wrap } from './wrap.js';

const saysNothing = ({ seen, year }: Finding): boolean =>
  year === null || seen === 'sag' || seen === 'offset';

/** How much was learned from, and what of it had to be passed over. */
function extent({ sites, findings, model, issues }: Learning): string {
  const invented = sites.filter((site) => site.invented).length;
  const mark =
    invented === 0 ? '' : invented === sites.length ? ' (INVENTED EXAMPLES)' : `, ${invented} invented`;
  const silent = findings.filter(saysNothing).length;
  const misplaced = issues.filter(({ code }) => code === 'finding-misplaced').length;
  const passedOver = [
    ...(silent === 0 ? [] : [`${silent} that say nothing of entry (sags, offsets, no date)`]),
    ...(misplaced === 0 ? [] : [`${misplaced} that could not be placed`]),
  ];
  const but = passedOver.length === 0 ? '' : `; passed over: ${passedOver.join(', ')}`;
  return `Learned from ${count(sites.length, 'site')}${mark}: ${count(model.data.lines, 'line')}, ${count(findings.length, 'finding')}${but}.`;
}

const TOO_LITTLE = 'Too little to try it out on: that needs roots found on at least two sites.';

/** What was learned, how well it stands up, and how to use it. */
export function learnedReport(learning: Learning, out: string | undefined, page: Page): string {
  const { model, bySite, byTime, sites } = learning;
  const use =
    out === undefined
      ? 'Keep it with --out MODEL.json; then: rootreach rank FILE --model MODEL.json'
      : `Use it: rootreach rank FILE --model ${shellWord(out)}`;
  const lines = [
    page.style.strong(wrap(extent(learning), page.width)),
    '',
    ...learnedTable(model.groups, page),
    '',
    ...(bySite ? [...backtestTable(bySite, sites.length, page), ''] : [wrap(TOO_LITTLE, page.width), '']),
    ...(byTime ? [...backtestTable(byTime, sites.length, page), ''] : []),
    ...(bySite ? [...calibrationTable(bySite, page), ''] : []),
    wrap(use, page.width),
  ];
  return `${lines.join('\n')}\n`;
}
