import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lonLatOf, planeAt } from '../../../packages/core/src/geometry/plane.js';
import type { ElevationGrid } from '../../../packages/core/src/model/ground.js';
import { groundFromGrid } from '../../../packages/core/src/route/ground-grid.js';
import { groundFromLevels, type SpotLevel } from '../../../packages/core/src/route/ground-levels.js';
import { groundOf } from '../../../packages/core/src/route/ground-of.js';

const level = (x: number, y: number, elevationM: number): SpotLevel => ({ x, y, elevationM });

describe('ground from spot levels', () => {
  it('is unknown, not 0, with none or one', () => {
    expect(groundFromLevels([]).elevationAt(0, 0)).toBeNull();
    const one = groundFromLevels([level(0, 0, 12), level(0, 0.001, 13)]);
    expect(one.basis).toEqual({ kind: 'one-level' });
    expect(one.elevationAt(0, 0)).toBeNull();
  });

  it('is straight between two, goes on a little, and ends', () => {
    const ground = groundFromLevels([level(0, 0, 10), level(20, 0, 9)]);
    expect(ground.basis).toEqual({ kind: 'along-levels', levels: 2 });
    expect(ground.elevationAt(0, 0)).toBeCloseTo(10, 12);
    expect(ground.elevationAt(5, 3)).toBeCloseTo(9.75, 12);
    expect(ground.elevationAt(22, 0)).toBeCloseTo(8.9, 12);
    expect(ground.elevationAt(-6, 0)).toBeNull();
    expect(ground.elevationAt(10, 21)).toBeNull();
  });

  it('goes from one to the next where they stand in line', () => {
    const ground = groundFromLevels([level(0, 0, 10), level(10, 10, 8), level(30, 30, 8)]);
    expect(ground.basis).toEqual({ kind: 'along-levels', levels: 3 });
    expect(ground.elevationAt(5, 5)).toBeCloseTo(9, 9);
    expect(ground.elevationAt(20, 20)).toBeCloseTo(8, 9);
  });

  it('is the plane through three', () => {
    const ground = groundFromLevels([level(0, 0, 10), level(10, 0, 9), level(0, 10, 11)]);
    expect(ground.elevationAt(4, 3)).toBeCloseTo(10 - 0.4 + 0.3, 9);
    expect(ground.basis).toEqual({ kind: 'plane-and-levels', levels: 3, missedByM: null });
  });

  it('is any plane again from levels on it, with no miss', () => {
    const corners = [
      level(0, 0, 0),
      level(30, 2, 0),
      level(28, 25, 0),
      level(1, 20, 0),
      level(14, 11, 0),
      level(9, 3, 0),
    ];
    fc.assert(
      fc.property(
        fc.tuple(
          fc.double({ min: -0.2, max: 0.2, noNaN: true }),
          fc.double({ min: -0.2, max: 0.2, noNaN: true }),
        ),
        fc.tuple(fc.double({ min: 2, max: 27, noNaN: true }), fc.double({ min: 3, max: 19, noNaN: true })),
        ([east, north], [x, y]) => {
          const plane = (px: number, py: number): number => 50 + east * px + north * py;
          const ground = groundFromLevels(
            corners.map((each) => ({ ...each, elevationM: plane(each.x, each.y) })),
          );
          expect(ground.elevationAt(x, y)).toBeCloseTo(plane(x, y), 8);
          expect(ground.basis).toMatchObject({ missedByM: expect.closeTo(0, 8) });
        },
      ),
      { numRuns: 50, seed: 3 },
    );
  });

  // a saddle: the plane through it is flat, at 0.5; each level is missed by half a metre, up or down
  it('is the plane and what it misses, by inverse squared distance, worked out by hand', () => {
    const ground = groundFromLevels([level(0, 0, 1), level(10, 0, 0), level(0, 10, 0), level(10, 10, 1)]);
    const [near, aside, far] = [1 / (2 * 2 + 2 * 2), 1 / (8 * 8 + 2 * 2), 1 / (8 * 8 + 8 * 8)];
    const missed = (0.5 * (near - 2 * aside + far)) / (near + 2 * aside + far);
    expect(missed).toBeCloseTo(0.3187, 4);
    expect(ground.elevationAt(2, 2)).toBeCloseTo(0.5 + missed, 9);
    expect(ground.elevationAt(8, 2)).toBeCloseTo(0.5 - missed, 9);
    expect(ground.elevationAt(5, 5)).toBeCloseTo(0.5, 9);
  });

  it('passes through every level and never far outside them', () => {
    const height = fc.double({ min: 0, max: 3, noNaN: true });
    fc.assert(
      fc.property(fc.array(height, { minLength: 6, maxLength: 6 }), (heights) => {
        const places = [
          [0, 0],
          [20, 1],
          [21, 17],
          [2, 19],
          [9, 8],
          [14, 4],
        ] as const;
        const levels = places.map(([x, y], i) => level(x, y, heights[i] as number));
        const ground = groundFromLevels(levels);
        for (const { x, y, elevationM } of levels) {
          expect(ground.elevationAt(x, y)).toBeCloseTo(elevationM, 9);
          // and comes up to it without a step
          expect(ground.elevationAt(x + 1e-4, y + 1e-4)).toBeCloseTo(elevationM, 2);
        }
        expect(ground.elevationAt(60, 60)).toBeNull();
      }),
      { numRuns: 50, seed: 5 },
    );
  });
});

