import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crossesPath, segmentsCross } from '../../../packages/core/src/geometry/crossing.js';

type Point = readonly [number, number];

/** Twice the signed area of a triangle: whole numbers stay exact. */
const turn = (a: Point, b: Point, c: Point): number =>
  Math.sign((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]));

describe('two stretches', () => {
  it('cross in the middle, touch at an end, or pass each other by', () => {
    expect(segmentsCross(0, 0, 4, 4, 0, 4, 4, 0)).toBe(true);
    expect(segmentsCross(0, 0, 4, 0, 4, 0, 4, 9)).toBe(true);
    expect(segmentsCross(0, 0, 4, 0, 5, -1, 5, 1)).toBe(false);
    expect(segmentsCross(0, 0, 4, 0, 2, 1, 2, 5)).toBe(false);
  });

  it('do not count as crossing where they run side by side', () => {
    expect(segmentsCross(0, 0, 4, 0, 0, 1, 4, 1)).toBe(false);
  });

  // orientation test of textbooks of computational geometry, on whole numbers and without three in a row
  it('cross just when the ends of each lie on both sides of the other', () => {
    const point = fc.tuple(fc.integer({ min: -9, max: 9 }), fc.integer({ min: -9, max: 9 }));
    fc.assert(
      fc.property(point, point, point, point, (a, b, c, d) => {
        const turns = [turn(a, b, c), turn(a, b, d), turn(c, d, a), turn(c, d, b)];
        fc.pre(turns.every((t) => t !== 0));
        const bothSides = turns[0] !== turns[1] && turns[2] !== turns[3];
        expect(segmentsCross(...a, ...b, ...c, ...d)).toBe(bothSides);
      }),
      { seed: 7, numRuns: 300 },
    );
  });
});

describe('a path', () => {
  const x = [0, 10, 10];
  const y = [0, 0, 10];

  it('is crossed by what meets any of its edges', () => {
    expect(crossesPath(5, -1, 5, 1, x, y)).toBe(true);
    expect(crossesPath(9, 5, 11, 5, x, y)).toBe(true);
    expect(crossesPath(1, 1, 9, 9, x, y)).toBe(false);
    expect(crossesPath(1, 1, 9, 9, [3], [3])).toBe(false);
  });
});
