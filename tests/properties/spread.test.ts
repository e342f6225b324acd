import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { contextOf, type PreparedLine, prepareLine } from '../../packages/core/src/risk/context.js';
import { type Draw, drawsOf } from '../../packages/core/src/risk/draws.js';
import { addLoad, Load } from '../../packages/core/src/risk/load.js';
import { rank } from '../../packages/core/src/risk/rank.js';
import { drawTableOf, expectedUnder, surfaceOf } from '../../packages/core/src/risk/sampling.js';
import { closedFormChance, scoreAll } from '../../packages/core/src/risk/score-all.js';
import { VIGOUR_CLASSES, WAY_CRUSH, WAY_SLOT } from '../../packages/core/src/risk/ways.js';
import { judgement } from '../../packages/core/src/tables/judgement.js';
import { AS_OF, sceneOf, type Yard, yards } from './yard.js';

const RUNS = { seed: 20_261_125, numRuns: 100 };

const contextFor = (yard: Yard, more: Readonly<Record<string, unknown>> = {}) =>
  contextOf(sceneOf(yard, more).site(), { asOf: AS_OF, segmentM: yard.segmentM });

/** Expected entries of a segment under one draw, the whole load worked out again. */
function recomputed(prepared: PreparedLine, from: number, to: number, draw: Draw): number {
  const { inputs } = prepared;
  const load = new Load(inputs.horizon.weights.length, inputs.near.count);
  const reachScale = Math.exp(judgement.reach.logSd * draw.reachZ);
  const clockScale = Math.exp(judgement.regrowthMetresPerYear.logSd * draw.clockZ);
  addLoad({ ...inputs, reachScale, clockScale }, from, to, load);
  return load.byWayAndVigour.reduce((sum, value, split) => {
    const way = Math.floor(split / VIGOUR_CLASSES);
    const vigour = draw.vigour[split % VIGOUR_CLASSES] as number;
    const rate = way === WAY_CRUSH ? draw.crush : draw.entry * (way === WAY_SLOT ? draw.slots : draw.joints);
    return sum + value * rate * vigour;
  }, 0);
}

/** Value below which a share of the list lies. */
function quantile(values: ArrayLike<number>, share: number): number {
  const sorted = Array.from(values).sort((a, b) => a - b);
  return sorted[Math.round(share * (sorted.length - 1))] as number;
}

const sum = (values: ArrayLike<number>): number => Array.from(values).reduce((total, v) => total + v, 0);

/** Expected entries of every segment under the draws, by the surface and worked out again. */
function bothWays(yard: Yard, dug: number | null, draws: readonly Draw[]) {
  const context = contextFor(yard, dug === null ? {} : { installed: 1960, dug });
  const prepared = prepareLine(context, context.lines.at(0));
  const { first } = prepared.inputs.openings;
  const table = drawTableOf(draws);
  const ones = new Float64Array(draws.length).fill(1);
  return prepared.line.segments.map((_, i) => {
    const [from, to] = [first[i] as number, first[i + 1] as number];
    const surface = surfaceOf(prepared.inputs, from, to, false);
    return {
      fast: expectedUnder(surface, table, ones, prepared.scale),
      slow: draws.map((draw) => recomputed(prepared, from, to, draw)),
    };
  });
}

const dugOrNot = fc.option(fc.integer({ min: 2010, max: 2026 }), { nil: null });
/** Entries too few to rank by. */
const NOTHING = 1e-5;

// A parabola in each of reach and clock, their sum for both: half of all draws are within 1 %, one in a hundred is off
// by 8 %, those far out by up to a quarter. The spread itself is a factor of three to four.
describe('the sampled surface of a segment', () => {
  it('gives what working each draw out again gives', () => {
    const draws = drawsOf(100, 5);
    fc.assert(
      fc.property(yards(), dugOrNot, (yard, dug) => {
        for (const { fast, slow } of bothWays(yard, dug, draws)) {
          const off = slow.map((value, d) => Math.abs((fast[d] as number) - value) / (value + NOTHING));
          expect(quantile(off, 0.5)).toBeLessThan(0.04);
          expect(quantile(off, 0.9)).toBeLessThan(0.12);
          expect(Math.max(...off)).toBeLessThan(0.5);
          expect(Math.abs(sum(fast) - sum(slow))).toBeLessThanOrEqual(0.03 * sum(slow) + NOTHING);
        }
      }),
      { ...RUNS, numRuns: 60 },
    );
  });

  it('puts the ends of the 80 % interval where working out again puts them', () => {
    const draws = drawsOf(200, 6);
    fc.assert(
      fc.property(yards(), dugOrNot, (yard, dug) => {
        for (const { fast, slow } of bothWays(yard, dug, draws)) {
          for (const share of [0.1, 0.9]) {
            const exact = quantile(slow, share);
            expect(Math.abs(quantile(fast, share) - exact)).toBeLessThanOrEqual(0.12 * exact + NOTHING);
          }
        }
      }),
      { ...RUNS, numRuns: 40 },
    );
  });
});

/** Width of an 80 % interval as standard deviations of the logarithm of the expected entries. */
function logSdOf({ low, high }: { readonly low: number; readonly high: number }): number {
  const expected = (chance: number): number => -Math.log1p(-chance);
  return Math.log(expected(high) / expected(low)) / (2 * 1.2815515655446004);
}

describe('the closed-form interval', () => {
  // 400 draws place each tenth of a log-normal within 0.09 of its deviation (one sigma), the width within 0.05; the
  // closed form is of first order in spreads of 0.35 to 0.7 and adds up ways in as if logarithms did. A quarter
  // holds both.
  it('is as wide as the sampled one to a quarter', () => {
    fc.assert(
      fc.property(yards(), (yard) => {
        const columns = scoreAll(contextFor(yard));
        const { segments } = rank(sceneOf(yard).site(), { asOf: AS_OF, segmentM: yard.segmentM });
        for (const segment of segments) {
          if (segment.chance.likely < 1e-6) continue;
          const row = Number(segment.id.split('/')[1]) - 1;
          const ratio = logSdOf(closedFormChance(columns, row)) / logSdOf(segment.chance);
          expect(ratio).toBeGreaterThan(0.75);
          expect(ratio).toBeLessThan(1.33);
        }
      }),
      RUNS,
    );
  });

  it('is wider where less is known, as the sampled one is', () => {
    fc.assert(
      fc.property(yards('measured'), (yard) => {
        const blind = { material: undefined, depth_start_m: undefined, depth_end_m: undefined };
        const known: Yard = { ...yard, line: { ...yard.line, material: 'clay' } };
        const width = (more: Readonly<Record<string, unknown>>) =>
          scoreAll(contextFor(known, more)).logSd.reduce((widest, sd) => Math.max(widest, sd), 0);
        fc.pre(scoreAll(contextFor(known)).expected.some((e) => e > 1e-6));
        expect(width(blind)).toBeGreaterThan(width({}));
      }),
      RUNS,
    );
  });
});
