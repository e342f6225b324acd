import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxOf, indexAround, indexFrom, packPaths } from '../../../packages/core/src/geometry/box-index.js';
import { planeAt } from '../../../packages/core/src/geometry/plane.js';
import type { LonLat } from '../../../packages/core/src/model/site.js';

const indexOfPaths = (paths: readonly (readonly LonLat[])[], marginM: number) =>
  indexFrom(packPaths(paths, marginM));

type Box = readonly [west: number, south: number, east: number, north: number];
const meets = (a: Box, b: Box): boolean => a[0] <= b[2] && a[2] >= b[0] && a[1] <= b[3] && a[3] >= b[1];

function widened([west, south, east, north]: Box, metres: number, lat: number): Box {
  const plane = planeAt(west, lat);
  const [lon, up] = [metres / plane.metresPerDegreeLon, metres / plane.metresPerDegreeLat];
  return [west - lon, south - up, east + lon, north + up];
}

const degrees = fc.tuple(
  fc.double({ min: 9.99, max: 10.01, noNaN: true }),
  fc.double({ min: 49.99, max: 50.01, noNaN: true }),
);

describe('the index around places', () => {
  it('finds the same squares as looking at each', () => {
    const places = fc.array(fc.tuple(degrees, fc.double({ min: 0.1, max: 300, noNaN: true })), {
      maxLength: 60,
    });
    fc.assert(
      fc.property(places, degrees, degrees, (list, a, b) => {
        const positions = list.map(([position]) => position as LonLat);
        const index = indexAround(
          positions,
          list.map(([, radius]) => radius),
        );
        const asked: Box = [
          Math.min(a[0], b[0]),
          Math.min(a[1], b[1]),
          Math.max(a[0], b[0]),
          Math.max(a[1], b[1]),
        ];
        const each = list.flatMap(([[lon, lat], radius], i) =>
          meets(widened([lon, lat, lon, lat], radius, lat), asked) ? [i] : [],
        );
        expect(index.search(...asked)).toEqual(each);
      }),
      { seed: 5, numRuns: 150 },
    );
  });

  it('finds nothing among nothing', () => {
    expect(indexAround([], []).search(-180, -90, 180, 90)).toEqual([]);
  });
});

describe('the index of paths', () => {
  it('finds the same widened boxes as looking at each', () => {
    const paths = fc.array(fc.array(degrees, { minLength: 2, maxLength: 5 }), { maxLength: 40 });
    fc.assert(
      fc.property(paths, degrees, (list, [lon, lat]) => {
        const index = indexOfPaths(list as LonLat[][], 1);
        const each = list.flatMap((path, i) => {
          const box = boxOf(path as LonLat[]);
          return meets(widened(box, 1, (box[1] + box[3]) / 2), [lon, lat, lon, lat]) ? [i] : [];
        });
        expect(index.search(lon, lat, lon, lat)).toEqual(each);
      }),
      { seed: 6, numRuns: 150 },
    );
  });

  it('has the box of a path as west, south, east, north', () => {
    expect(
      boxOf([
        [3, 7],
        [1, 9],
        [2, 8],
      ]),
    ).toEqual([1, 7, 3, 9]);
    expect(indexOfPaths([], 1).search(-180, -90, 180, 90)).toEqual([]);
  });
});
