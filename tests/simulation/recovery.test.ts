import { describe, expect, it } from 'vitest';
import { LINE_CV } from '../../packages/core/src/infer/gamma-prior.js';
import { type Summary, studyTown, summaryOf, type TownStudy } from './study.js';
import type { TownPlan } from './town.js';

/** Towns of each study; a long run asks for more (packages/dev/simulate.mjs). */
const TOWNS = Number(process.env['ROOTREACH_TOWNS'] ?? 30);
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

describe(
  'multipliers drawn from the prior, lines as unlike as the model says',
  () => {
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
  },
  20 * MINUTES,
);

describe('multipliers drawn from the prior, all lines of a group alike', () => {
  it(
    'lie inside their intervals a little oftener, since lines are taken to differ',
    () => {
      const summary = summaryOf(studies({ ...GARDENS, truth: 'prior', lineCv: 0 }, TOWNS));
      say('prior, lines alike', summary);
      expect(summary.inside).toBeGreaterThan(0.8 - slack(summary.groups));
      expect(summary.inside).toBeLessThan(0.85 + slack(summary.groups));
      expect(Math.abs(summary.bias)).toBeLessThan(3 * summary.biasError + 0.05);
    },
    20 * MINUTES,
  );
});

describe('multipliers at one value for all groups', () => {
  // one truth is not drawn from the prior: what is learned stays a little on the side of 1
  it.each([0.3, 1, 3])(
    'of %d are drawn towards 1, the less the more is seen',
    (truth) => {
      const plan = { sites: 4, truth, lineCv: 0 };
      const few = summaryOf(studies({ ...plan, linesPerSite: 3 }, Math.ceil(TOWNS / 6)));
      const many = summaryOf(studies({ ...plan, linesPerSite: 24 }, Math.ceil(TOWNS / 10)));
      say(`true ${truth}, 12 lines`, few);
      say(`true ${truth}, 96 lines`, many);
      // lines are taken to differ: clean ones among them weigh a little less than they should where none do
      expect(Math.abs(many.bias)).toBeLessThan(Math.max(0.15, 0.75 * Math.abs(few.bias)));
      // at 1 the tables are right, and what little is seen can but lead away from them
      if (truth === 1) return;
      expect(Math.sign(few.bias)).toBe(Math.sign(1 - truth));
      expect(many.error).toBeLessThan(few.error);
    },
    20 * MINUTES,
  );
});

describe('gardens left out one at a time', () => {
  it(
    'are ranked better with what was learned on the others, if not as well as with the truth',
    () => {
      const plan = { sites: 6, linesPerSite: 10, truth: 'prior', lineCv: LINE_CV } as const;
      const tests = studies(plan, Math.ceil(TOWNS / 5), true).flatMap((s) =>
        s.backtest ? [s.backtest] : [],
      );
      const mean = (of: (t: (typeof tests)[number]) => number): number =>
        tests.reduce((sum, t) => sum + of(t), 0) / tests.length;
      const area = {
        learned: mean((t) => t.learned),
        unlearned: mean((t) => t.unlearned),
        truth: mean((t) => t.truth),
      };
      const brier = { learned: mean((t) => t.brier), baseRate: mean((t) => t.brierOfBaseRate) };
      const better = mean((t) => (t.learned > t.unlearned ? 1 : 0));
      console.info(
        `left out: ${tests.length} towns, area under the lift curve unlearned ${area.unlearned.toFixed(3)}, ` +
          `learned ${area.learned.toFixed(3)}, by the true multipliers ${area.truth.toFixed(3)}, ` +
          `better in ${per(better)}, Brier ${brier.learned.toFixed(4)}, base rate ${brier.baseRate.toFixed(4)}`,
      );
      expect(area.unlearned).toBeGreaterThan(0.6);
      expect(area.learned).toBeGreaterThan(area.unlearned);
      expect(area.truth).toBeGreaterThan(area.learned - 0.01);
      expect(brier.learned).toBeLessThan(brier.baseRate);
    },
    20 * MINUTES,
  );
});
