import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rank } from '../../packages/core/src/risk/rank.js';
import { scene } from '../scenes/scene.js';
import { AS_OF, sceneOf, type Yard, yards } from './yard.js';

const RUNS = { seed: 20_261_125, numRuns: 120 };

/** Things that may be said of a line beside what every drawn yard says. */
const sayings = fc.record(
  {
    dug: fc.integer({ min: 1950, max: 2040 }),
    cut: fc.integer({ min: 1950, max: 2040 }),
    installed: fc.integer({ min: 1850, max: 2060 }),
    sealed: fc.boolean(),
    seal_mpa: fc.double({ min: 0, max: 2, noNaN: true }),
    carries: fc.constantFrom('storm', 'foul'),
    depth_start_m: fc.double({ min: 0, max: 30, noNaN: true }),
    joint: fc.constantFrom('none', 'open'),
    size_mm: fc.double({ min: 10, max: 3000, noNaN: true }),
  },
  { requiredKeys: [] },
);

describe('every score', () => {
  it('is a number from 0 to 100 with low, likely and high in order', () => {
    const years = fc.double({ min: 0.1, max: 80, noNaN: true });
    fc.assert(
      fc.property(yards(), sayings, years, (yard, more, horizonYears) => {
        const options = { asOf: AS_OF, segmentM: yard.segmentM, horizonYears };
        const { segments, totals } = rank(sceneOf(yard, more).site(), options);
        expect(segments).toHaveLength(totals.segments);
        for (const { score, chance, inWorstTenth } of segments) {
          expect(Number.isFinite(score)).toBe(true);
          expect(chance.low).toBeGreaterThanOrEqual(0);
          expect(chance.likely).toBeGreaterThanOrEqual(chance.low);
          expect(chance.high).toBeGreaterThanOrEqual(chance.likely);
          expect(chance.high).toBeLessThanOrEqual(1);
          expect(score).toBeCloseTo(100 * chance.likely, 9);
          expect(inWorstTenth).toBeGreaterThanOrEqual(0);
          expect(inWorstTenth).toBeLessThanOrEqual(1);
        }
      }),
      RUNS,
    );
  });

  it('is above nothing beside a tree and nothing far from all', () => {
    fc.assert(
      fc.property(yards(), (yard) => {
        const at = (northM: number): number => {
          const moved: Yard = { ...yard, trees: yard.trees.map((t) => ({ ...t, eastM: 0, northM })) };
          const { segments } = rank(sceneOf(moved).site(), { asOf: AS_OF, segmentM: yard.segmentM });
          return Math.max(...segments.map((s) => s.score));
        };
        expect(at(1)).toBeGreaterThan(0);
        expect(at(200)).toBe(0);
      }),
      { ...RUNS, numRuns: 60 },
    );
  });
});

describe('the band', () => {
  it('is never to leave it be where no tree was given', () => {
    fc.assert(
      fc.property(yards(), sayings, (yard, more) => {
        const { segments, totals } = rank(sceneOf({ ...yard, trees: [] }, more).site(), {
          asOf: AS_OF,
          segmentM: yard.segmentM,
        });
        for (const { band, score } of segments) {
          expect(band).toBe('cannot-say');
          expect(score).toBe(0);
        }
        expect(totals.byBand.leave).toEqual({ segments: 0, lengthM: 0 });
      }),
      RUNS,
    );
  });

  it('is never to leave it be in the count of what is not reported either', () => {
    const made = scene().drain({
      path: [
        [0, 0],
        [30, 0],
      ],
      flow: 'as-drawn',
      material: 'clay',
    });
    expect(rank(made.site(), { asOf: AS_OF, top: 2 }).totals.byBand.leave.segments).toBe(0);
  });
});

describe('a ranking', () => {
  it('is the same to the digit for the same seed', () => {
    fc.assert(
      fc.property(yards(), fc.integer(), (yard, seed) => {
        const once = () => rank(sceneOf(yard).site(), { asOf: AS_OF, segmentM: yard.segmentM, seed });
        expect(once()).toStrictEqual(once());
      }),
      { ...RUNS, numRuns: 40 },
    );
  });

  it('has other intervals but the same likely values for another seed', () => {
    fc.assert(
      fc.property(yards(), fc.integer({ min: 1, max: 1e6 }), (yard, seed) => {
        const under = (s: number) =>
          rank(sceneOf(yard).site(), { asOf: AS_OF, segmentM: yard.segmentM, seed: s });
        const [one, other] = [under(seed), under(seed + 1)];
        expect(other.segments.map((s) => [s.id, s.chance.likely])).toEqual(
          one.segments.map((s) => [s.id, s.chance.likely]),
        );
        const worst = one.segments[0]?.chance;
        if (worst && worst.likely > 0) expect(other.segments[0]?.chance).not.toEqual(worst);
      }),
      { ...RUNS, numRuns: 40 },
    );
  });
});
