import { describe, expect, it } from 'vitest';
import {
  backtestBySite,
  backtestByTime,
  type SiteRecord,
} from '../../../packages/core/src/learn/backtest.js';
import type { Item } from '../../../packages/core/src/learn/items.js';
import type { Observation } from '../../../packages/core/src/risk/observed.js';

/** A record of one site with one stretch for each line. */
function record(name: string, stretches: readonly (Partial<Item> & { found: boolean })[]): SiteRecord {
  const items = stretches.map(
    (s): Item => ({
      site: name,
      group: 'mortar/clay',
      lengthM: 3,
      year: 2015,
      expected: 0.1,
      nearestTreeM: 4,
      ageYears: 40,
      ...s,
    }),
  );
  const observations = items.map(
    (item, i): Observation => ({
      drainId: `${i}`,
      line: `${name} ${i}`,
      group: item.group,
      year: item.year,
      sinceYear: item.year - item.ageYears,
      fromM: 0,
      toM: item.lengthM,
      saw: item.found ? 'count' : 'none',
      entries: item.found ? 1 : 0,
      expected: item.expected,
    }),
  );
  return { name, items, observations };
}

const CLAY = { group: 'mortar/clay', expected: 0.1 };
const PLASTIC = { group: 'gasket/pvc-sdr35', expected: 0.12 };

/** Sites where clay has roots and plastic, of which the tables expect a little more, has none. */
const sites = (count: number): SiteRecord[] =>
  Array.from({ length: count }, (_, i) =>
    record(`site ${i}`, [
      ...Array.from({ length: 6 }, (_, k) => ({ ...CLAY, found: k < 4 })),
      ...Array.from({ length: 6 }, () => ({ ...PLASTIC, found: false })),
    ]),
  );

describe('back-test by site', () => {
  it('ranks with what was learned on the other sites', () => {
    const test = backtestBySite(sites(5), 1);
    // plastic first is the wrong way round: half the metres hold nothing, the other half all
    expect(test?.baselines.unlearned.auc).toBeCloseTo(0.25, 12);
    expect(test?.auc).toBeCloseTo(0.75, 12);
    expect(test).toMatchObject({ by: 'sites', stretches: 60, found: 20, metres: 180 });
    expect(test?.brier ?? 1).toBeLessThan(test?.brierOfBaseRate ?? 0);
    // always saying one in three
    expect(test?.brierOfBaseRate).toBeCloseTo((1 / 3) * (2 / 3), 12);
  });

  it('ranks by what is expected of a metre: a long stretch is not worse for being long', () => {
    const mixed = [
      { lengthM: 9, expected: 0.2, found: false },
      { lengthM: 3, expected: 0.1, found: true },
    ];
    const test = backtestBySite([record('a', mixed), record('b', mixed)], 1);
    // 6 of 24 m hold all that is found, and come first
    expect(test?.auc).toBeCloseTo(1 - 0.25 / 2, 12);
    expect(test?.baselines.unlearned.auc).toBeCloseTo(1 - 0.25 / 2, 12);
  });

  it('learns nothing from the site that it judges', () => {
    const clean = record('clean', [
      { ...CLAY, found: false },
      { ...PLASTIC, found: false },
    ]);
    const only = record('only', [
      { ...CLAY, found: true },
      { ...PLASTIC, found: false },
    ]);
    const test = backtestBySite([clean, only], 1);
    const forecast = (test?.calibration ?? []).filter((bin) => bin.foundShare > 0);
    // the one find was judged by a clean site alone: below what the tables say
    expect(forecast).toHaveLength(1);
    expect(forecast[0]?.meanChance).toBeLessThan(1 - Math.exp(-0.1));
  });

  it('is the same to the last digit in any order of sites, and for the same seed', () => {
    const records = sites(4).map((r, i) => ({
      ...r,
      items: r.items.map((item, k) => ({ ...item, expected: 0.1 + 0.01 * ((7 * i + k) % 5) })),
    }));
    const { brier, ...rest } = backtestBySite(records, 7) ?? { brier: 0 };
    const { brier: again, ...other } = backtestBySite([...records].reverse(), 7) ?? { brier: 1 };
    expect(other).toEqual(rest);
    // a sum of squares in another order
    expect(again).toBeCloseTo(brier, 14);
  });

  it('gives an interval about the area that holds it', () => {
    const test = backtestBySite(
      sites(6).map((r, i) => ({ ...r, items: r.items.slice(i) })),
      3,
    );
    const { low = 1, high = 0 } = test?.aucInterval ?? {};
    expect(low).toBeLessThanOrEqual(test?.auc ?? 0);
    expect(high).toBeGreaterThanOrEqual(test?.auc ?? 1);
  });

  // drawn with replacement, one pair of sites in four is one site twice, and one the other: the outer tenths
  it('has for its interval of two sites the areas of each alone', () => {
    const near = (found: number) =>
      [1, 2, 3, 4].map((m) => ({ nearestTreeM: m, ageYears: m, found: m === found }));
    const test = backtestBySite([record('first', near(1)), record('last', near(4))], 1);
    const { aucInterval } = test?.baselines.nearestTree ?? {};
    expect(aucInterval?.high).toBeCloseTo(1 - 0.25 / 2, 12);
    expect(aucInterval?.low).toBeCloseTo(0.25 / 2, 12);
  });

  it('ranks by nearness of trees and by age as they are', () => {
    const near = [1, 2, 3, 4].map((m) => ({ nearestTreeM: m, ageYears: m, found: m === 1 }));
    const test = backtestBySite([record('a', near), record('b', near)], 1);
    expect(test?.baselines.nearestTree.auc).toBeCloseTo(1 - 0.25 / 2, 12);
    expect(test?.baselines.age.auc).toBeCloseTo(0.25 / 2, 12);
  });

  it('says nothing of one site, or where nothing was found', () => {
    expect(backtestBySite(sites(1), 1)).toBeNull();
    expect(backtestBySite([], 1)).toBeNull();
    expect(backtestBySite([record('a', [{ found: false }]), record('b', [{ found: false }])], 1)).toBeNull();
  });
});

