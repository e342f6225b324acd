import { describe, expect, it } from 'vitest';
import type { Choice, ChoiceId } from '../../../packages/core/src/model/works.js';
import { decide } from '../../../packages/core/src/works/decide.js';
import { type Place, scene } from '../../scenes/scene.js';

const AS_OF = '2026-07-01';

interface Given {
  /** From the stem of 40 cm to the line, north of its middle. */
  readonly treeM?: number;
  readonly wye?: Place;
  readonly depthM?: number;
}

/** A clay line of 20 m; 4 in nominal is 5.08 in (1.27 x) outside. */
function choices({ treeM = 4, wye, depthM = 0.6 }: Given, stretch = {}): (id: ChoiceId) => Choice {
  const made = scene()
    .tree({ id: 'oak', at: [10, treeM], species: 'Quercus rubra', dbh_cm: 40 })
    .drain({
      id: 'main',
      path: [
        [20, 0],
        [0, 0],
      ],
      material: 'clay',
      size_mm: 100,
      flow: 'as-drawn',
      installed: 1990,
      depth_start_m: depthM,
      depth_end_m: depthM,
    });
  if (wye) made.fitting({ id: 'W', type: 'wye', at: wye });
  const result = decide(made.site(), { drain: 'main', ...stretch }, { asOf: AS_OF });
  return (id) => result.choices.find((one) => one.id === id) as Choice;
}

const OUTSIDE_M = 1.27 * 0.1;

describe('a root barrier', () => {
  it('runs along the stretch and 3 m past its ends, a foot below the pipe', () => {
    const { possible, digs } = choices({}, { fromM: 8, toM: 12 })('barrier');
    expect(possible).toBe(true);
    expect(digs).toHaveLength(1);
    expect(digs[0]?.lengthM).toBeCloseTo(10, 6);
    const depthM = 0.6 + OUTSIDE_M + 0.3;
    expect(digs[0]?.depthStartM).toBeCloseTo(depthM, 9);
    expect(digs[0]?.barrierM).toBeCloseTo(depthM, 9);
    expect(digs[0]?.widthM).toBeCloseTo(6 * 0.0254, 12);
  });

  it('ends where the line ends, and goes no deeper than sheets do, 48 in', () => {
    const [dig] = choices({ depthM: 1.5 })('barrier').digs;
    expect(dig?.lengthM).toBeCloseTo(20, 4);
    expect(dig?.depthEndM).toBeCloseTo(48 * 0.0254, 12);
  });

  it('stands between pipe and stem: 0.6 m off the pipe, three diameters off the stem', () => {
    // 4 - 0.6 - half of 6 in is 3.32 m: eight diameters. At 2.4 m from the line 1.72 m are left, dug by hand
    expect(choices({ treeM: 4 })('barrier').digs[0]?.handDig).toBe(false);
    expect(choices({ treeM: 2.4 })('barrier').digs[0]?.handDig).toBe(true);
    // 1.2 m are the least: a stem at 1.9 m has 1.22 m, one at 1.85 m 1.17 m
    expect(choices({ treeM: 1.9 })('barrier').possible).toBe(true);
    expect(choices({ treeM: 1.85 })('barrier').reasons).toEqual(['barrier-too-near-stem']);
    // the same on the other side of the line
    expect(choices({ treeM: -1.9 })('barrier').possible).toBe(true);
    expect(choices({ treeM: -1.85 })('barrier').possible).toBe(false);
  });

  it('leaves what gets through and round: three to six tenths', () => {
    const of = (id: ChoiceId) => choices({})(id).chance?.['10'].likely as number;
    const load = (chance: number): number => -Math.log1p(-chance);
    expect(load(of('barrier')) / load(of('leave'))).toBeLessThan(0.6);
    expect(load(of('barrier')) / load(of('leave'))).toBeGreaterThan(0.3);
  });
});

describe('a basin for a wye', () => {
  it('takes a hole of 1.2 m about it, a basin and three couplings', () => {
    const { possible, digs, work } = choices({ wye: [5, 0], treeM: 8 })('basin-for-wye');
    expect(possible).toBe(true);
    expect(digs.reduce((sum, { lengthM }) => sum + lengthM, 0)).toBeCloseTo(1.2, 6);
    expect(digs[0]?.fittings).toEqual([
      { type: 'basin', count: 1 },
      { type: 'coupling', count: 3 },
    ]);
    expect(work?.fittings).toMatchObject([{ type: 'basin', replaces: 'W' }]);
  });

  it('takes half of that at an end, and none where no wye lies in the stretch', () => {
    const end = choices({ wye: [0, 0], treeM: 8 })('basin-for-wye');
    expect(end.digs.reduce((sum, { lengthM }) => sum + lengthM, 0)).toBeCloseTo(0.6, 6);
    expect(choices({ wye: [5, 0] }, { fromM: 6, toM: 9 })('basin-for-wye').reasons).toEqual([
      'no-branch-here',
    ]);
    expect(choices({ wye: [6, 0] }, { fromM: 6, toM: 9 })('basin-for-wye').possible).toBe(true);
  });
});

describe('a felled tree and new pipe', () => {
  it('bring what the ranking says of the site without it, its roots fading, or with new joints', () => {
    const of = choices({});
    const [leave, fell, like, heavier] = (
      ['leave', 'fell-tree', 'replace-like', 'replace-heavier'] as const
    ).map((id) => of(id).chance?.['10'].likely as number) as [number, number, number, number];
    expect(fell).toBeLessThan(leave);
    expect(fell).toBeGreaterThan(0);
    expect(like).toBeLessThan(leave);
    expect(heavier).toBeLessThan(like);
    expect(of('fell-tree').tree).toMatchObject({ felled: 'oak', effect: 'tree-goes' });
  });
});
