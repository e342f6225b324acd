import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rank } from '../../packages/core/src/risk/rank.js';
import { toFeet, toInches } from '../../packages/core/src/units/length.js';
import { readSite } from '../../packages/core/src/validate/read-site.js';
import { type Scene, scene } from '../scenes/scene.js';
import { AS_OF, ORIGIN, sceneOf, type Yard, yards } from './yard.js';

const RUNS = { seed: 20_261_125, numRuns: 120 };

interface Numbers {
  readonly expected: readonly number[];
  readonly scores: readonly number[];
  readonly lows: readonly number[];
  readonly highs: readonly number[];
  readonly lengths: readonly number[];
}

/** What counts of a ranking, by segment id, whatever its order. */
function numbersOf(made: Scene, segmentM: number): Numbers {
  const { segments } = rank(made.site(), { asOf: AS_OF, segmentM });
  const byId = [...segments].sort((a, b) => (a.id < b.id ? -1 : 1));
  return {
    expected: byId.map(({ expectedEntries: e }) => e.joints + e.slots + e.crush),
    scores: byId.map((s) => s.score),
    lows: byId.map((s) => s.chance.low),
    highs: byId.map((s) => s.chance.high),
    lengths: byId.map((s) => s.lengthM),
  };
}

function same(one: Numbers, other: Numbers, relative: number): void {
  for (const key of Object.keys(one) as (keyof Numbers)[]) {
    expect(other[key].length).toBe(one[key].length);
    one[key].forEach((value, i) => {
      expect(Math.abs((other[key][i] ?? NaN) - value)).toBeLessThanOrEqual(relative * Math.abs(value));
    });
  }
}

describe('the place on the globe', () => {
  // a double holds a longitude to about a billionth of a metre; where the reach is 2 m that moves a score by 3e-9
  it('does not matter along a circle of latitude', () => {
    fc.assert(
      fc.property(yards(), fc.double({ min: -179, max: 179, noNaN: true }), (yard, lon) => {
        const here = numbersOf(sceneOf(yard), yard.segmentM);
        same(here, numbersOf(sceneOf(yard, {}, [lon, ORIGIN[1]]), yard.segmentM), 1e-8);
      }),
      RUNS,
    );
  });

  // the plane's scale is that of the line's own latitude, so the metres come back whole
  it('does not matter across latitudes when the same metres are laid out again', () => {
    fc.assert(
      fc.property(yards(), fc.double({ min: -65, max: 65, noNaN: true }), (yard, lat) => {
        const here = numbersOf(sceneOf(yard), yard.segmentM);
        same(here, numbersOf(sceneOf(yard, {}, [20, lat]), yard.segmentM), 1e-6);
      }),
      RUNS,
    );
  });
});

describe('the way the file is written', () => {
  it('does not matter: the order of the features', () => {
    const order = fc.infiniteStream(fc.nat());
    fc.assert(
      fc.property(yards(), order, (yard, stream) => {
        const made = sceneOf(yard)
          .fitting({ id: 'w1', type: 'wye', at: [0.37, 0.02] })
          .fitting({ id: 'b1', type: 'basin', at: [-yard.lengthM / 2, 0] })
          .drain({
            id: 'branch',
            path: [
              [4, 8.3],
              [0.37, 0],
            ],
            material: 'clay',
            piece_m: 0.77,
          })
          .finding({ id: 'seen', drain: 'line', at_m: 1.1, seen: 'fine', date: 2020 });
        const json = made.toGeoJson();
        const keys = json.features.map((feature) => ({ feature, key: stream.next().value as number }));
        const features = keys.sort((a, b) => a.key - b.key).map(({ feature }) => feature);
        const text = JSON.stringify({ ...json, features });
        const shuffled = { ...made, site: () => readSite([{ name: 'scene', text }]).site };
        same(numbersOf(made, yard.segmentM), numbersOf(shuffled, yard.segmentM), 1e-12);
      }),
      RUNS,
    );
  });

  // a coupling drawn without the name of its line is as near to the one as to the other
  it('does not matter: which of two lines that begin at one place comes first', () => {
    const upper = {
      id: 'upper',
      path: [
        [0, 0],
        [-10, 0],
      ] as const,
      material: 'clay',
      flow: 'reversed',
    };
    const lower = {
      id: 'lower',
      path: [
        [0, 0],
        [10, 0],
      ] as const,
      material: 'pvc-sdr35',
      flow: 'as-drawn',
    };
    const around = (made: Scene) =>
      made.tree({ id: 't', at: [0, 3], dbh_cm: 40 }).fitting({ id: 'c', type: 'coupling', at: [0, 0] });
    const oneWay = around(scene().drain(upper).drain(lower));
    const otherWay = around(scene().drain(lower).drain(upper));
    same(numbersOf(oneWay, 3), numbersOf(otherWay, 3), 1e-12);
  });

  it('does not matter: feet and inches or metres', () => {
    fc.assert(
      fc.property(yards(), (yard) => {
        const { line, lengthM, trees } = yard;
        const half = lengthM / 2;
        const inFeet = trees.reduce(
          (made, tree, i) =>
            made.tree({
              id: `t${i + 1}`,
              at: [tree.eastM, tree.northM],
              species: tree.species,
              dbh_in: toInches(tree.dbhCm / 100),
              ...(tree.canopyM === null ? {} : { canopy_radius_ft: toFeet(tree.canopyM) }),
            }),
          scene(ORIGIN).drain({
            id: 'line',
            path: [
              [-half, 0],
              [half, 0],
            ],
            flow: 'as-drawn',
            material: line.material,
            joint: line.joint,
            piece_ft: toFeet(line.pieceM),
            perforated: line.perforated,
            depth_start_ft: toFeet(line.depthStartM),
            depth_end_ft: toFeet(line.depthEndM),
            size_in: 4,
            installed: String(line.installed),
            wet: line.wet,
          }),
        );
        const inMetres = sceneOf(yard, { size_mm: 101.6 });
        same(numbersOf(inMetres, yard.segmentM), numbersOf(inFeet, yard.segmentM), 1e-10);
      }),
      RUNS,
    );
  });
});

