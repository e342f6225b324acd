import { backtestBySite, type SiteRecord } from '../../packages/core/src/learn/backtest.js';
import { itemsOf } from '../../packages/core/src/learn/items.js';
import { learn, observe } from '../../packages/core/src/learn/learn.js';
import { liftOf } from '../../packages/core/src/learn/lift.js';
import { AS_OF, type TownPlan, townOf } from './town.js';

/** One group of one town: what is true, and what was learned. */
export interface Recovered {
  readonly truth: number;
  readonly low: number;
  readonly mean: number;
  readonly high: number;
}

/** A back-test with sites left out one at a time: areas under the lift curve, and the Brier score. */
export interface TownBacktest {
  readonly unlearned: number;
  readonly learned: number;
  /** Ranked by the true multipliers of the groups: the best that any learning could do. */
  readonly truth: number;
  readonly brier: number;
  readonly brierOfBaseRate: number;
}

export interface TownStudy {
  readonly groups: readonly Recovered[];
  /** Null where it was not asked for, or nothing was found. */
  readonly backtest: TownBacktest | null;
}

function backtestOf(records: readonly SiteRecord[], truthOf: (group: string) => number): TownBacktest | null {
  const test = backtestBySite(records, 1);
  const items = records.flatMap((r) => r.items);
  const best = liftOf(items.map((i) => ({ ...i, score: (i.expected * truthOf(i.group)) / i.lengthM })));
  if (!test || !best) return null;
  const { brier, brierOfBaseRate } = test;
  const unlearned = test.baselines.unlearned.auc;
  return { unlearned, learned: test.auc, truth: best.area, brier, brierOfBaseRate };
}

/** Learns from a simulated town and holds what was learned against what is true. */
export function studyTown(plan: TownPlan, withBacktest: boolean): TownStudy {
  const { sites, truth } = townOf(plan);
  const records = sites.map((site, i): SiteRecord => {
    const name = `site ${i + 1}`;
    const { observations } = observe(site, { asOf: AS_OF });
    return { name, observations, items: withBacktest ? itemsOf(site, name, { asOf: AS_OF }) : [] };
  });
  const all = records.flatMap((r) => r.observations);
  const model = learn(all, { sites: sites.length, lines: plan.sites * plan.linesPerSite });
  const truthOf = (group: string): number => (plan.truth === 'prior' ? (truth.get(group) ?? 1) : plan.truth);
  const groups = model.groups
    .filter(({ group }) => !group.startsWith('crush/'))
    .map(({ group, multiplier }): Recovered => ({ truth: truthOf(group), ...multiplier }));
  return { groups, backtest: withBacktest ? backtestOf(records, truthOf) : null };
}

const meanOf = (values: readonly number[]): number => values.reduce((sum, v) => sum + v, 0) / values.length;

export interface Summary {
  readonly towns: number;
  readonly groups: number;
  /** Share of true multipliers inside their 80 % interval, below it and above it. */
  readonly inside: number;
  readonly below: number;
  readonly above: number;
  /** Mean of learned over mean of true, less one. */
  readonly bias: number;
  /** Standard error of the bias, from town to town. */
  readonly biasError: number;
  /** Root mean square error of ln multiplier: what was learned, and had nothing been learned. */
  readonly error: number;
  readonly errorUnlearned: number;
}

export function summaryOf(studies: readonly TownStudy[]): Summary {
  const groups = studies.flatMap((s) => s.groups);
  const inside = groups.filter((g) => g.truth >= g.low && g.truth <= g.high).length;
  const below = groups.filter((g) => g.truth < g.low).length;
  const meanTruth = meanOf(groups.map((g) => g.truth));
  const perTown = studies.map((s) => s.groups.reduce((sum, g) => sum + g.mean - g.truth, 0));
  const centre = meanOf(perTown);
  const spread = Math.sqrt(meanOf(perTown.map((d) => (d - centre) ** 2)) / studies.length);
  return {
    towns: studies.length,
    groups: groups.length,
    inside: inside / groups.length,
    below: below / groups.length,
    above: 1 - (inside + below) / groups.length,
    bias: meanOf(groups.map((g) => g.mean)) / meanTruth - 1,
    biasError: (spread * studies.length) / groups.length / meanTruth,
    error: Math.sqrt(meanOf(groups.map((g) => Math.log(g.mean / g.truth) ** 2))),
    errorUnlearned: Math.sqrt(meanOf(groups.map((g) => Math.log(g.truth) ** 2))),
  };
}
