import { describe, expect, it } from 'vitest';
import type { LineWater } from '../../../packages/core/src/model/water-result.js';
import { warningsOf } from '../../../packages/core/src/water/warnings.js';

const range = (low: number, mid: number, high: number) => ({ low, mid, high });
const one = (value: number) => range(value, value, value);

/** A line of which nothing is to be said: half full, clean of roots, cleans itself. */
const fine: Partial<LineWater> = {
  slope: 0.01,
  selfCleansing: true,
  selfCleansingIsSure: true,
  selfCleansingSlope: one(0.005),
  designFlowM3s: one(0.001),
  usedShare: one(0.5),
  usedShareWithRoots: null,
  withRootsM3s: null,
  blockage: null,
};
const USUAL = 0.0104;
const warnings = (water: Partial<LineWater> = {}) =>
  warningsOf({ ...fine, ...water } as Omit<LineWater, 'warnings'>, USUAL);

describe('warnings about a line', () => {
  it('are none where it carries what comes and cleans itself', () => {
    expect(warnings()).toEqual([]);
    expect(warnings({ usedShare: range(0.8, 0.9, 1) })).toEqual([]);
    expect(warnings({ usedShare: one(1) })).toEqual([]);
  });

  it('say whether it is too small, or may be', () => {
    expect(warnings({ usedShare: range(0.8, 1.01, 1.3) })).toEqual(['too-small']);
    expect(warnings({ usedShare: range(0.8, 0.9, 1.01) })).toEqual(['may-be-too-small']);
    expect(warnings({ usedShare: null })).toEqual([]);
  });

  it('say where roots make it too small, once it would do without them', () => {
    const withRootsM3s = one(0.0015);
    const roots = { withRootsM3s, usedShareWithRoots: one(1.2) };
    expect(warnings(roots)).toEqual(['too-small-with-roots']);
    expect(warnings({ ...roots, usedShareWithRoots: one(1) })).toEqual([]);
    expect(warnings({ ...roots, usedShare: one(1.1) })).toEqual(['too-small']);
    expect(warnings({ ...roots, usedShare: null })).toEqual([]);
  });

  it('say where roots have shut it, if any water comes', () => {
    const shut = { withRootsM3s: one(0), usedShareWithRoots: null };
    expect(warnings(shut)).toEqual(['too-small-with-roots']);
    expect(warnings({ ...shut, designFlowM3s: one(0) })).toEqual([]);
    expect(warnings({ ...shut, designFlowM3s: null })).toEqual([]);
    expect(warnings({ withRootsM3s: range(0, 0.001, 0.002) })).toEqual([]);
  });

  it('say where roots hold water back', () => {
    const blockage = { headLossM: 0.02 } as LineWater['blockage'];
    expect(warnings({ blockage })).toEqual(['holds-water-back']);
    expect(warnings({ blockage: { headLossM: 0 } as LineWater['blockage'] })).toEqual([]);
  });

  it('say where it does not clean itself, or would not at the usual fall', () => {
    expect(warnings({ selfCleansing: false })).toEqual(['not-self-cleansing']);
    expect(warnings({ selfCleansingIsSure: false })).toEqual(['may-not-clean-itself']);
    const unknown = { slope: null, selfCleansing: null, selfCleansingIsSure: null };
    expect(warnings(unknown)).toEqual([]);
    expect(warnings({ ...unknown, selfCleansingSlope: one(0.011) })).toEqual(['usual-slope-not-enough']);
    expect(warnings({ ...unknown, selfCleansingSlope: one(USUAL) })).toEqual([]);
    expect(warnings({ ...unknown, selfCleansingSlope: null })).toEqual([]);
  });

  it('say first that it does not fall', () => {
    const level = { slope: 0, selfCleansing: null, selfCleansingIsSure: null, selfCleansingSlope: one(0.02) };
    expect(warnings({ ...level, usedShare: null })).toEqual(['no-fall']);
    expect(warnings({ slope: -0.01, selfCleansing: false, usedShare: one(2) })).toEqual([
      'no-fall',
      'too-small',
      'not-self-cleansing',
    ]);
  });
});
