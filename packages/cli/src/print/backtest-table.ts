import type { Backtest } from '@rootreach/core';
import type { Tried } from '../learning.js';
import { count } from './count.js';
import { length } from './lengths.js';
import type { Page } from './rank-table.js';
import { wrap } from './wrap.js';

/** Names of the ways of ranking, here and in the picture. */
export const rankingNames = {
  learned: 'rates as learned',
  assumed: 'rates as assumed',
  nearestTree: 'nearest tree',
  age: 'age of the line',
} as const;

type RankingScore = Backtest['baselines']['age'];

const NAME = 22;

const share = (value: number): string => `${Math.round(100 * value)} %`;

const row = (name: string, cells: readonly string[]): string => {
  const [a = '', b = '', c = '', area = '', brier = ''] = cells;
  return `${name.padEnd(NAME)}${a.padStart(6)}${b.padStart(7)}${c.padStart(7)}${area.padStart(24)}${brier.padStart(9)}`;
};

function scoreRow(name: string, score: RankingScore, brier: number | null): string {
  const { low, high } = score.aucInterval;
  return row(name, [
    share(score.worst10),
    share(score.worst20),
    share(score.worst30),
    `${score.auc.toFixed(2)} (${low.toFixed(2)} to ${high.toFixed(2)})`,
    brier === null ? '-' : brier.toFixed(3),
  ]);
}

/** True where the two areas may well be the same. */
const overlap = (a: RankingScore, b: RankingScore): boolean =>
  a.aucInterval.low <= b.aucInterval.high && b.aucInterval.low <= a.aucInterval.high;

/** How far the test can be trusted, from its own ranges. */
function reading({ learned }: Tried, sites: number): string {
  const { unlearned, nearestTree, age } = learned.baselines;
  const against: readonly [string, RankingScore][] = [
    ['the rates as assumed', unlearned],
    ['nearness to a tree', nearestTree],
    ['age', age],
  ];
  const those = (which: (score: RankingScore) => boolean): string =>
    against
      .filter(([, score]) => which(score))
      .map(([name]) => name)
      .join(' and ');
  const verdicts = [
    ['find roots sooner than', those((s) => !overlap(learned, s) && learned.auc > s.auc)],
    ['find them later than', those((s) => !overlap(learned, s) && learned.auc < s.auc)],
    ["can't be told from", those((s) => overlap(learned, s))],
  ].filter(([, names]) => names !== '');
  const few = `${count(learned.found, 'stretch', 'stretches')} with roots on ${count(sites, 'site')}`;
  const words = verdicts.map((verdict) => verdict.join(' ')).join(', and ');
  return `Only ${few}: with others like them the area would lie within its brackets 8 times in 10, so the rates as learned ${words}.`;
}

function scores({ learned, assumed }: Tried): string[] {
  const { nearestTree, age } = learned.baselines;
  return [
    scoreRow(rankingNames.learned, learned, learned.brier),
    scoreRow(rankingNames.assumed, assumed, assumed.brier),
    scoreRow(rankingNames.nearestTree, nearestTree, null),
    scoreRow(rankingNames.age, age, null),
    row('by luck', ['10 %', '20 %', '30 %', '0.50              ', learned.brierOfBaseRate.toFixed(3)]),
  ];
}

/** What was tried, and on how much. */
function title({ learned: { by, stretches, found, metres } }: Tried, { units }: Page): string {
  const how =
    by === 'sites'
      ? 'Tried out: each site ranked by what the others taught'
      : 'Tried out: the later half ranked by what the earlier half taught';
  return `${how}. ${count(stretches, 'stretch', 'stretches')} in ${length(metres, units)}, roots in ${found} of them.`;
}

/** Share of the roots found early by each way of ranking, with how sure that is. */
export function backtestTable(tried: Tried, sites: number, page: Page): string[] {
  const { width, style } = page;
  return [
    style.strong(wrap(title(tried, page), width)),
    style.faint(
      `${'ranked by'.padEnd(NAME)}roots in the worst  ${'area under'.padStart(24)}${'Brier'.padStart(9)}`,
    ),
    style.faint(row('', ['10 %', '20 %', '30 %', 'the curve (8 in 10)', 'score'])),
    ...scores(tried),
    wrap(reading(tried, sites), width),
  ];
}
