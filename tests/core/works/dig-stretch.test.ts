import { describe, expect, it } from 'vitest';
import { layOutLines } from '../../../packages/core/src/line/line-model.js';
import type { TreeZones } from '../../../packages/core/src/model/result.js';
import { digStretch, type Laying, surroundingsOf } from '../../../packages/core/src/works/dig-stretch.js';
import { type Place, scene } from '../../scenes/scene.js';

interface Given {
  /** Stem of 40 cm at the middle of the line, this far off it. */
  readonly treeM?: number;
  readonly obstacle?: 'paving' | 'building' | 'pool' | 'wall';
  readonly laying?: Partial<Laying>;
}

/** A line of 20 m, 0.6 m deep at its outlet end and 1 m at its upper end. */
function dug({ treeM, obstacle, laying }: Given = {}, fromM = 0, toM = 20) {
  const made = scene().drain({
    path: [
      [20, 0],
      [0, 0],
    ],
    material: 'pvc-sch40',
    size_mm: 100,
    flow: 'as-drawn',
    depth_start_m: 1,
    depth_end_m: 0.6,
  });
  const over: Place[] = [
    [5, -3],
    [10, -3],
    [10, 3],
    [5, 3],
    [5, -3],
  ];
  if (obstacle) made.obstacle({ type: obstacle, path: over });
  if (treeM !== undefined) made.tree({ id: 'oak', at: [10, treeM], species: 'Quercus rubra', dbh_cm: 40 });
  const site = made.site();
  const [lon = 0, lat = 0] = site.trees[0]?.position ?? [];
  const zones = site.trees.map(
    () =>
      ({
        id: 'oak',
        lon,
        lat,
        stemDiameterM: 0.4,
        structuralM: 2.25,
        protectionM: 4.8,
        driplineM: 4,
      }) as TreeZones,
  );
  const around = surroundingsOf(site, layOutLines(site, 100).at(0), zones);
  return digStretch(around, fromM, toM, {
    pipe: 'pvc-sch40',
    sizeM: 0.1,
    perforated: false,
    wrapped: false,
    bedding: 'gravel',
    takesOut: true,
    fittings: [{ type: 'coupling', count: 2 }],
    handDigDiameters: 6,
    ...laying,
  });
}

/** 4.5 in outside (ASTM D1785) and 4 in of stone under it. */
const UNDER_M = (4.5 + 4) * 0.0254;

describe('digging a line up in its old place', () => {
  it('is one dig where nothing stands near, from end to end', () => {
    const { digs, stretches } = dug();
    expect(digs).toHaveLength(1);
    const [dig] = digs;
    expect(dig).toMatchObject({
      surface: 'lawn',
      bored: false,
      handDig: false,
      bedding: 'gravel',
      oldPipeM: 20,
    });
    expect(dig?.lengthM).toBeCloseTo(20, 5);
    expect(dig?.depthStartM).toBeCloseTo(0.6 + UNDER_M, 6);
    expect(dig?.depthEndM).toBeCloseTo(1 + UNDER_M, 6);
    expect(stretches).toMatchObject([{ bored: false, topDepthM: null }]);
  });

  it('is as deep as the line there, and without stone no deeper than the pipe', () => {
    const [dig] = dug({ laying: { bedding: 'native' } }, 5, 10).digs;
    expect(dig?.lengthM).toBeCloseTo(5, 9);
    expect(dig?.depthStartM).toBeCloseTo(0.7 + 4.5 * 0.0254, 5);
    expect(dig?.depthEndM).toBeCloseTo(0.8 + 4.5 * 0.0254, 5);
    // opened only: nothing is laid in it
    const [opened] = dug({ laying: { pipe: null } }, 5, 10).digs;
    expect(opened?.depthStartM).toBeCloseTo(0.7 + 4.5 * 0.0254, 5);
    expect(dug({ laying: { takesOut: false } }).digs[0]?.oldPipeM).toBe(0);
  });

  it('is by hand within six trunk diameters of a stem', () => {
    const { digs } = dug({ treeM: 2 });
    expect(digs.map(({ handDig, bored }) => [handDig, bored])).toEqual([
      [false, false],
      [true, false],
      [false, false],
    ]);
    // the near side of the trench comes within 2.4 m along the chord; steps of a quarter of a metre at either end
    const half = Math.sqrt((2.4 + (digs[0]?.widthM as number) / 2) ** 2 - 4);
    const byHand = digs[1]?.lengthM as number;
    expect(byHand).toBeGreaterThanOrEqual(2 * half);
    expect(byHand).toBeLessThanOrEqual(2 * half + 0.5);
    expect(dug({ treeM: 2, laying: { handDigDiameters: 3 } }).digs).toHaveLength(1);
  });

  it('is a bore within three trunk diameters (Smiley 2008), which takes no pipe out and has no stone', () => {
    const { digs, stretches } = dug({ treeM: 0.9 });
    expect(digs.map(({ handDig, bored }) => (bored ? 'bore' : handDig ? 'hand' : 'machine'))).toEqual([
      'machine',
      'hand',
      'bore',
      'hand',
      'machine',
    ]);
    const half = Math.sqrt((1.2 + (digs[0]?.widthM as number) / 2) ** 2 - 0.81);
    const bored = digs[2]?.lengthM as number;
    expect(bored).toBeGreaterThanOrEqual(2 * half);
    expect(bored).toBeLessThanOrEqual(2 * half + 0.5);
    expect(digs[2]).toMatchObject({ oldPipeM: 0, bedding: 'native' });
    // half way up the line the pipe's top is 0.8 m deep
    expect(stretches[2]?.topDepthM).toBeCloseTo(0.8, 2);
    expect(stretches[1]?.topDepthM).toBeNull();
    // a tree a few inches further off is dug by hand and not bored
    expect(dug({ treeM: 1.9 }).digs.some(({ bored }) => bored)).toBe(false);
  });

  it('adds up to the whole line, its fittings once', () => {
    const { digs, stretches } = dug({ treeM: 0.9, obstacle: 'paving' });
    expect(digs.reduce((sum, { lengthM }) => sum + lengthM, 0)).toBeCloseTo(20, 5);
    expect(stretches).toHaveLength(digs.length);
    expect(digs.map(({ fittings }) => fittings.length)).toEqual([1, ...digs.slice(1).map(() => 0)]);
  });

  it('opens paving, goes under a building or a pool, and past a wall', () => {
    const paved = dug({ obstacle: 'paving' }).digs;
    expect(paved.map(({ surface, bored }) => [surface, bored])).toEqual([
      ['lawn', false],
      ['paving', false],
      ['lawn', false],
    ]);
    expect(paved[1]?.lengthM).toBeCloseTo(5, 0);
    for (const built of ['building', 'pool'] as const) {
      expect(dug({ obstacle: built }).digs.map(({ bored }) => bored)).toEqual([false, true, false]);
    }
    expect(dug({ obstacle: 'wall' }).digs).toHaveLength(1);
  });
});
