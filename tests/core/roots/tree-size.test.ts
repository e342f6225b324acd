import { describe, expect, it } from 'vitest';
import { crownRadius } from '../../../packages/core/src/roots/crown.js';
import { usualMatureSize } from '../../../packages/core/src/roots/mature-size.js';
import { treeAssumptions, treeSize } from '../../../packages/core/src/roots/tree-size.js';
import { scene } from '../../scenes/scene.js';

const NOW = 2026;

/** A tree of a site, as its file gives it. */
const treeOf = (given: Readonly<Record<string, unknown>>) => {
  const [tree] = scene()
    .tree({ id: 'oak', at: [0, 0], species: 'Quercus rubra', ...given })
    .site().trees;
  if (!tree) throw new Error('no tree');
  const size = treeSize(tree, NOW);
  return { size, assumed: treeAssumptions(tree, size).map(({ path, value }) => [path, value]) };
};

describe('the size of a tree', () => {
  it('is what was measured, and then nothing is assumed', () => {
    const { size, assumed } = treeOf({ dbh_cm: 50, canopy_radius_m: 6 });
    expect(size).toMatchObject({ stemDiameter: 0.5, crownRadius: 6, stemBasis: 'measured', extraLogSd: 0 });
    expect(assumed).toEqual([]);
  });

  it('takes the crown from the trunk', () => {
    const { size, assumed } = treeOf({ dbh_cm: 50 });
    expect(size.crownRadius).toBe(crownRadius(size.row, size.stemDiameter));
    // half of 0.27 (McPherson and others 2016), since it enters half of the reach
    expect(size.extraLogSd).toBeCloseTo(0.135, 12);
    expect(assumed).toEqual([['trees/oak/canopyRadiusM', Math.round(100 * size.crownRadius) / 100]]);
  });

  it('takes the trunk from the crown', () => {
    const { size, assumed } = treeOf({ canopy_radius_m: 5 });
    expect(size.stemBasis).toBe('canopy');
    expect(crownRadius(size.row, size.stemDiameter)).toBeCloseTo(5, 2);
    expect(size.extraLogSd).toBe(0.5);
    expect(assumed).toEqual([['trees/oak/stemDiameterM', Math.round(1000 * size.stemDiameter) / 1000]]);
  });

  it('grows a planted tree from an inch by the rate of its kind', () => {
    const { size } = treeOf({ planted: 2006 });
    expect(size.stemBasis).toBe('planting');
    // planted in the middle of the year: 19.5 years
    expect(size.stemDiameter).toBeCloseTo(0.025 + 0.195 * size.row.dbhGrowthCmPerYear.value, 12);
    // 0.5 and 0.135 are of different causes
    expect(size.extraLogSd).toBeCloseTo(0.517904, 6);
    // planted next year: a sapling
    expect(treeOf({ planted: 2027 }).size.stemDiameter).toBe(0.025);
  });

  it('is that of a usual mature tree where nothing is known', () => {
    const { size, assumed } = treeOf({});
    expect(size.stemBasis).toBe('usual');
    expect(size.stemDiameter).toBe(usualMatureSize(size.row).stemDiameter);
    expect(assumed.map(([path]) => path)).toEqual(['trees/oak/stemDiameterM', 'trees/oak/canopyRadiusM']);
  });

  it('of a palm is not read off its crown or its age', () => {
    const { size } = treeOf({ species: 'Phoenix canariensis', canopy_radius_m: 3, planted: 2010 });
    expect(size).toMatchObject({ stemBasis: 'usual', stemDiameter: 0.35, crownRadius: 3 });
  });

  it('is less sure where the kind is a guess', () => {
    const known = { dbh_cm: 50, canopy_radius_m: 6 };
    const { size, assumed } = treeOf({ ...known, species: 'some tree' });
    expect(size.extraLogSd).toBe(0.3);
    expect(assumed).toEqual([['trees/oak/species', size.row.common[0]]]);
    expect(treeOf({ ...known, species: 'Quercus' }).size.extraLogSd).toBe(0);
  });
});
