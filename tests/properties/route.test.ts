import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Point } from '../../packages/core/src/geometry/disc-less-strip.js';
import { cheapestPath } from '../../packages/core/src/route/cheapest-path.js';
import type { CostField } from '../../packages/core/src/route/cost-field.js';
import { noDigDiscs, SceneFields } from '../../packages/core/src/route/field-of-scene.js';
import { planRoute } from '../../packages/core/src/route/plan-route.js';
import { sceneOf } from '../../packages/core/src/route/scene.js';
import { outline, plainField } from '../core/route/plain-field.js';
import { acrossLot, lot } from '../scenes/lot.js';
import { type Place, scene } from '../scenes/scene.js';

const BALANCED = { dig: 1, roots: 1, harm: 1 };

function priceOf(field: CostField, points: readonly Point[]): number {
  let sum = 0;
  for (let i = 0; i + 1 < points.length; i++) {
    const [a, b] = [points[i], points[i + 1]] as [Point, Point];
    sum += field.between(a[0], a[1], b[0], b[1]);
  }
  return sum;
}

describe('a route against one over a lattice four times as fine', () => {
  // tests/bench/route-reference.mjs goes through 50 lots
  it.each([11, 12, 13])('costs at most a hundredth more (lot %i)', (seed) => {
    const site = lot({ seed, sizeM: 30, trees: 8, levels: false });
    const [usual, fine] = [
      new SceneFields(sceneOf(site, acrossLot())),
      new SceneFields(sceneOf(site, acrossLot({ cellM: 0.0625 }))),
    ];
    const { from, to } = usual.scene;
    const judge = fine.weighted(BALANCED);
    const path = cheapestPath(usual.weighted(BALANCED), from, to);
    const reference = cheapestPath(judge, from, to);
    const [got, best] = [priceOf(judge, path?.points ?? []), reference?.cost as number];
    expect(got / best).toBeLessThan(1.01);
  });
});

describe('dearer roots', () => {
  it.each([21, 22, 23, 24])('never bring a route closer to them in total (lot %i)', (seed) => {
    const fields = new SceneFields(sceneOf(lot({ seed, sizeM: 40, trees: 10, levels: false }), acrossLot()));
    const roots = fields.weighted({ dig: 0, roots: 1, harm: 0 });
    const { from, to } = fields.scene;
    let before = Infinity;
    for (const weight of [0, 1, 4, 16, 64]) {
      const path = cheapestPath(fields.weighted({ dig: 1, roots: weight, harm: 0 }), from, to);
      const exposure = priceOf(roots, path?.points ?? []);
      // within what smoothing leaves undecided
      expect(exposure).toBeLessThanOrEqual(before * 1.01);
      before = exposure;
    }
  });
});

type Turn = (place: Place) => Place;

/** Ground with a few circles, a dear patch and a hill, seen through a turn of the plane about its middle. */
function groundSeen(turn: Turn, discs: readonly (readonly [number, number, number])[]): CostField {
  const corners: readonly Place[] = [
    [12, 4],
    [18, 4],
    [18, 14],
    [12, 14],
  ];
  const back = (x: number, y: number): Place => {
    // every turn here keeps the middle, and is undone by its own transpose
    const [a, b] = [turn([16, 15]), turn([15, 16])];
    const [ux, uy, vx, vy] = [a[0] - 15, a[1] - 15, b[0] - 15, b[1] - 15];
    return [15 + (x - 15) * ux + (y - 15) * uy, 15 + (x - 15) * vx + (y - 15) * vy];
  };
  return plainField({
    discs: discs.map(([x, y, radiusM], i) => {
      const [u, v] = turn([x, y]);
      return { id: `d${i}`, x: u, y: v, radiusM };
    }),
    areas: [{ id: 'dear', shape: outline(...corners.map(turn)), morePerM: 1.5, layer: 'surface' }],
    smooth: (x, y) => {
      const [u, v] = back(x, y);
      return 2 * Math.exp(-(((u - 9) ** 2 + (v - 20) ** 2) / 30));
    },
  });
}

