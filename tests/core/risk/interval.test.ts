import { describe, expect, it } from 'vitest';
import type { LineModel } from '../../../packages/core/src/line/line-model.js';
import type { LineClock } from '../../../packages/core/src/risk/clock.js';
import {
  chanceOf,
  intervalOf,
  lineLogSd,
  logSdOf,
  ownLogSdOf,
  treesLogSd,
} from '../../../packages/core/src/risk/interval.js';
import { Load } from '../../../packages/core/src/risk/load.js';
import type { NearTrees } from '../../../packages/core/src/risk/near-trees.js';
import { NO_SCALE } from '../../../packages/core/src/risk/rate-scale.js';
import type { TreeField } from '../../../packages/core/src/risk/tree-field.js';
import { VIGOUR_CLASSES, WAY_CRUSH, WAY_JOINT, WAY_SLOT } from '../../../packages/core/src/risk/ways.js';

/** Entries by way and vigour class (0 to 4), and the pulls of reach and clock. */
function loadOf(
  parts: readonly (readonly [way: number, vigour: number, entries: number])[],
  reach = 0,
  clock = 0,
) {
  const load = new Load(1, 2);
  for (const [way, vigour, entries] of parts) {
    load.total += entries;
    load.byWayAndVigour[way * VIGOUR_CLASSES + vigour] = entries;
  }
  load.reachPull = reach * load.total;
  load.clockPull = clock * load.total;
  return load;
}

describe('a chance', () => {
  it('is that of any event in a Poisson count', () => {
    expect(chanceOf(0)).toBe(0);
    expect(chanceOf(Math.LN2)).toBeCloseTo(0.5, 12);
  });

  it('has an interval of 1.2816 deviations of the logarithm either way', () => {
    // exp(-+0.6408) entries
    expect(intervalOf(1, 0.5).low).toBeCloseTo(0.40956, 4);
    expect(intervalOf(1, 0.5).high).toBeCloseTo(0.85012, 4);
    expect(intervalOf(1, 0.5).likely).toBeCloseTo(1 - Math.exp(-1), 12);
  });
});

describe('the spread of entries', () => {
  // judgement: rate 0.7, openness of a joint, slots and crushing 0.7, vigour 0.35, reach 0.25, regrowth 0.35
  it('at joints of one kind of tree is of rate, joint and vigour', () => {
    expect(logSdOf(loadOf([[WAY_JOINT, 2, 3]]), 0, NO_SCALE)).toBeCloseTo(Math.hypot(0.7, 0.7, 0.35), 12);
  });

  it('through slots and by crushing is of theirs', () => {
    expect(logSdOf(loadOf([[WAY_SLOT, 0, 1]]), 0, NO_SCALE)).toBeCloseTo(Math.hypot(0.7, 0.7, 0.35), 12);
    expect(logSdOf(loadOf([[WAY_CRUSH, 4, 1]]), 0, NO_SCALE)).toBeCloseTo(Math.hypot(0.7, 0.35), 12);
  });

  it('is less where causes are several: half joints of mild trees, half crushing by vigorous ones', () => {
    const load = loadOf([
      [WAY_JOINT, 0, 1],
      [WAY_CRUSH, 4, 1],
    ]);
    expect(logSdOf(load, 0, NO_SCALE)).toBeCloseTo(Math.hypot(0.35, 0.35, 0.35, 0.175, 0.175), 12);
  });

  it('hangs on reach and clock by their elasticities, and on what is not known', () => {
    const load = loadOf([[WAY_JOINT, 2, 3]], 0.8, -0.5);
    expect(ownLogSdOf(load, 0.6)).toBeCloseTo(Math.hypot(0.8 * 0.25, 0.5 * 0.35, 0.6, 0.35), 12);
    expect(logSdOf(load, 0.6, NO_SCALE)).toBeCloseTo(
      Math.hypot(0.7, 0.7, 0.8 * 0.25, 0.5 * 0.35, 0.6, 0.35),
      12,
    );
  });

  it('is narrower in the rates where findings say so', () => {
    const scale = { entry: { factor: 2, narrow: 0.5 }, crush: { factor: 1, narrow: 0.25 } };
    expect(logSdOf(loadOf([[WAY_JOINT, 2, 3]]), 0, scale)).toBeCloseTo(Math.hypot(0.35, 0.35, 0.35), 12);
    expect(logSdOf(loadOf([[WAY_CRUSH, 2, 3]]), 0, scale)).toBeCloseTo(Math.hypot(0.175, 0.35), 12);
  });

  it('is none where nothing is expected', () => {
    expect(logSdOf(loadOf([]), 0.5, NO_SCALE)).toBe(0);
    expect(ownLogSdOf(loadOf([]), 0.5)).toBe(0);
  });
});

describe('the spread of what is not known', () => {
  it('of trees goes by their shares of the load', () => {
    const load = loadOf([[WAY_JOINT, 2, 4]]);
    load.byTree[0] = 1;
    load.byTree[1] = 3;
    const near = { count: 2, number: Int32Array.of(7, 3) } as Partial<NearTrees> as NearTrees;
    // trees 7 and 3 are of the patterns 1 and 0
    const pattern = Uint32Array.of(2, 2, 2, 0, 2, 2, 2, 1);
    const extraLogSd = Float64Array.of(0.3, 0.5, 9);
    const field = { pattern, extraLogSd } as Partial<TreeField> as TreeField;
    expect(treesLogSd(load, near, field)).toBeCloseTo(Math.hypot(0.125, 0.225), 12);
    expect(treesLogSd(loadOf([]), near, field)).toBe(0);
  });

  it('of a line adds up over material, age and depth', () => {
    const of = (materialKnown: boolean, ageKnown: boolean, depthKnown: boolean): number =>
      lineLogSd({ drain: { materialKnown }, depthKnown } as LineModel, { ageKnown } as LineClock);
    const [material, age, depth] = [of(false, true, true), of(true, false, true), of(true, true, false)];
    expect(of(true, true, true)).toBe(0);
    for (const one of [material, age, depth]) expect(one).toBeGreaterThan(0);
    expect(of(false, false, false)).toBeCloseTo(Math.hypot(material, age, depth), 12);
  });
});
