import { describe, expect, it } from 'vitest';
import { fallOf } from '../../../apps/map/src/draw/fall.js';
import { shifted } from '../../../apps/map/src/draw/flat.js';
import { CORNER, documentOf, point } from './lot.js';

const m = (x: number, y: number) => shifted(CORNER, x, y);
const path = [m(0, 0), m(50, 0)];
const level = (id: string, x: number, values: Record<string, number>) =>
  point({ kind: 'level', id, ...values }, m(x, 1));
const none = documentOf();
const levelled = documentOf(
  level('z1', 0, { elevation_m: 10 }),
  level('z2', 50, { elevation_ft: 9.5 / 0.3048 }),
  level('z3', 25, { elevation_m: 99 }),
);

describe('the fall of a line', () => {
  it('is not known without depths or levels', () => {
    expect(fallOf(none, path, {})).toBeNull();
    expect(fallOf(none, path, { depth_start_m: 0.5 })).toBeNull();
    expect(fallOf(levelled, [m(0, 0), m(20, 40)], {})).toBeNull();
  });

  it('on level ground is the difference of the depths', () => {
    const fall = fallOf(none, path, { depth_start_ft: 5 / 3, depth_end_m: (5 / 3) * 0.3048 + 0.5 });
    expect(fall?.of).toBe('pipe-on-level-ground');
    expect(fall?.fallM).toBeCloseTo(0.5, 6);
    expect(fall?.slope).toBeCloseTo(0.01, 5);
  });

  it('of the ground is the difference of the levels near its ends, in either unit', () => {
    const fall = fallOf(levelled, path, {});
    expect(fall?.of).toBe('ground');
    expect(fall?.fallM).toBeCloseTo(0.5, 6);
  });

  it('of the pipe adds both, and turns with the flow', () => {
    const depths = { depth_start_m: 0.4, depth_end_m: 0.9 };
    expect(fallOf(levelled, path, depths)).toMatchObject({ of: 'pipe' });
    expect(fallOf(levelled, path, depths)?.fallM).toBeCloseTo(1, 6);
    expect(fallOf(levelled, path, { ...depths, flow: 'reversed' })?.fallM).toBeCloseTo(-1, 6);
  });
});
