import { backtestBySite, type SiteRecord } from '../../packages/core/src/learn/backtest.js';
import { itemsOf } from '../../packages/core/src/learn/items.js';
import { learn, observe } from '../../packages/core/src/learn/learn.js';
import { AS_OF, type TownPlan, townOf } from './town.js';

/** One group of one town: what is true, and what was learned. */
export interface Recovered {
  readonly truth: number;
  readonly low: number;
  readonly mean: number;
  readonly high: number;
  readonly logSd: number;
  readonly expected: number;
}

export interface TownStudy {
  readonly groups: readonly Recovered[];
  /** Area under the lift curve, sites left out one at a time; null where it was not asked for or nothing was found. */
  readonly area: { readonly learned: number; readonly unlearned: number } | null;
  readonly brier: { readonly learned: number; readonly baseRate: number } | null;
  readonly findings: number;
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
  const groups = model.groups.flatMap(({ group, multiplier, logSd, expected }): Recovered[] => {
    const known = plan.truth === 'prior' ? truth.get(group) : plan.truth;
    return known === undefined || group.startsWith('crush/')
      ? []
      : [{ truth: known, ...multiplier, logSd, expected }];
  });
  const backtest = withBacktest ? backtestBySite(records, 1) : null;
  return {
    groups,
    area: backtest && { learned: backtest.auc, unlearned: backtest.baselines.unlearned.auc },
    brier: backtest && { learned: backtest.brier, baseRate: backtest.brierOfBaseRate },
    findings: sites.reduce((sum, site) => sum + site.findings.length, 0),
  };
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
