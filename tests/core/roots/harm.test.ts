import { describe, expect, it } from 'vitest';
import { type HarmTree, harmOf, type Stretch } from '../../../packages/core/src/roots/harm.js';

/** A trunk of 40 cm (16 in): 1.2, 2.4 and 4.8 m are 3, 6 and 12 diameters; structural radius 2.25 m. */
const oak: HarmTree = {
  id: 'oak',
  x: 0,
  y: 0,
  stemDiameterM: 0.4,
  structuralM: 2.25,
  protectionM: 4.8,
  driplineM: 4,
};

/** A trench or bore of 0.3 m whose near side passes at this distance. */
const passing = (nearM: number, more: Partial<Stretch> = {}): Stretch => ({
  path: [
    [nearM + 0.15, -30],
    [nearM + 0.15, 30],
  ],
  widthM: 0.3,
  bored: false,
  ...more,
});

const harm = (...stretches: Stretch[]) => {
  const [found] = harmOf([oak], stretches);
  if (!found) throw new Error('no tree');
  return found;
};

describe('harm of a trench to a tree', () => {
  it.each([
    [1.1, 'no-dig', ['inside-3-diameters', 'severs-over-25', 'inside-structural']],
    [2.3, 'arborist', ['severs-over-10', 'inside-6-diameters']],
    [3.2, 'arborist', ['severs-over-10', 'inside-12-diameters']],
    [4, 'caution', ['inside-12-diameters']],
    [4.9, 'clear', []],
  ])('at %f m is %s', (nearM, rule, reasons) => {
    const found = harm(passing(nearM));
    expect(found.rule).toBe(rule);
    expect(found.reasons).toEqual(reasons);
    expect(found.nearestM).toBeCloseTo(nearM, 12);
    expect(found.nearestDugM).toBe(found.nearestM);
  });

  it('names the loss: none, minor, major inside the structural roots or over a tenth, too much over a quarter', () => {
    expect(harm(passing(5)).encroachment).toBe('none');
    expect(harm(passing(4)).encroachment).toBe('minor');
    expect(harm(passing(3)).encroachment).toBe('major');
    expect(harm(passing(1.5)).encroachment).toBe('too-much');
    // a short pit by the trunk takes little of the circle but stands among the roots that hold the tree
    const pit = harm({
      path: [
        [2, 0],
        [2.1, 0],
      ],
      widthM: 0.3,
      bored: false,
    });
    expect(pit.severedShare).toBeLessThan(0.01);
    expect(pit).toMatchObject({ encroachment: 'major', rule: 'arborist' });
  });

  it('takes all of the circle where a trench runs over the stem', () => {
    expect(harm(passing(-0.15))).toMatchObject({ severedShare: 1, rule: 'no-dig', encroachment: 'too-much' });
  });

  it('adds up on two sides', () => {
    const one = harm(passing(3)).severedShare;
    const other = passing(3, {
      path: [
        [-3.15, -30],
        [-3.15, 30],
      ],
    });
    expect(harm(passing(3), other).severedShare).toBeCloseTo(2 * one, 9);
  });
});

describe('harm of a bore', () => {
  const north: Stretch = {
    path: [
      [1, 4.5],
      [1, 30],
    ],
    widthM: 0.3,
    bored: false,
  };
  const south: Stretch = {
    path: [
      [1, -4.5],
      [1, -30],
    ],
    widthM: 0.3,
    bored: false,
  };
  const under = (topDepthM: number | null): Stretch => ({
    path: [
      [1, -4.5],
      [1, 4.5],
    ],
    widthM: 0.15,
    bored: true,
    topDepthM,
  });

  it('severs nothing between its pits and asks for an arborist below the structural roots', () => {
    const found = harm(north, under(0.7), south);
    // a trunk of 16 in: no open trench nearer than 12 ft, 3.66 m
    expect(found.reasons).toEqual(['inside-structural', 'inside-12-diameters']);
    expect(found.severedShare).toBeLessThan(0.01);
    expect(found.nearestM).toBeCloseTo(0.925, 9);
    expect(found.nearestDugM).toBeCloseTo(Math.hypot(1, 4.5) - 0.15, 9);
  });

  it('is told where it is shallow, of unknown depth, or starts too near', () => {
    expect(harm(north, under(0.5), south).reasons).toContain('bore-too-shallow');
    expect(harm(north, under(null), south).reasons).toContain('bore-depth-unknown');
    const nearer: Stretch = {
      path: [
        [1, 3],
        [1, 30],
      ],
      widthM: 0.3,
      bored: false,
    };
    expect(harm(nearer, under(0.7), south).reasons).toContain('bore-starts-too-near');
  });

  it('is told by what is wrong with it alone', () => {
    // outside the structural roots of 2.25 m, within 4.8 m, far pits
    const past = (topDepthM: number | null): Stretch => ({ ...passing(3), bored: true, topDepthM });
    expect(harm(past(0.7)).reasons).toEqual([]);
    expect(harm(past(0.5)).reasons).toEqual(['bore-too-shallow']);
    expect(harm(past(null)).reasons).toEqual(['bore-depth-unknown']);
    expect(harm(past(null))).toMatchObject({ rule: 'caution', encroachment: 'none', nearestDugM: null });
    expect(harm(past(0.5)).rule).toBe('arborist');
  });

  it('is clear of a tree that it keeps away from', () => {
    const bore: Stretch = { ...passing(6), bored: true, topDepthM: null };
    expect(harm(bore)).toMatchObject({ rule: 'clear', nearestDugM: null, severedShare: 0 });
  });
});

describe('harm', () => {
  it('comes in the order of the trees', () => {
    const trees = [{ ...oak, id: 'far', x: 50 }, oak];
    expect(harmOf(trees, [passing(2.3)]).map(({ id, rule }) => `${id} ${rule}`)).toEqual([
      'far clear',
      'oak arborist',
    ]);
  });

  it('refuses a route of nothing and a trench without width', () => {
    expect(() => harmOf([oak], [])).toThrow(/stretches/);
    expect(() => harmOf([oak], [passing(2, { widthM: 0 })])).toThrow(/width/);
    expect(() => harmOf([oak], [passing(2, { path: [] })])).toThrow(/points/);
  });
});
