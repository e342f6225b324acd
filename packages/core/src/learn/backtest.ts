import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import type { LearnedModel } from '../model/learned.js';
import { kindOf } from '../risk/groups.js';
import { chanceOf } from '../risk/interval.js';
import type { Observation } from '../risk/observed.js';
import { brierOf, type CalibrationBin, calibrationOf, type Forecast } from './calibration.js';
import type { Item } from './items.js';
import { learn } from './learn.js';
import { foundWithin, type Lift, liftOf, type Ranked } from './lift.js';

/** One site's part of a back-test. */
export interface SiteRecord {
  readonly name: string;
  readonly items: readonly Item[];
  readonly observations: readonly Observation[];
}

/** How well one way of ranking finds roots. */
export interface RankingScore {
  readonly auc: number;
  /** 80 % interval of the area, by drawing sites anew. */
  readonly aucInterval: { readonly low: number; readonly high: number };
  /** Share of the found roots within the worst 10, 20 and 30 % of metres. */
  readonly worst10: number;
  readonly worst20: number;
  readonly worst30: number;
  readonly curve: Lift;
}

/** How well what was learned ranks stretches that it was not learned from, beside plain ways of ranking them. */
export interface Backtest extends RankingScore {
  /** `sites`: each site judged by what was learned on the others. `time`: the later half by the earlier. */
  readonly by: 'sites' | 'time';
  readonly stretches: number;
  readonly found: number;
  readonly metres: number;
  readonly brier: number;
  /** Brier score of always saying the share found in all. */
  readonly brierOfBaseRate: number;
  readonly calibration: readonly CalibrationBin[];
  readonly baselines: {
    readonly unlearned: RankingScore;
    readonly nearestTree: RankingScore;
    readonly age: RankingScore;
  };
}

const DRAWS = 400;

const factorFor = (model: LearnedModel, group: string): number =>
  (model.groups.find((g) => g.group === group) ?? model.kinds.find((k) => k.group === kindOf(group)))
    ?.multiplier.mean ?? 1;

interface Judged {
  readonly item: Item;
  /** Expected entries with what was learned elsewhere. */
  readonly expected: number;
}

/** Ranks by expected entries per metre: a longer stretch is not worse for being longer. */
const perMetre = (expected: number, item: Item): number => expected / item.lengthM;

function scoreOf(
  judged: readonly Judged[],
  rankBy: (j: Judged) => number,
  seed: number,
): RankingScore | null {
  const ranked = judged.map((j): Ranked & { site: string } => ({
    lengthM: j.item.lengthM,
    found: j.item.found,
    score: rankBy(j),
    site: j.item.site,
  }));
  const curve = liftOf(ranked);
  if (curve === null) return null;
  const bySite = new Map<string, Ranked[]>();
  for (const r of ranked) bySite.set(r.site, [...(bySite.get(r.site) ?? []), r]);
  return {
    auc: curve.area,
    aucInterval: bootstrap(
      [...bySite.entries()].sort((a, b) => (a[0] < b[0] ? -1 : 1)).map(([, items]) => items),
      seed,
    ),
    worst10: foundWithin(curve, 0.1),
    worst20: foundWithin(curve, 0.2),
    worst30: foundWithin(curve, 0.3),
    curve,
  };
}

/** 80 % interval of the area by drawing as many sites as there are, with replacement (Efron 1979). */
function bootstrap(sites: readonly (readonly Ranked[])[], seed: number): { low: number; high: number } {
  const generator = xoroshiro128plus(seed);
  const pick = (): number => Math.floor(((generator.next() >>> 0) / 2 ** 32) * sites.length);
  const areas: number[] = [];
  for (let d = 0; d < DRAWS; d++) {
    const drawn = sites.flatMap(() => sites[pick()] as readonly Ranked[]);
    const lift = liftOf(drawn);
    if (lift !== null) areas.push(lift.area);
  }
  areas.sort((a, b) => a - b);
  const at = (share: number): number => areas[Math.round(share * (areas.length - 1))] ?? 0;
  return { low: at(0.1), high: at(0.9) };
}

function report(by: Backtest['by'], judged: readonly Judged[], seed: number): Backtest | null {
  const learned = scoreOf(judged, (j) => perMetre(j.expected, j.item), seed);
  const unlearned = scoreOf(judged, (j) => perMetre(j.item.expected, j.item), seed);
  const nearestTree = scoreOf(judged, (j) => -j.item.nearestTreeM, seed);
  const age = scoreOf(judged, (j) => j.item.ageYears, seed);
  if (!learned || !unlearned || !nearestTree || !age) return null;
  const forecasts = judged.map((j): Forecast => ({ chance: chanceOf(j.expected), found: j.item.found }));
  const found = forecasts.filter((f) => f.found).length;
  const base = found / forecasts.length;
  return {
    by,
    ...learned,
    stretches: judged.length,
    found,
    metres: judged.reduce((sum, j) => sum + j.item.lengthM, 0),
    brier: brierOf(forecasts),
    brierOfBaseRate: brierOf(forecasts.map((f) => ({ ...f, chance: base }))),
    calibration: calibrationOf(forecasts),
    baselines: { unlearned, nearestTree, age },
  };
}

const judgedWith = (model: LearnedModel, items: readonly Item[]): Judged[] =>
  items.map((item) => ({ item, expected: item.expected * factorFor(model, item.group) }));

const learnFrom = (observations: readonly Observation[]): LearnedModel =>
  learn(observations, { sites: 0, lines: 0 });

/**
 * Leaves out one site at a time, learns from the others and judges the one left out.
 * @param records one a site.
 * @param seed number that the draws of sites for the interval begin with.
 * @returns null where no roots were found anywhere, or there are fewer than two sites: then nothing can be said.
 */
export function backtestBySite(records: readonly SiteRecord[], seed: number): Backtest | null {
  if (records.length < 2) return null;
  const judged = records.flatMap((left) => {
    const others = records.filter((r) => r !== left).flatMap((r) => r.observations);
    return judgedWith(learnFrom(others), left.items);
  });
  return report('sites', judged, seed);
}

/**
 * Learns from the earlier half of what was seen and judges the later half.
 * @param records one a site.
 * @param seed number that the draws of sites for the interval begin with.
 * @returns null where nothing was seen, or no roots in the later half.
 */
export function backtestByTime(records: readonly SiteRecord[], seed: number): Backtest | null {
  const years = records.flatMap((r) => r.items.map((i) => i.year)).sort((a, b) => a - b);
  const split = years[Math.floor(years.length / 2)];
  if (split === undefined) return null;
  const model = learnFrom(records.flatMap((r) => r.observations.filter((o) => o.year < split)));
  const later = records.flatMap((r) => r.items.filter((i) => i.year >= split));
  return report('time', judgedWith(model, later), seed);
}
