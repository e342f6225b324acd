import { describe, expect, it } from 'vitest';
import { contextOf, type RiskContext } from '../../../packages/core/src/risk/context.js';
import { exposureOf } from '../../../packages/core/src/risk/exposure.js';
import { rank } from '../../../packages/core/src/risk/rank.js';
import { type Scene, scene } from '../../scenes/scene.js';

const garden = (drain: Readonly<Record<string, unknown>> = {}): Scene =>
  scene()
    .drain({
      id: 'main',
      path: [
        [24, 0],
        [0, 0],
      ],
      flow: 'as-drawn',
      material: 'clay',
      installed: '1986-11-25',
      ...drain,
    })
    .tree({ at: [3, 3], species: 'Acer rubrum', planted: '1980' })
    .tree({ at: [17, -5], species: 'Betula nigra', planted: '1975' });

const contextFor = (made: Scene, asOf = '2026-11-25'): RiskContext => contextOf(made.site(), { asOf });
const INSTALLED = 1986 + 328 / 365;

function entryIn(context: RiskContext, stretch: readonly [number, number], from: number, to: number): number {
  return exposureOf(context, context.lines.at(0), stretch, from, to).entry;
}

describe('expected entries of the past', () => {
  it('add up over the stretches of a line', () => {
    const context = contextFor(garden());
    const line = context.lines.at(0);
    const ends = [0, 5, 5.3, 11, 20, 24];
    const parts = ends
      .slice(1)
      .map((to, i) => exposureOf(context, line, [ends[i] as number, to], INSTALLED, 2020));
    const whole = exposureOf(context, line, [0, 24], INSTALLED, 2020);
    expect(parts.reduce((sum, e) => sum + e.entry, 0) / whole.entry).toBeCloseTo(1, 12);
    // crushing goes by a two-point rule along the pipe, within 0.1 % on metres
    expect(parts.reduce((sum, e) => sum + e.crush, 0) / whole.crush).toBeCloseTo(1, 3);
  });

  it('are nothing where there is no joint, and one joint wherever its stretch is cut', () => {
    const context = contextFor(garden({ piece_m: 6 }));
    expect(entryIn(context, [0.5, 5.5], INSTALLED, 2020)).toBe(0);
    const around = entryIn(context, [5.5, 6.5], INSTALLED, 2020);
    expect(around).toBeGreaterThan(0);
    expect(entryIn(context, [5.9, 11], INSTALLED, 2020) / around).toBeCloseTo(1, 12);
  });

  it('hold the joint at the very end of the line', () => {
    const context = contextFor(garden({ joint: 'none' }).fitting({ type: 'coupling', at: [24, 0] }));
    expect(entryIn(context, [12, context.lines.at(0).lengthM], INSTALLED, 2020)).toBeGreaterThan(0);
    expect(entryIn(context, [12, 23.9], INSTALLED, 2020)).toBe(0);
  });

  it('add up over the years where the ground is long grown over', () => {
    const context = contextFor(garden({ installed: '1930' }));
    const halves = entryIn(context, [0, 24], 1996, 2006) + entryIn(context, [0, 24], 2006, 2016);
    expect(halves / entryIn(context, [0, 24], 1996, 2016)).toBeCloseTo(1, 4);
  });

  // a ranking on the day the line was laid looks forward over the same years, by its own way of working
  it('are what a ranking would have foretold on the day the line was laid', () => {
    const made = garden();
    const foretold = rank(made.site(), { asOf: '1986-11-25', horizonYears: 30 }).segments;
    const sum = foretold.reduce((total, s) => total + s.expectedEntries.joints + s.expectedEntries.slots, 0);
    const context = contextFor(made);
    const seen = entryIn(context, [0, 24], INSTALLED, INSTALLED + 30);
    // thirty years in one four-point rule there, in three here; both trees follow their planting
    expect(seen / sum).toBeGreaterThan(0.98);
    expect(seen / sum).toBeLessThan(1.02);
  });

  it('leave out what was done to the line later', () => {
    const plain = entryIn(contextFor(garden()), [0, 24], INSTALLED, 2015);
    expect(entryIn(contextFor(garden({ dug: 2020, cut: 2021 })), [0, 24], INSTALLED, 2015)).toBe(plain);
    expect(entryIn(contextFor(garden({ dug: 2010 })), [0, 24], 2010.5, 2015)).toBeLessThan(
      entryIn(contextFor(garden()), [0, 24], 2010.5, 2015),
    );
  });

  it('are nothing over no time, no length, or backwards', () => {
    const context = contextFor(garden());
    expect(entryIn(context, [0, 24], 2015, 2015)).toBe(0);
    expect(entryIn(context, [0, 24], 2015, 2010)).toBe(0);
    expect(entryIn(context, [3, 3], 2010, 2015)).toBe(0);
  });

  it('do not depend on what was learned or seen', () => {
    const context = contextFor(garden());
    const seen = contextFor(
      garden().finding({ drain: 'main', at_m: 0, to_m: 24, seen: 'clear', date: 2020 }),
    );
    expect(entryIn(seen, [0, 24], INSTALLED, 2015)).toBe(entryIn(context, [0, 24], INSTALLED, 2015));
  });
});
