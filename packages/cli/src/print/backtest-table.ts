import type { Backtest, RankingScore } from '@rootreach/core';
import type { Tried } from '../learning.js';
import { percent } from './chance.js';
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
  const against: [string, RankingScore][] = [
    ['the rates as assumed', unlearned],
    ['nearness to a tree', nearestTree],
    ['age', age],
  ];
  const list = (names: readonly string[]): string => names.join(' and ');
  const better = against.filter(([, score]) => !overlap(learned, score) && learned.auc > score.auc);
  const worse = against.filter(([, score]) => !overlap(learned, score) && learned.auc < score.auc);
  const alike = against.filter(([, score]) => overlap(learned, score));
  const verdicts = [
    ...(better.length > 0 ? [`finds roots sooner than ${list(better.map(([name]) => name))}`] : []),
    ...(worse.length > 0 ? [`finds them later than ${list(worse.map(([name]) => name))}`] : []),
    ...(alike.length > 0 ? [`can't be told from ${list(alike.map(([name]) => name))}`] : []),
  ];
  const few = `${count(learned.found, 'stretch', 'stretches')} with roots on ${count(sites, 'site')}`;
  return `${few} are few: with others like them the area would fall within its brackets 8 times in 10, and by that the ranking as learned ${verdicts.join(' and ')}.`;
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
  return `${how}; ${count(stretches, 'stretch', 'stretches')}, ${length(metres, units)}, roots in ${found}.`;
}

/** Share of the roots found early by each way of ranking, with how sure that is. */
export function backtestTable(tried: Tried, sites: number, page: Page): string[] {
  const { width, style } = page;
  return [
    style.strong(wrap(title(tried, page), width)),
    style.faint(row('', ['roots found in', '', '', 'area under', 'Brier'])),
    style.faint(row('ranked by', ['10 %', '20 %', '30 %', 'the curve (8 in 10)', 'score'])),
    ...scores(tried),
    wrap(reading(tried, sites), width),
  ];
}

type Bin = Backtest['calibration'][number];

const said = ({ meanChance, count: n }: Bin): string =>
  `${percent(meanChance)} %`.padStart(7) + (meanChance * n).toFixed(1).padStart(7);

const saw = ({ foundShare, count: n }: Bin): string => String(Math.round(foundShare * n)).padStart(7);

/** Were the odds borne out? Ten lots of stretches, from least to most likely. */
export function calibrationTable({ learned, assumed }: Tried, { width, style }: Page): string[] {
  const rows = learned.calibration.map((bin, i) => {
    const before = assumed.calibration[i];
    const tail = before === undefined ? '' : `     ${said(before)}${saw(before)}`;
    return `${String(i + 1).padStart(3)}${String(bin.count).padStart(11)}     ${said(bin)}${saw(bin)}${tail}`;
  });
  const head = '   said   makes  found';
  return [
    style.strong(wrap('Were the odds borne out? The same stretches in ten lots, least likely first.', width)),
    style.faint(`${' '.repeat(19)}${'as learned'.padEnd(26)}as assumed`),
    style.faint(`lot  stretches     ${head}    ${head}`),
    ...rows,
    wrap('said 10 %, makes 8.6, found 9: odds of 1 in 10 over 86 stretches make 8.6; 9 had roots.', width),
  ];
}
