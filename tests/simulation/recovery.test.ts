import { describe, expect, it } from 'vitest';
import { LINE_CV } from '../../packages/core/src/infer/gamma-prior.js';
import { type Summary, studyTown, summaryOf, type TownStudy } from './study.js';
import type { TownPlan } from './town.js';

/** Towns of each study; a long run asks for more (packages/dev/simulate.mjs). */
const TOWNS = Number(process.env['ROOTREACH_TOWNS'] ?? 60);
const MINUTES = 60_000;

function studies(plan: Omit<TownPlan, 'seed'>, towns: number, withBacktest = false): TownStudy[] {
  return Array.from({ length: towns }, (_, i) => studyTown({ ...plan, seed: 1000 + i }, withBacktest));
}

const per = (share: number): string => `${(100 * share).toFixed(1)} %`;

function say(what: string, s: Summary): void {
  console.info(
    `${what}: ${s.towns} towns, ${s.groups} groups, inside their 80 % interval ${per(s.inside)} ` +
      `(below ${per(s.below)}, above ${per(s.above)}), bias of the mean ${per(s.bias)} (error ${per(s.biasError)}), ` +
      `error of the logarithm ${s.error.toFixed(3)}, unlearned ${s.errorUnlearned.toFixed(3)}`,
  );
}

const GARDENS = { sites: 6, linesPerSite: 5 };

/** Three standard errors of a share of four fifths, groups of one town hanging together in pairs. */
const slack = (groups: number): number => 3 * Math.sqrt((0.8 * 0.2 * 2) / groups);

describe('multipliers drawn from the prior, lines as unlike as the model says', () => {
  const summary = summaryOf(studies({ ...GARDENS, truth: 'prior', lineCv: LINE_CV }, TOWNS));

  it('lie inside their 80 % intervals four times in five', () => {
    say('prior, lines unlike', summary);
    expect(Math.abs(summary.inside - 0.8)).toBeLessThan(Math.max(0.05, slack(summary.groups)));
  });

  it('are recovered without bias', () => {
    expect(Math.abs(summary.bias)).toBeLessThan(3 * summary.biasError + 0.02);
  });

  it('are nearer to what was learned than to the tables', () => {
    expect(summary.error).toBeLessThan(0.8 * summary.errorUnlearned);
  });
}, 20 * MINUTES);

describe('multipliers drawn from the prior, all lines of a group alike', () => {
  it('lie inside their intervals a little oftener, since lines are taken to differ', () => {
    const summary = summaryOf(studies({ ...GARDENS, truth: 'prior', lineCv: 0 }, TOWNS));
    say('prior, lines alike', summary);
    expect(summary.inside).toBeGreaterThan(0.8 - slack(summary.groups));
    expect(summary.inside).toBeLessThan(0.85 + slack(summary.groups));
    expect(Math.abs(summary.bias)).toBeLessThan(3 * summary.biasError + 0.05);
  }, 20 * MINUTES);
});

describe('multipliers at one value for all groups', () => {
  // one truth is not drawn from the prior: what is learned stays a little on the side of 1
  it.each([0.3, 1, 3])('of %d are drawn towards 1, the less the more is seen', (truth) => {
    const plan = { sites: 4, truth, lineCv: 0 };
    const few = summaryOf(studies({ ...plan, linesPerSite: 3 }, TOWNS / 6));
    const many = summaryOf(studies({ ...plan, linesPerSite: 24 }, TOWNS / 12));
    say(`true ${truth}, 12 lines`, few);
    say(`true ${truth}, 96 lines`, many);
    if (truth !== 1) expect(Math.sign(few.bias)).toBe(Math.sign(1 - truth));
    expect(Math.abs(many.bias)).toBeLessThan(Math.max(0.1, 0.75 * Math.abs(few.bias)));
    expect(many.error).toBeLessThan(few.error);
  }, 20 * MINUTES);
});

describe('gardens left out one at a time', () => {
  it('are ranked better with what was learned on the others', () => {
    const areas = studies({ ...GARDENS, truth: 'prior', lineCv: LINE_CV }, TOWNS / 2, true).flatMap((s) =>
      s.area && s.brier ? [{ ...s.area, brier: s.brier }] : [],
    );
    const mean = (of: (a: (typeof areas)[number]) => number): number =>
      areas.reduce((sum, a) => sum + of(a), 0) / areas.length;
    const gain = mean((a) => a.learned - a.unlearned);
    const better = mean((a) => (a.learned > a.unlearned ? 1 : 0));
    console.info(
      `left out: ${areas.length} towns, area learned ${mean((a) => a.learned).toFixed(3)}, unlearned ` +
        `${mean((a) => a.unlearned).toFixed(3)}, better in ${per(better)}, Brier ` +
        `${mean((a) => a.brier.learned).toFixed(4)}, of the base rate ${mean((a) => a.brier.baseRate).toFixed(4)}`,
    );
    expect(gain).toBeGreaterThan(0);
    expect(better).toBeGreaterThan(0.5);
    expect(mean((a) => a.unlearned)).toBeGreaterThan(0.5);
    expect(mean((a) => a.brier.learned)).toBeLessThan(mean((a) => a.brier.baseRate));
  }, 20 * MINUTES);
});
