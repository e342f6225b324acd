import { describe, expect, it } from 'vitest';
import type { SegmentResult } from '../../../packages/core/src/model/result.js';
import { rank } from '../../../packages/core/src/risk/rank.js';
import { scene } from '../../scenes/scene.js';

type Entries = SegmentResult['expectedEntries'];

/** Entries expected in a line of 24 m beside one oak, its whole length one segment where nothing else is said. */
function entriesOf(
  drain: Readonly<Record<string, unknown>>,
  fitting?: Readonly<Record<string, unknown>>,
  segmentM = 100,
): Entries {
  const bare = scene()
    .tree({ id: 'oak', at: [12, 2], species: 'Quercus rubra', dbh_cm: 50 })
    .drain({
      path: [
        [0, 0],
        [24, 0],
      ],
      material: 'clay',
      joint: 'mortar',
      piece_m: 1,
      installed: 1996,
      depth_start_m: 0.6,
      depth_end_m: 0.6,
      ...drain,
    });
  const made = fitting ? bare.fitting({ at: [12, 0], ...fitting }) : bare;
  const { segments } = rank(made.site(), { asOf: '2026-07-01', horizonYears: 10, segmentM });
  const sum = (way: keyof Entries): number => segments.reduce((all, s) => all + s.expectedEntries[way], 0);
  return { joints: sum('joints'), slots: sum('slots'), crush: sum('crush') };
}

const plain = entriesOf({});

describe('entries at joints', () => {
  // the table of joints: a mortar joint is 1
  it.each([
    ['open', 1],
    ['snap', 0.8],
    ['taped', 0.5],
    ['band', 0.4],
    ['gasket', 0.25],
    ['solvent', 0.1],
    ['welded', 0.05],
  ])('of kind %s are %d of those at mortar joints', (joint, openness) => {
    expect(entriesOf({ joint }).joints / plain.joints).toBeCloseTo(openness, 9);
  });

  it('are those at gaskets where the joints are sealed, and as many as before where they are known to leak', () => {
    const leaking = entriesOf({ sealed: false }).joints;
    const sealed = entriesOf({ sealed: true }).joints;
    expect(leaking).toBeCloseTo(plain.joints, 12);
    expect(sealed / leaking).toBeCloseTo(0.25, 9);
    // a seal does not make a welded joint worse
    expect(entriesOf({ joint: 'welded', sealed: true }).joints / plain.joints).toBeCloseTo(0.05, 9);
  });

  it('grow with water that stays, by 1.3 and 1.6, and in foul water by 1.7 (Torres 2017)', () => {
    expect(entriesOf({ wet: 'often' }).joints / plain.joints).toBeCloseTo(1.3, 9);
    expect(entriesOf({ wet: 'standing' }).joints / plain.joints).toBeCloseTo(1.6, 9);
    expect(entriesOf({ carries: 'foul' }).joints / plain.joints).toBeCloseTo(1.7, 9);
  });

  it('fall off with depth by a factor e each 1.5 m', () => {
    const deep = entriesOf({ depth_start_m: 2.1, depth_end_m: 2.1 });
    expect(deep.joints / plain.joints).toBeCloseTo(Math.exp(-1), 9);
    expect(deep.crush / plain.crush).toBeCloseTo(Math.exp(-1), 9);
  });

  it('are counted for each joint of a fitting', () => {
    // no joints but those of the fitting: a wye has three, a coupling one
    const at = (type: string): number => entriesOf({ joint: 'none' }, { type }).joints;
    expect(at('wye') / at('coupling')).toBeCloseTo(3, 9);
  });

  it('are the same however the line is cut, those at its ends and at the cuts too', () => {
    for (const at of [
      [0, 0],
      [12, 0],
      [24, 0],
    ]) {
      const only = entriesOf({ joint: 'none' }, { type: 'wye', at }).joints;
      expect(only).toBeGreaterThan(0);
      for (const segmentM of [1, 3, 7]) {
        const cut = entriesOf({ joint: 'none' }, { type: 'wye', at }, segmentM).joints;
        expect(cut / only, `${at} in parts of ${segmentM} m`).toBeCloseTo(1, 9);
        expect(entriesOf({}, undefined, segmentM).joints / plain.joints).toBeCloseTo(1, 9);
      }
    }
  });
});

describe('entries along the pipe', () => {
  it('through slots go with their openness: fabric takes it from 1.2 to 0.7', () => {
    const bare = entriesOf({ perforated: true });
    const wrapped = entriesOf({ perforated: true, wrapped: true });
    expect(plain.slots).toBe(0);
    expect(bare.slots).toBeGreaterThan(0);
    expect(wrapped.slots / bare.slots).toBeCloseTo(0.7 / 1.2, 9);
    expect(bare.joints).toBeCloseTo(plain.joints, 12);
  });

  it('are the same where a straight line is drawn with places between its ends', () => {
    const drawn = (...east: number[]) =>
      entriesOf({ perforated: true, path: [0, ...east, 24].map((at) => [at, 0]) });
    for (const way of ['crush', 'slots'] as const) {
      // the rule lies on the same parts of 3 m, then on shorter ones
      expect(drawn(12)[way] / drawn()[way]).toBeCloseTo(1, 9);
      expect(drawn(3, 9, 12, 21)[way] / drawn()[way]).toBeCloseTo(1, 9);
      expect(drawn(1, 7.7, 7.8, 16)[way] / drawn()[way]).toBeCloseTo(1, 2);
    }
  });

  it('by crushing do not ask what the pipe carries or how it is joined', () => {
    const other = entriesOf({ joint: 'gasket', wet: 'standing', carries: 'foul', perforated: true });
    expect(other.crush).toBeCloseTo(plain.crush, 12);
  });

  it('through slots are what joints a hand apart would let in, by their number', () => {
    // 1.2 mortar joints a metre against 10; joints of 30 to 40 years let in 1.7 times as much as new ones, slots do not
    // age
    const close = entriesOf({ piece_m: 0.1 }).joints;
    expect(entriesOf({ perforated: true }).slots).toBeCloseTo((0.12 * close) / 1.7, 3);
  });
});
