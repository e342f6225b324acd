import { describe, expect, it } from 'vitest';
import { factorsOf } from '../../../packages/core/src/risk/factors.js';
import { scene } from '../../scenes/scene.js';

const AS_OF = '2026-07-01';
const OPTIONS = { asOf: AS_OF, horizonYears: 10, segmentM: 100 };

/** The alder of full size (roots reach 21.55 m, worked by hand in load-by-hand.test.ts) 6 m from a line. */
const site = (drain: Readonly<Record<string, unknown>> = {}) =>
  scene()
    .tree({ id: 'alder', at: [5, 6], species: 'Alnus glutinosa', dbh_cm: 160, canopy_radius_m: 5 })
    .tree({ id: 'twin', at: [5, -12], species: 'Alnus glutinosa', dbh_cm: 160, canopy_radius_m: 5 })
    .drain({
      id: 'main',
      path: [
        [0, 0],
        [10, 0],
      ],
      material: 'clay',
      joint: 'gasket',
      installed: '2001-07-01',
      dug: '2020-07-01',
      depth_start_m: 0.6,
      depth_end_m: 3.6,
      ...drain,
    })
    .site();

const values = (drain = {}, trees = ['alder'], segment = 'main/1') =>
  new Map(factorsOf(site(drain), OPTIONS, segment, trees).map(({ what, value }) => [what, value]));
const close = (value: number | undefined, wanted: number) => expect(value).toBeCloseTo(wanted, 3);

describe('the numbers behind a segment', () => {
  const found = values();

  it('are those of its line: openness, age, depth, water, stiffness', () => {
    const lines = [...found].slice(0, 7).map(([, value]) => value);
    const [rate, openness, age, depth, below, water, psi] = lines;
    expect([rate, openness, water]).toEqual([0.006, 0.25, 1]);
    // 25 years and the first moment of the horizon, 0.69 years on
    close(age, 1 + 25.694 / 50);
    // 2.1 m in the middle: e^-1 of what comes at 0.6 m; 0.966^210 in undisturbed ground (Jackson 1996)
    close(depth, Math.exp(-1));
    expect(below).toBeCloseTo(0.000703, 5);
    expect(psi).toBeGreaterThan(100);
  });

  it('are those of its trees: vigour, reach, what is left at that distance, what has grown back', () => {
    const [vigour, weight, reach, left, back] = [...found].slice(7).map(([, value]) => value);
    expect([vigour, weight]).toEqual([3, 1]);
    close(reach, 21.55);
    close(left, Math.exp((-3 * 6) / 21.55));
    // six years and 0.69 after the dig, of eight
    close(back, 1 - Math.exp(-((6.694 / 8) ** 2)));
    expect([...found.keys()].filter((what) => what.includes('6.0 m'))).toHaveLength(1);
  });

  it('come in the order in which the trees are asked for, and only theirs', () => {
    const order = (trees: string[]) => [
      ...new Set(
        factorsOf(site(), OPTIONS, 'main/1', trees)
          .slice(7)
          .map(({ what }) => /\((\w+)\)/.exec(what)?.[1]),
      ),
    ];
    expect(order(['twin', 'alder'])).toEqual(['twin', 'alder']);
    expect(order(['alder', 'twin'])).toEqual(['alder', 'twin']);
    expect(order(['nobody'])).toEqual([]);
  });

  it('name foul water where there is any, and a joint at fittings where the run is in one piece', () => {
    expect(values({ carries: 'foul' }).get('foul water')).toBe(1.7);
    expect(found.has('foul water')).toBe(false);
    expect(values({ joint: 'none' }).get('openness of a push-fit or snap coupler')).toBe(0.8);
    expect(values({ wet: 'standing' }).get('water in the line')).toBe(1.6);
  });

  it('are none where there is no such segment', () => {
    expect(values({}, [], 'main/2').size).toBe(0);
    expect(values({}, [], 'other/1').size).toBe(0);
  });
});