describe('the same lot turned or mirrored', () => {
  const rotated =
    (angle: number): Turn =>
    ([x, y]) => [
      15 + (x - 15) * Math.cos(angle) - (y - 15) * Math.sin(angle),
      15 + (x - 15) * Math.sin(angle) + (y - 15) * Math.cos(angle),
    ];
  const turns: readonly (readonly [string, Turn, number])[] = [
    ['mirrored', ([x, y]) => [30 - x, y], 1e-3],
    ['by a quarter', rotated(Math.PI / 2), 1e-3],
    ['by 30 degrees', rotated(Math.PI / 6), 0.01],
    ['by 71 degrees', rotated(1.24), 0.01],
  ];
  it.each(turns)('%s gives the same route', (_, turn, tolerance) => {
    fc.assert(
      fc.property(
        fc.array(
          fc.tuple(
            fc.integer({ min: 9, max: 21 }),
            fc.integer({ min: 9, max: 21 }),
            fc.constantFrom(0.8, 1.3),
          ),
          {
            minLength: 1,
            maxLength: 3,
          },
        ),
        (discs) => {
          const [a, b]: [Place, Place] = [
            [7, 9],
            [22, 21],
          ];
          fc.pre(discs.every(([x, y, r]) => [a, b].every((p) => Math.hypot(x - p[0], y - p[1]) > r + 0.7)));
          const as = cheapestPath(
            groundSeen((place) => place, discs),
            a,
            [{ x: b[0], y: b[1] }],
          );
          const [u, v] = [turn(a), turn(b)];
          const seen = cheapestPath(groundSeen(turn, discs), u, [{ x: v[0], y: v[1] }]);
          expect((seen?.cost as number) / (as?.cost as number)).toBeGreaterThan(1 - tolerance - 0.005);
          expect((seen?.cost as number) / (as?.cost as number)).toBeLessThan(1 + tolerance + 0.005);
        },
      ),
      { numRuns: 6, seed: 5 },
    );
  });

  it('gives the same figures of the whole plan, mirrored', () => {
    const seen = (side: 1 | -1) => {
      const place = (x: number, y: number): Place => [side * x, y];
      const site = scene([-93, 0])
        .fitting({ id: 'source', type: 'basin', at: place(-12, 5) })
        .fitting({ id: 'outlet', type: 'outlet', at: place(12, -6) })
        .tree({ id: 'elm', species: 'Ulmus americana', dbh_cm: 30, at: place(1, 1) })
        .tree({ id: 'oak', species: 'Quercus alba', dbh_cm: 50, at: place(6, -9) })
        .site();
      return planRoute(site, acrossLot({ pipe: { material: 'hdpe-corrugated', sizeM: 0.1 } }))
        .alternatives[0];
    };
    const [as, mirrored] = [seen(1), seen(-1)];
    expect((mirrored?.lengthM as number) / (as?.lengthM as number)).toBeCloseTo(1, 2);
    expect((mirrored?.cost.now as number) / (as?.cost.now as number)).toBeCloseTo(1, 2);
  });
});

describe('fall', () => {
  it.each([31, 32, 33, 34, 35, 36])('is never violated (lot %i)', (seed) => {
    const site = lot({ seed, sizeM: 30, trees: 5 });
    const request = acrossLot({ limits: { minFall: 0.012, minCoverM: 0.3, maxDepthM: 1 } });
    const { alternatives, none } = planRoute(site, request);
    expect(alternatives.length > 0).toBe(none === null);
    for (const { fall, coverM, depthM, breaks, profile, lengthM } of alternatives) {
      expect(breaks).toEqual([]);
      expect(fall?.min).toBeGreaterThanOrEqual(0.012 - 1e-9);
      expect(depthM?.max).toBeLessThanOrEqual(1 + 1e-9);
      expect(profile?.stationM.at(-1)).toBeCloseTo(lengthM, 6);
      // less cover than asked for only before the outlet, where the pipe comes out
      profile?.stationM.forEach((s, i) => {
        if (s > lengthM - 3) return;
        const coverHere = (profile.groundM[i] as number) - (profile.invertM[i] as number);
        expect(coverHere).toBeGreaterThanOrEqual(0.3 + 0.1 - 1e-6);
      });
      expect(coverM).not.toBeNull();
    }
  });
});

describe('trees', () => {
  it('are never dug nearer than 3 trunk diameters', () => {
    for (const seed of [41, 42]) {
      const site = lot({ seed, sizeM: 30, trees: 10, levels: false });
      const discs = noDigDiscs(sceneOf(site, acrossLot()));
      const { alternatives } = planRoute(site, acrossLot());
      for (const { trees, stretches } of alternatives) {
        trees.forEach(({ nearestDugM }, i) => {
          const stem3 = site.trees[i]?.stemDiameterM as number;
          expect(nearestDugM ?? Infinity).toBeGreaterThanOrEqual(3 * stem3 - 1e-3);
        });
        expect(stretches.length).toBeGreaterThan(0);
      }
      expect(discs).toHaveLength(10);
    }
  });
});
