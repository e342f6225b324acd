import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { contextOf, prepareLine } from '../../packages/core/src/risk/context.js';
import { type Horizon, horizonOf } from '../../packages/core/src/risk/horizon.js';
import { addLoad, Load } from '../../packages/core/src/risk/load.js';
import { treeFieldOf } from '../../packages/core/src/risk/tree-field.js';
import { AS_OF, sceneOf, type Yard, yards } from './yard.js';

/**
 * Gauss-Legendre nodes and weights on [-1, 1] by Newton's method on the Legendre polynomial from its recurrence
 * (Abramowitz & Stegun 1964, 22.7.10 and 25.4.29).
 */
function legendreRule(n: number): { nodes: number[]; weights: number[] } {
  const nodes: number[] = [];
  const weights: number[] = [];
  for (let i = n; i >= 1; i--) {
    let x = Math.cos((Math.PI * (i - 0.25)) / (n + 0.5));
    let slope = 0;
    for (let step = 0; step < 50; step++) {
      let [before, now] = [1, x];
      for (let k = 2; k <= n; k++) [before, now] = [now, ((2 * k - 1) * x * now - (k - 1) * before) / k];
      slope = (n * (x * now - before)) / (x * x - 1);
      x -= now / slope;
    }
    nodes.push(x);
    weights.push(2 / ((1 - x * x) * slope * slope));
  }
  return { nodes, weights };
}

const fine = legendreRule(64);

const fineHorizon = (years: number): Horizon => ({
  years,
  yearsAhead: fine.nodes.map((x) => ((x + 1) / 2) * years),
  weights: fine.weights.map((w) => (w / 2) * years),
});

function expectedWith(yard: Yard, more: Readonly<Record<string, unknown>>, horizon: Horizon): number {
  const site = sceneOf(yard, more).site();
  const usual = contextOf(site, { asOf: AS_OF, segmentM: yard.segmentM, horizonYears: horizon.years });
  // the search distance follows the last moment of a rule: the same for both, so that only the rules differ
  const { searchM, index } = usual.field;
  const field = { ...treeFieldOf(site, usual.nowYear, horizon), searchM, index };
  const context = { ...usual, horizon, field };
  const prepared = prepareLine(context, context.lines.at(0));
  const { first } = prepared.inputs.openings;
  const load = new Load(context.field.moments, prepared.near.count);
  addLoad(prepared.inputs, 0, first[prepared.line.segments.length] as number, load);
  return load.total;
}

describe('the rule of sixty-four points', () => {
  it('integrates an exponential to the last digits', () => {
    const { yearsAhead, weights } = fineHorizon(10);
    const sum = yearsAhead.reduce((total, t, k) => total + Math.exp(-t) * (weights[k] as number), 0);
    expect(sum).toBeCloseTo(1 - Math.exp(-10), 12);
  });
});

const dugOrNot = fc.option(fc.integer({ min: 1990, max: 2026 }), { nil: null });

/** How far the rule in use is off one of sixty-four points, as a share. */
function offBy(yard: Yard, dug: number | null): number {
  const more = dug === null ? {} : { installed: 1960, dug };
  const exact = expectedWith(yard, more, fineHorizon(10));
  return exact === 0 ? 0 : Math.abs(expectedWith(yard, more, horizonOf(10)) / exact - 1);
}

// from a line dug this year, whose roots are only coming back, to an old one past which the trees grow up
describe('the rule over the horizon', () => {
  it('is within a hundredth of one of sixty-four points over ten years', () => {
    fc.assert(
      fc.property(yards('missing'), dugOrNot, (yard, dug) => {
        expect(offBy(yard, dug)).toBeLessThan(0.01);
      }),
      { seed: 20_261_125, numRuns: 200 },
    );
  });

  // a stem of a hand's width under a grown crown: its crown is taken to double, and stops short at the mature size
  it('is within a hundredth and a half where the canopy does not go with the trunk', () => {
    fc.assert(
      fc.property(yards('measured'), dugOrNot, (yard, dug) => {
        expect(offBy(yard, dug)).toBeLessThan(0.015);
      }),
      { seed: 20_261_125, numRuns: 200 },
    );
  });
});
