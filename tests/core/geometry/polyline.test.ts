import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planeAt, planeFor } from '../../../packages/core/src/geometry/plane.js';
import {
  lengthOf,
  nearestOn,
  type Polyline,
  pointAt,
  polylineOf,
  sliceOf,
} from '../../../packages/core/src/geometry/polyline.js';

function polyline(points: readonly (readonly [number, number])[]): Polyline {
  const s = new Float64Array(points.length);
  points.forEach(([x, y], i) => {
    const last = points[i - 1];
    if (last) s[i] = (s[i - 1] ?? 0) + Math.hypot(x - last[0], y - last[1]);
  });
  return { x: Float64Array.from(points, (p) => p[0]), y: Float64Array.from(points, (p) => p[1]), s };
}

/** Down 3, right 4, up 3. */
const trough = polyline([
  [0, 3],
  [0, 0],
  [4, 0],
  [4, 3],
]);

const metre = fc.double({ min: -20, max: 20, noNaN: true });
const paths = fc
  .array(fc.tuple(metre, metre), { minLength: 2, maxLength: 7 })
  .map(polyline)
  .filter((line) => lengthOf(line) > 0.1);

describe('a polyline', () => {
  it('is as long as its edges', () => {
    expect(lengthOf(trough)).toBe(10);
  });

  it('has a point at every station, and its ends beyond them', () => {
    expect(pointAt(trough, 1)).toEqual([0, 2]);
    expect(pointAt(trough, 3)).toEqual([0, 0]);
    expect(pointAt(trough, 5)).toEqual([2, 0]);
    expect(pointAt(trough, -1)).toEqual([0, 3]);
    expect(pointAt(trough, 11)).toEqual([4, 3]);
  });

  it('runs from the other end when it is laid out reversed', () => {
    const path = [
      [10, 50],
      [10.001, 50],
      [10.001, 50.002],
    ] as const;
    const plane = planeFor(path);
    const ahead = polylineOf(path, plane, false);
    const back = polylineOf(path, plane, true);
    expect(lengthOf(back)).toBeCloseTo(lengthOf(ahead), 9);
    expect(pointAt(back, 0)).toEqual(pointAt(ahead, lengthOf(ahead)));
  });
});

describe('the nearest point of a polyline', () => {
  it('is at a foot, at a corner or at an end', () => {
    expect(nearestOn(trough, 1, -2)).toEqual({ station: 4, distance: 2 });
    expect(nearestOn(trough, -3, -4)).toEqual({ station: 3, distance: 5 });
    expect(nearestOn(trough, 4, 5)).toEqual({ station: 10, distance: 2 });
  });

  it('stays between the stations asked for', () => {
    const { station, distance } = nearestOn(trough, 0, 3, 5, 6);
    expect(station).toBe(5);
    expect(distance).toBeCloseTo(Math.hypot(2, 3), 12);
  });

  it('is no farther than any point of a walk along the line, and is on it', () => {
    fc.assert(
      fc.property(paths, metre, metre, fc.double({ min: 0, max: 1, noNaN: true }), (line, x, y, share) => {
        const from = share * 0.5 * lengthOf(line);
        const to = from + 0.5 * lengthOf(line);
        const { station, distance } = nearestOn(line, x, y, from, to);
        const [px, py] = pointAt(line, station);
        expect(Math.hypot(px - x, py - y)).toBeCloseTo(distance, 6);
        for (let i = 0; i <= 200; i++) {
          const [wx, wy] = pointAt(line, from + (i / 200) * (to - from));
          expect(Math.hypot(wx - x, wy - y)).toBeGreaterThanOrEqual(distance - 1e-6);
        }
      }),
      { seed: 2, numRuns: 150 },
    );
  });
});

describe('a slice of a polyline', () => {
  it('keeps the corners between its ends', () => {
    expect(sliceOf(trough, 1, 8)).toEqual([
      [0, 2],
      [0, 0],
      [4, 0],
      [4, 1],
    ]);
    expect(sliceOf(trough, 3, 7)).toEqual([
      [0, 0],
      [4, 0],
    ]);
  });

  it('is as long as the stations say', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(paths, share, share, (line, a, b) => {
        const [from, to] = [Math.min(a, b) * lengthOf(line), Math.max(a, b) * lengthOf(line)];
        const part = polyline(sliceOf(line, from, to));
        expect(lengthOf(part)).toBeCloseTo(to - from, 6);
      }),
      { seed: 3, numRuns: 200 },
    );
  });
});

describe('a plane', () => {
  it('puts its origin in the middle of the path', () => {
    expect(
      planeFor([
        [10, 50],
        [12, 50],
        [12, 51],
      ]),
    ).toEqual(planeAt(11, 50.5));
  });
});
