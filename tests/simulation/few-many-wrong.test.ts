import { describe, expect, it } from 'vitest';
import { learn, observe } from '../../packages/core/src/learn/learn.js';
import type { LearnedModel } from '../../packages/core/src/model/learned.js';
import type { Finding, Site } from '../../packages/core/src/model/site.js';
import { rank } from '../../packages/core/src/risk/rank.js';
import { AS_OF, townOf } from './town.js';

const { sites } = townOf({ seed: 77, sites: 1, linesPerSite: 340, truth: 'prior', lineCv: 0.5 });
const town = sites[0] as Site;

const withFindings = (findings: readonly Finding[]): Site => ({ ...town, findings });

function learnedFrom(site: Site): LearnedModel {
  const { observations } = observe(site, { asOf: AS_OF });
  return learn(observations, { sites: 1, lines: site.drains.length });
}

/** Whatever is learned must be fit to score with. */
function expectSound(site: Site): LearnedModel {
  const learned = learnedFrom(site);
  for (const { multiplier: m, logSd, priorLogSd } of [...learned.groups, ...learned.kinds]) {
    expect(m.low).toBeGreaterThan(0);
    expect(m.low).toBeLessThan(m.high);
    expect(m.mean).toBeLessThan(100);
    expect(logSd).toBeGreaterThan(0);
    expect(logSd).toBeLessThan(1.1 * priorLogSd);
  }
  const { segments } = rank(site, { asOf: AS_OF, top: 50, learned });
  for (const { score, chance } of segments) {
    expect(score).toBeGreaterThanOrEqual(0);
    expect(score).toBeLessThanOrEqual(100);
    expect(chance.low).toBeLessThanOrEqual(chance.likely);
    expect(chance.likely).toBeLessThanOrEqual(chance.high);
  }
  return learned;
}

/** Mean spread of what was learned against the prior's. */
const leftOf = (learned: LearnedModel): number =>
  learned.groups.reduce((sum, g) => sum + g.logSd / g.priorLogSd, 0) / learned.groups.length;

const finding = (more: Partial<Finding>): Finding => ({ ...(town.findings[0] as Finding), ...more });

describe('with few findings or many', () => {
  it('nothing is learned of none', () => {
    expect(expectSound(withFindings([])).groups).toEqual([]);
  });

  it('one finding moves a little, ten a little more, a thousand much', () => {
    expect(town.findings.length).toBeGreaterThanOrEqual(1000);
    const one = expectSound(withFindings(town.findings.slice(0, 1)));
    const ten = expectSound(withFindings(town.findings.slice(0, 10)));
    const all = expectSound(town);
    expect(leftOf(one)).toBeGreaterThan(0.8);
    expect(leftOf(ten)).toBeLessThanOrEqual(1);
    expect(leftOf(all)).toBeLessThan(0.7 * leftOf(one));
    for (const { multiplier } of one.groups) expect(Math.abs(Math.log(multiplier.mean))).toBeLessThan(0.7);
  });
});

describe('with findings that are wrong', () => {
  const plain = learnedFrom(town);

  it('telling all of them twice changes nothing', () => {
    const twice = town.findings.flatMap((f) => [f, { ...f, id: `${f.id} again` }]);
    const learned = expectSound(withFindings(twice));
    expect([learned.groups, learned.kinds]).toEqual([plain.groups, plain.kinds]);
  });

  it('the same stretch clear and full on one day counts as roots', () => {
    const where = { atM: 2, toM: 9, year: 2020 };
    const roots = finding({ ...where, seen: 'full' });
    const both = expectSound(withFindings([finding({ ...where, seen: 'clear', id: 'clear' }), roots]));
    expect(both.groups).toEqual(expectSound(withFindings([roots])).groups);
  });

  it('a date before the line was laid, and a date to come, are sound', () => {
    const before = finding({ atM: 2, toM: 9, year: 1900, seen: 'mass' });
    expect(expectSound(withFindings([before])).groups).toEqual([]);
    expectSound(withFindings([finding({ atM: 2, toM: 9, year: 2060, seen: 'clear' })]));
  });

  it('a counter that runs past the line, or a line that is not there, is reported and not learned from', () => {
    const bad = [finding({ atM: 500, toM: 600 }), finding({ drain: 'none', id: 'lost' })];
    const { observations, issues } = observe(withFindings(bad), { asOf: AS_OF });
    expect(observations).toEqual([]);
    expect(issues.map((i) => i.code)).toEqual(['finding-misplaced', 'finding-misplaced']);
  });

  it('a count past belief is taken as roots that were not counted', () => {
    const told = (entries: number | null): Finding =>
      finding({ atM: 0, toM: 5, year: 2020, seen: 'fine', entries });
    const some = expectSound(withFindings([told(null)]));
    expect(expectSound(withFindings([told(10_000)])).groups).toEqual(some.groups);
  });

  it('one line full of roots against the rest of the town does not turn its group over', () => {
    const group = plain.groups
      .filter((g) => !g.group.startsWith('crush/'))
      .sort((a, b) => b.expected - a.expected)[0];
    const line = observe(town, { asOf: AS_OF }).observations.find((o) => o.group === group?.group);
    const wrong = finding({
      drain: line?.drainId ?? '',
      atM: 0,
      toM: 10,
      year: 2026,
      seen: 'full',
      entries: 200,
      id: 'wrong',
    });
    const after = learnedFrom(
      withFindings([...town.findings.filter((f) => f.drain !== line?.drainId), wrong]),
    );
    const then = after.groups.find((g) => g.group === group?.group);
    expect((then?.multiplier.mean ?? Number.NaN) / (group?.multiplier.mean ?? 1)).toBeLessThan(3);
  });
});
