import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { segmentsOf } from '../../../packages/core/src/line/segments.js';

const borders = (lengthM: number, cuts: readonly number[], mostM: number): number[] => {
  const segments = segmentsOf(lengthM, cuts, mostM);
  return [segments[0]?.fromM ?? NaN, ...segments.map((s) => s.toM)];
};

describe('segments of a line', () => {
  it('are equal parts no longer than asked for', () => {
    expect(borders(9, [], 3)).toEqual([0, 3, 6, 9]);
    expect(borders(10, [], 5.1)).toEqual([0, 5, 10]);
    expect(borders(2, [], 3)).toEqual([0, 2]);
  });

  it('begin anew at fittings, in whatever order these come', () => {
    expect(borders(10, [7, 1], 3)).toEqual([0, 1, 4, 7, 10]);
  });

  it('are not cut twice within a hand of one place, nor at the ends', () => {
    expect(borders(6, [3, 3.05, 5.95, 0.05, 0, 6], 3)).toEqual([0, 3, 6]);
  });

  it('do not become one more by rounding', () => {
    expect(segmentsOf(9.000000001, [], 3)).toHaveLength(3);
    expect(segmentsOf(0.1 * 3 * 10, [], 0.3)).toHaveLength(10);
  });

  it('cover the line once, are never longer than asked for, and stop at every fitting', () => {
    const length = fc.double({ min: 0.2, max: 200, noNaN: true });
    const shares = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 6 });
    const most = fc.double({ min: 0.3, max: 30, noNaN: true });
    fc.assert(
      fc.property(length, shares, most, (lengthM, at, mostM) => {
        const cuts = at.map((share) => share * lengthM);
        const segments = segmentsOf(lengthM, cuts, mostM);
        expect(segments[0]?.fromM).toBe(0);
        expect(segments[segments.length - 1]?.toM).toBe(lengthM);
        segments.forEach(({ fromM, toM }, i) => {
          expect(toM).toBeGreaterThan(fromM);
          expect(toM - fromM).toBeLessThanOrEqual(mostM * (1 + 1e-8));
          if (i > 0) expect(fromM).toBe(segments[i - 1]?.toM);
        });
        // a fitting lies on a border, or within a hand of one
        for (const cut of cuts) {
          const nearest = Math.min(
            ...segments.flatMap((s) => [Math.abs(s.fromM - cut), Math.abs(s.toM - cut)]),
          );
          expect(nearest).toBeLessThanOrEqual(0.1);
        }
      }),
      { seed: 9, numRuns: 300 },
    );
  });
});
