import { planeFor } from '@rootreach/core';
import { describe, expect, it } from 'vitest';
import { areaM2, shifted, spotOf } from '../../../apps/map/src/draw/flat.js';
import { squareUp } from '../../../apps/map/src/draw/square-up.js';
import { type At, CORNER } from './lot.js';

const ringOf = (spots: readonly (readonly [number, number])[]) =>
  spots.map(([x, y]) => shifted(CORNER, x, y));

/** Cosine of the angle at each corner. */
function cosines(ring: readonly At[]): number[] {
  const plane = planeFor(ring);
  const spots = ring.map((at) => spotOf(plane, at));
  return spots.map((spot, i) => {
    const before = spots[(i + spots.length - 1) % spots.length] as readonly [number, number];
    const after = spots[(i + 1) % spots.length] as readonly [number, number];
    const [ax, ay] = [before[0] - spot[0], before[1] - spot[1]];
    const [bx, by] = [after[0] - spot[0], after[1] - spot[1]];
    return (ax * bx + ay * by) / (Math.hypot(ax, ay) * Math.hypot(bx, by));
  });
}

describe('squaring up', () => {
  it('makes every corner of a crooked house a right angle and keeps its size', () => {
    const crooked = ringOf([
      [0, 0],
      [12, 0.6],
      [11.6, 5],
      [16, 5.3],
      [15.7, 11],
      [-0.4, 10.4],
    ]);
    const squared = squareUp(crooked);
    expect(squared).toHaveLength(6);
    for (const cosine of cosines(squared ?? [])) expect(Math.abs(cosine)).toBeLessThan(1e-6);
    expect(Math.abs(areaM2(squared ?? []) / areaM2(crooked) - 1)).toBeLessThan(0.05);
  });

  it('takes three corners as those of a rectangle', () => {
    const squared = squareUp(
      ringOf([
        [0, 0],
        [10, 0],
        [10.2, 6],
      ]),
    );
    expect(squared).toHaveLength(4);
    for (const cosine of cosines(squared ?? [])) expect(Math.abs(cosine)).toBeLessThan(1e-6);
    expect(areaM2(squared ?? [])).toBeGreaterThan(55);
  });

  it('drops a corner in the middle of a wall, and leaves what is square as it is', () => {
    const ring = ringOf([
      [0, 0],
      [5, 0.05],
      [10, 0],
      [10, 6],
      [0, 6],
    ]);
    expect(squareUp(ring)).toHaveLength(4);
    const square = ring.toSpliced(1, 1);
    const again = squareUp(square) ?? [];
    for (const [i, at] of square.entries()) {
      expect(again[i]?.[0]).toBeCloseTo(at[0], 9);
      expect(again[i]?.[1]).toBeCloseTo(at[1], 9);
    }
  });

  it('says so where nothing is left to square', () => {
    expect(
      squareUp(
        ringOf([
          [0, 0],
          [5, 0],
        ]),
      ),
    ).toBeNull();
    expect(
      squareUp(
        ringOf([
          [0, 0],
          [5, 0.01],
          [9, 0],
          [4, -0.01],
        ]),
      ),
    ).toBeNull();
  });
});