describe('back-test by time', () => {
  it('learns from the earlier half and judges the later', () => {
    // in no order of years
    const years = sites(4).map((r, i) => {
      const year = [2012, 2010, 2013, 2011][i] as number;
      return {
        ...r,
        items: r.items.map((item) => ({ ...item, year })),
        observations: r.observations.map((o) => ({ ...o, year })),
      };
    });
    const test = backtestByTime(years, 1);
    expect(test).toMatchObject({ by: 'time', stretches: 24, found: 8 });
    expect(test?.auc).toBeCloseTo(0.75, 12);
  });

  it('judges a material that was not seen by its kind of joint, and another kind not at all', () => {
    const earlier = record(
      'clay',
      [1, 2, 3].map(() => ({ ...CLAY, year: 2010, found: true })),
    );
    const later = record('other', [
      { group: 'mortar/concrete', expected: 0.1, year: 2020, found: true },
      { ...PLASTIC, year: 2020, found: false },
      { ...PLASTIC, year: 2020, found: false },
    ]);
    const test = backtestByTime([earlier, later], 1);
    // the third that holds the find is last by the tables, first by what its kind showed
    expect(test?.baselines.unlearned.auc).toBeCloseTo(1 / 6, 12);
    expect(test?.auc).toBeCloseTo(5 / 6, 12);
    // two clean stretches are said as by the tables: Poisson, one or more of 0.12
    const plastic = test?.calibration.filter((bin) => bin.foundShare === 0) ?? [];
    expect(plastic.map((bin) => bin.meanChance)).toEqual(
      [1, 2].map(() => expect.closeTo(1 - Math.exp(-0.12), 12)),
    );
  });

  it('learns nothing where all was seen on one day', () => {
    const test = backtestByTime(sites(3), 1);
    expect(test?.auc).toBe(test?.baselines.unlearned.auc);
    expect(test?.stretches).toBe(36);
  });

  it('says nothing of nothing', () => {
    expect(backtestByTime([], 1)).toBeNull();
  });
});
