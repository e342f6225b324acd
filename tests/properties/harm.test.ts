import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { shareLeft } from '../../packages/core/src/geometry/disc-less-strip.js';
import { type HarmTree, harmOf, type Stretch } from '../../packages/core/src/roots/harm.js';
import { structuralRadius } from '../../packages/core/src/roots/structural.js';
import { metres } from '../../packages/core/src/units/quantity.js';
import { GeosWitness } from './harm-geos.js';

/** Rounding of our own areas, as a share of the disc. */
const ROUNDING = 1e-8;

const coordinate = fc.integer({ min: -1500, max: 1500 }).map((i) => i / 1000);
const place = fc.tuple(coordinate, coordinate);
const bentPath = fc.array(place, { minLength: 2, maxLength: 7 });

const tree = (stemDiameterM: number): HarmTree => ({
  id: 't',
  x: 0,
  y: 0,
  stemDiameterM,
  structuralM: structuralRadius(metres(stemDiameterM)),
  protectionM: Math.min(15, 12 * stemDiameterM),
  driplineM: 9 * stemDiameterM,
});

const straight = (xM: number, widthM: number): Stretch => ({
  path: [
    [xM, -40],
    [xM, 40],
  ],
  widthM,
  bored: false,
});

describe('the share of a protection circle that a straight trench severs', () => {
  it('is the circular segment beyond its near side', () => {
    const cases = fc.record({
      stemCm: fc.integer({ min: 8, max: 150 }),
      share: fc.integer({ min: 1, max: 1100 }).map((i) => i / 1000),
      widthM: fc.constantFrom(0.1, 0.3, 0.6),
      turn: fc.integer({ min: 0, max: 360 }).map((degrees) => (degrees * Math.PI) / 180),
    });
    fc.assert(
      fc.property(cases, ({ stemCm, share, widthM, turn }) => {
        const oak = tree(stemCm / 100);
        const radius = oak.protectionM;
        const nearSide = share * radius;
        const x = nearSide + widthM / 2;
        const turned = ([px, py]: readonly [number, number]): [number, number] => [
          px * Math.cos(turn) - py * Math.sin(turn),
          px * Math.sin(turn) + py * Math.cos(turn),
        ];
        const trench = straight(x, widthM);
        const [harm] = harmOf([oak], [{ ...trench, path: trench.path.map(turned) }]);
        const beyond = Math.min(nearSide, radius);
        const segment =
          (radius ** 2 * Math.acos(beyond / radius) - beyond * Math.sqrt(radius ** 2 - beyond ** 2)) /
          (Math.PI * radius ** 2);
        expect(harm?.severedShare).toBeCloseTo(segment, 8);
        expect(harm?.nearestM).toBeCloseTo(nearSide, 9);
      }),
      { numRuns: 300, seed: 1 },
    );
  });
});

describe('the share that is left by bent trenches', () => {
  let witness: GeosWitness;
  beforeAll(async () => {
    witness = await GeosWitness.start();
  });

  it('lies between what GEOS leaves of polygons inside and outside the true shapes', () => {
    let cut = 0;
    let widest = 0;
    const cases = fc.record({
      paths: fc.array(bentPath, { minLength: 1, maxLength: 3 }),
      halfWidth: fc.constantFrom(0.005, 0.03, 0.1, 0.25),
    });
    fc.assert(
      fc.property(cases, ({ paths, halfWidth }) => {
        const ours = shareLeft(
          [0, 0],
          1,
          paths.map((path) => ({ path, halfWidthM: halfWidth })),
        );
        const low = witness.left(1, paths, halfWidth, { disc: 'inside', trench: 'outside' }) / Math.PI;
        const high = witness.left(1, paths, halfWidth, { disc: 'outside', trench: 'inside' }) / Math.PI;
        expect(ours).toBeGreaterThanOrEqual(low - ROUNDING);
        expect(ours).toBeLessThanOrEqual(high + ROUNDING);
        if (ours > 0 && ours < 0.95) cut++;
        widest = Math.max(widest, high - low);
      }),
      { numRuns: 400, seed: 20_261_125 },
    );
    console.info(
      `GEOS, bent trenches: ${cut} of 400 cut the disc, brackets up to ${widest.toExponential(1)} wide`,
    );
    expect(cut).toBeGreaterThan(100);
  });

  it('goes down as a trench is made wider or longer, and does not care how it is turned or which way it runs', () => {
    const cases = fc.record({ path: bentPath, more: place, turn: fc.integer({ min: 1, max: 359 }) });
    fc.assert(
      fc.property(cases, ({ path, more, turn }) => {
        const left = (p: readonly (readonly [number, number])[], halfWidthM = 0.04): number =>
          shareLeft([0, 0], 1, [{ path: p, halfWidthM }]);
        const plain = left(path);
        expect(left(path, 0.08)).toBeLessThanOrEqual(plain + ROUNDING);
        expect(left([...path, more])).toBeLessThanOrEqual(plain + ROUNDING);
        expect(left([...path].reverse())).toBeCloseTo(plain, 7);
        const [c, s] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
        const turned = path.map(([x, y]) => [c * x - s * y, s * x + c * y] as const);
        expect(left(turned)).toBeCloseTo(plain, 7);
        expect(left(path.map(([x, y]) => [-x, y] as const))).toBeCloseTo(plain, 7);
      }),
      { numRuns: 150, seed: 4 },
    );
  });

  it('is the disc less the trench itself where it ends inside, and the court of a ring about the stem', () => {
    const dot = shareLeft([0, 0], 1, [{ path: [[0.5, 0]], halfWidthM: 0.1 }]);
    expect(1 - dot).toBeCloseTo(0.01, 7);
    const hexagon = Array.from({ length: 7 }, (_, i): [number, number] => [
      0.5 * Math.cos((i * Math.PI) / 3),
      0.5 * Math.sin((i * Math.PI) / 3),
    ]);
    const court = 0.5 - 0.05 / Math.cos(Math.PI / 6);
    const area = 6 * 0.5 * Math.sin(Math.PI / 3) * court ** 2;
    expect(shareLeft([0, 0], 1, [{ path: hexagon, halfWidthM: 0.05 }])).toBeCloseTo(area / Math.PI, 9);
  });
});

describe('the rule for a trench', () => {
  it('never grows milder as it comes nearer or wider', () => {
    const RULES = ['clear', 'caution', 'arborist', 'no-dig'];
    const cases = fc.record({
      stemCm: fc.integer({ min: 8, max: 150 }),
      xM: fc.integer({ min: 0, max: 2000 }).map((cm) => cm / 100),
      nearerM: fc.integer({ min: 0, max: 300 }).map((cm) => cm / 100),
    });
    fc.assert(
      fc.property(cases, ({ stemCm, xM, nearerM }) => {
        const oak = tree(stemCm / 100);
        const rank = (x: number, widthM: number): number =>
          RULES.indexOf(harmOf([oak], [straight(x, widthM)])[0]?.rule ?? '');
        const far = rank(xM, 0.3);
        expect(rank(Math.max(0, xM - nearerM), 0.3)).toBeGreaterThanOrEqual(far);
        expect(rank(xM, 0.3 + nearerM)).toBeGreaterThanOrEqual(far);
      }),
      { numRuns: 200, seed: 9 },
    );
  });
});