/** The yard with its line drawn through a further point on its straight way. */
function withVertex(yard: Yard, eastM: number): Scene {
  const half = yard.lengthM / 2;
  return sceneOf(yard, {
    path: [
      [-half, 0],
      [eastM, 0],
      [half, 0],
    ],
  });
}

describe('a vertex on a straight edge', () => {
  it('changes nothing on the border of two segments', () => {
    fc.assert(
      fc.property(yards(), fc.nat(), (yard, pick) => {
        const parts = Math.ceil(yard.lengthM / yard.segmentM);
        fc.pre(parts > 1);
        // stations count from the outlet, the east end
        const eastM = yard.lengthM / 2 - (yard.lengthM * (1 + (pick % (parts - 1)))) / parts;
        same(
          numbersOf(sceneOf(yard), yard.segmentM),
          numbersOf(withVertex(yard, eastM), yard.segmentM),
          1e-7,
        );
      }),
      RUNS,
    );
  });

  // a vertex makes two stretches of one for the two-point rule along the pipe; it is within 4 % on 3 m, and the far
  // tail of crushing, less than a hundred-thousandth of an event, is not looked at
  it('changes nothing at joints anywhere, and no more along the pipe than the rule is off', () => {
    const ways = (made: Scene, segmentM: number) => {
      const { segments } = rank(made.site(), { asOf: AS_OF, segmentM });
      const sum = (way: 'joints' | 'slots' | 'crush') =>
        segments.reduce((total, s) => total + s.expectedEntries[way], 0);
      return { joints: sum('joints'), along: sum('slots') + sum('crush') };
    };
    fc.assert(
      fc.property(yards(), fc.double({ min: -0.49, max: 0.49, noNaN: true }), (yard, share) => {
        const straight = ways(sceneOf(yard), yard.segmentM);
        const drawn = ways(withVertex(yard, share * yard.lengthM), yard.segmentM);
        expect(Math.abs(drawn.joints - straight.joints)).toBeLessThanOrEqual(1e-7 * straight.joints);
        expect(Math.abs(drawn.along - straight.along)).toBeLessThanOrEqual(0.05 * straight.along + 1e-5);
      }),
      RUNS,
    );
  });
});

// The joint between two pieces belongs to neither line once the line is drawn as two: a line's own joints lie between
// its pieces, not at its ends. A coupling drawn at the place is that one joint, and counts once for both lines.
describe('a line drawn as two that meet at a piece end, with a coupling there', () => {
  it('expects as many entries in all as the one line', () => {
    const pieces = fc.integer({ min: 2, max: 8 });
    fc.assert(
      fc.property(yards(), pieces, fc.nat(), fc.constantFrom(1, 2, 4), (drawn, count, pick, perSegment) => {
        const pieceM = drawn.line.pieceM;
        const below = 1 + (pick % (count - 1));
        const lengthM = count * pieceM;
        const yard = { ...drawn, lengthM };
        const { depthStartM: top, depthEndM: low } = yard.line;
        const eastM = lengthM / 2 - below * pieceM;
        const depthM = low + ((top - low) * below) / count;
        const part = (id: string, path: [number, number][], from: number, to: number) => {
          const { line } = yard;
          const common = { material: line.material, joint: line.joint, piece_m: pieceM, flow: 'as-drawn' };
          const rest = { perforated: line.perforated, installed: line.installed, wet: line.wet };
          return { ...common, ...rest, id, path, depth_start_m: from, depth_end_m: to };
        };
        const upper = part(
          'upper',
          [
            [-lengthM / 2, 0],
            [eastM, 0],
          ],
          top,
          depthM,
        );
        const lower = part(
          'lower',
          [
            [eastM, 0],
            [lengthM / 2, 0],
          ],
          depthM,
          low,
        );
        const trees = (made: Scene): Scene =>
          yard.trees.reduce(
            (grown, t, i) =>
              grown.tree({ id: `t${i}`, at: [t.eastM, t.northM], species: t.species, dbh_cm: t.dbhCm }),
            made,
          );
        const two = trees(scene(ORIGIN).drain(upper).drain(lower)).fitting({
          id: 'c',
          type: 'coupling',
          at: [eastM, 0],
        });
        const one = trees(
          scene(ORIGIN).drain(
            part(
              'whole',
              [
                [-lengthM / 2, 0],
                [lengthM / 2, 0],
              ],
              top,
              low,
            ),
          ),
        );
        // segments of whole pieces or whole parts of one, so that both ways cut at the same places
        const segmentM = (pieceM / perSegment) * (1 + 1e-9);
        const all = (made: Scene) => numbersOf(made, segmentM).expected.reduce((sum, e) => sum + e, 0);
        fc.pre(segmentM >= 0.3);
        const whole = all(one);
        expect(Math.abs(all(two) - whole)).toBeLessThanOrEqual(1e-6 * whole);
      }),
      { ...RUNS, numRuns: 60 },
    );
  });
});
