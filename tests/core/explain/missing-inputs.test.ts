import { describe, expect, it } from 'vitest';
import { missingInputs } from '../../../packages/core/src/explain/missing-inputs.js';
import { rank } from '../../../packages/core/src/risk/rank.js';
import { scene } from '../../scenes/scene.js';

const line = (properties: object) =>
  scene().drain({
    id: 'a/b',
    path: [
      [0, 0],
      [3, 0],
    ],
    ...properties,
  });
const known = { material: 'clay', installed: 1990, depth_start_m: 0.6, depth_end_m: 0.7 };

const gapsOf = (made: ReturnType<typeof scene>) => {
  const segment = rank(made.site(), { asOf: '2026-11-25' }).segments[0];
  if (!segment) throw new Error('no segment');
  return missingInputs(segment);
};

describe('what is missing about a segment', () => {
  it('is nothing where all was given', () => {
    const tree = { id: 't', at: [1, 2] as const, species: 'Ulmus americana', dbh_cm: 60, canopy_radius_m: 8 };
    expect(gapsOf(line(known).tree(tree))).toEqual([]);
  });

  it('begins with the pipe where nothing of it is known, since that widens the range most', () => {
    const tree = { id: 't', at: [1, 2] as const, species: 'Ulmus americana', dbh_cm: 60 };
    const gaps = gapsOf(line({}).tree(tree));
    expect(gaps.map(({ of, id, field }) => [of, id, field])).toEqual([
      ['line', 'a/b', 'material'],
      ['line', 'a/b', 'installed'],
      ['line', 'a/b', 'depthM'],
      ['tree', 't', 'canopyRadiusM'],
    ]);
  });

  it('counts a tree by its part in the load', () => {
    const near = { id: 'near', at: [1, 2] as const, species: 'Ulmus americana' };
    const far = { id: 'far', at: [1, 14] as const, species: 'Ulmus americana' };
    const gaps = gapsOf(line(known).tree(near).tree(far)).filter(({ field }) => field === 'stemDiameterM');
    expect(gaps.map(({ id }) => id)).toEqual(['near', 'far']);
    expect(gaps.reduce((sum, { logSd }) => sum + logSd, 0)).toBeLessThanOrEqual(0.5 + 1e-9);
  });
});