const PLANE = planeAt(-93, 45);

/** A grid of cells of 2 m laid out in plane metres, turned by an angle. */
function gridOf(
  columns: number,
  rows: number,
  height: (x: number, y: number) => number | null,
  turn = 0,
): ElevationGrid {
  const place = (column: number, row: number): [number, number] => {
    const [x, y] = [2 * column, -2 * row];
    return [x * Math.cos(turn) - y * Math.sin(turn), x * Math.sin(turn) + y * Math.cos(turn)];
  };
  const corner = (column: number, row: number): [number, number] => lonLatOf(PLANE, ...place(column, row));
  return {
    columns,
    rows,
    corners: {
      northWest: corner(0, 0),
      northEast: corner(columns - 1, 0),
      southWest: corner(0, rows - 1),
      southEast: corner(columns - 1, rows - 1),
    },
    elevationsM: Array.from({ length: rows * columns }, (_, i) =>
      height(...place(i % columns, Math.floor(i / columns))),
    ),
  };
}

describe('ground from a grid', () => {
  it.each([0, 0.3, 2])('is a plane between its cells, turned by %f', (turn) => {
    const slope = (x: number, y: number): number => 20 + 0.05 * x - 0.02 * y;
    const ground = groundFromGrid(gridOf(6, 5, slope, turn), PLANE);
    for (const [x, y] of [
      [0.3, -0.4],
      [3.1, -4.4],
      [8, -6],
    ] as const) {
      const [px, py] = [x * Math.cos(turn) - y * Math.sin(turn), x * Math.sin(turn) + y * Math.cos(turn)];
      expect(ground.elevationAt(px, py)).toBeCloseTo(slope(px, py), 8);
    }
    expect(ground.basis).toEqual({ kind: 'grid', cellM: expect.closeTo(2, 6) });
  });

  it('weighs the four cells around by their shares', () => {
    const ground = groundFromGrid(
      gridOf(3, 3, (x, y) => (Math.abs(x - 2) < 1e-6 && Math.abs(y + 2) < 1e-6 ? 8 : 0)),
      PLANE,
    );
    expect(ground.elevationAt(2, -2)).toBeCloseTo(8, 8);
    expect(ground.elevationAt(3, -2.5)).toBeCloseTo(8 * 0.5 * 0.75, 8);
  });

  it('reaches half a cell beyond the middles of its border cells and is unknown outside', () => {
    const ground = groundFromGrid(
      gridOf(4, 4, () => 5),
      PLANE,
    );
    expect(ground.elevationAt(-0.9, 0.9)).toBeCloseTo(5, 9);
    expect(ground.elevationAt(-1.1, 0)).toBeNull();
    expect(ground.elevationAt(3, -7.1)).toBeNull();
  });

  it('is unknown where a cell that counts is unknown', () => {
    const ground = groundFromGrid(
      gridOf(4, 4, (x, y) => (x > 3.9 && x < 4.1 && y < -1.9 && y > -2.1 ? null : 1)),
      PLANE,
    );
    expect(ground.elevationAt(3, -1.5)).toBeNull();
    expect(ground.elevationAt(1.5, -1)).toBeCloseTo(1, 9);
    // right on a known cell the unknown one beside it does not count
    expect(ground.elevationAt(0, -2)).toBeCloseTo(1, 9);
  });

  it('refuses a grid without all its heights', () => {
    const grid = gridOf(3, 3, () => 1);
    expect(() => groundFromGrid({ ...grid, elevationsM: [1, 2] }, PLANE)).toThrow(/heights/);
    expect(() => groundFromGrid({ ...grid, columns: 1, rows: 9 }, PLANE)).toThrow(/2 x 2/);
  });
});

describe('ground of a site', () => {
  const levels = [
    { id: 'l1', origin: { file: 'a', index: 0 }, position: lonLatOf(PLANE, 0, 0), elevationM: 3 },
    { id: 'l2', origin: { file: 'a', index: 1 }, position: lonLatOf(PLANE, 10, 0), elevationM: 2 },
  ];

  it('comes from its levels, or from a grid alone where there is one', () => {
    expect(groundOf(levels, null, PLANE).elevationAt(5, 0)).toBeCloseTo(2.5, 9);
    expect(
      groundOf(
        levels,
        gridOf(4, 4, () => 70),
        PLANE,
      ).elevationAt(2, -2),
    ).toBeCloseTo(70, 9);
    expect(groundOf([], null, PLANE).basis).toEqual({ kind: 'none' });
  });
});
