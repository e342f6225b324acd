import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Interval, unionOf } from '../../../packages/core/src/geometry/intervals.js';
import type { PlacedFinding } from '../../../packages/core/src/line/find.js';
import { layOutLines } from '../../../packages/core/src/line/line-model.js';
import { placeFindings } from '../../../packages/core/src/risk/known.js';
import { type Place, type Scene, scene } from '../../scenes/scene.js';

/** Lines through which a reel goes one after the other, from fitting `A` at the top to `Z` at the bottom. */
interface Way {
  readonly lengthsM: readonly number[];
  /** Whether each is drawn up instead of down. */
  readonly drawnUp: readonly boolean[];
  /** Where along the second line the first comes in as a branch, from its top; null: they lie in a row. */
  readonly teeAt: number | null;
}

const way: fc.Arbitrary<Way> = fc.record({
  lengthsM: fc.array(fc.double({ min: 4, max: 30, noNaN: true }), { minLength: 2, maxLength: 4 }),
  drawnUp: fc.array(fc.boolean(), { minLength: 4, maxLength: 4 }),
  teeAt: fc.option(fc.double({ min: 0.2, max: 0.8, noNaN: true }), { nil: null }),
});

const share = fc.double({ min: 0, max: 1, noNaN: true });
const ORIGIN = [-93, 45] as const;

/** Metres of each line that the reel goes through. */
function travelled({ lengthsM, teeAt }: Way): number[] {
  return lengthsM.map((lengthM, i) => (i === 1 && teeAt !== null ? lengthM * (1 - teeAt) : lengthM));
}

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

function drawn({ lengthsM, drawnUp, teeAt }: Way, origin: readonly [number, number] = ORIGIN): Scene {
  let made = scene(origin);
  const add = (i: number, path: readonly Place[]): void => {
    const up = drawnUp[i] === true;
    const flow = up ? 'reversed' : 'as-drawn';
    made = made.drain({ id: `line-${i}`, path: up ? [...path].reverse() : path, flow });
  };
  const [first, second] = lengthsM as [number, number];
  const top: Place = teeAt === null ? [-first, 0] : [teeAt * second, first];
  add(0, [top, teeAt === null ? [0, 0] : [teeAt * second, 0]]);
  let east = 0;
  lengthsM.slice(1).forEach((lengthM, i) => {
    add(i + 1, [
      [east, 0],
      [east + lengthM, 0],
    ]);
    east += lengthM;
  });
  return made
    .fitting({ id: 'A', type: 'downspout', at: top, drain: 'line-0' })
    .fitting({ id: 'Z', type: 'outlet', at: [east, 0], drain: `line-${lengthsM.length - 1}` });
}

/** Line in which a reel from `A` is when the counter reads `m`. */
function lineAt(lines: Way, m: number): string {
  let left = m;
  const lengths = travelled(lines);
  const found = lengths.findIndex((lengthM) => {
    left -= lengthM;
    return left <= 0;
  });
  return `line-${found < 0 ? lengths.length - 1 : found}`;
}

function placed(made: Scene): PlacedFinding[] {
  const site = made.site();
  const { byLine, issues } = placeFindings(site, layOutLines(site, 3));
  expect(issues).toEqual([]);
  return [...byLine.values()].flat();
}

/** Stations differ by less than this where the same place is measured in two ways, metres. */
const SAME_M = 1e-4;

function expectSame(one: readonly PlacedFinding[], other: readonly PlacedFinding[]): void {
  expect(one.length).toBe(other.length);
  one.forEach((piece, i) => {
    const like = other[i] as PlacedFinding;
    expect(piece.line).toBe(like.line);
    expect(Math.abs(piece.fromM - like.fromM)).toBeLessThan(SAME_M);
    expect(Math.abs(piece.toM - like.toM)).toBeLessThan(SAME_M);
  });
}

/** Two readings of the counter from `A`, and the line between them. */
function reading(lines: Way, a: number, b: number) {
  const wholeM = sum(travelled(lines));
  const [at, to] = [a * wholeM, b * wholeM];
  return { at, to, drain: lineAt(lines, (at + to) / 2) };
}

describe('what a reel saw', () => {
  it('is the same place in feet and in metres', () => {
    fc.assert(
      fc.property(way, share, share, (lines, a, b) => {
        const { at, to, drain } = reading(lines, a, b);
        const seen = { drain, from: 'A', seen: 'fine' };
        const inMetres = placed(drawn(lines).finding({ ...seen, at_m: at, to_m: to }));
        // the international foot of 0.3048 m exactly (NIST SP 811, 2008, appendix B.6)
        const inFeet = placed(drawn(lines).finding({ ...seen, at_ft: at / 0.3048, to_ft: to / 0.3048 }));
        expectSame(inFeet, inMetres);
      }),
      { numRuns: 60 },
    );
  });

  it('is as long along the pipes as by the counter', () => {
    fc.assert(
      fc.property(way, share, share, (lines, a, b) => {
        const { at, to, drain } = reading(lines, a, b);
        const pieces = placed(drawn(lines).finding({ drain, from: 'A', seen: 'fine', at_m: at, to_m: to }));
        const length = sum(pieces.map((piece) => piece.toM - piece.fromM));
        expect(Math.abs(length - Math.abs(to - at))).toBeLessThan(SAME_M);
        expect(pieces.every((piece) => piece.direction === 'downstream')).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  it('is the same stretch in two parts as in one', () => {
    const union = (pieces: readonly PlacedFinding[], line: number): Interval[] =>
      unionOf(
        pieces
          .filter((piece) => piece.line === line && piece.toM > piece.fromM)
          // a hair wider, so that parts that touch but for a rounding are one
          .map((piece) => [piece.fromM - SAME_M, piece.toM + SAME_M] as const),
      );
    fc.assert(
      fc.property(way, share, share, share, (lines, a, b, cut) => {
        const from = Math.min(a, b);
        const to = Math.max(a, b);
        const seen = (p: number, q: number) => {
          const { at, to: end, drain } = reading(lines, p, q);
          return { drain, from: 'A', seen: 'fine', at_m: at, to_m: end };
        };
        const middle = from + cut * (to - from);
        const whole = placed(drawn(lines).finding(seen(from, to)));
        const parts = placed(drawn(lines).finding(seen(from, middle)).finding(seen(middle, to)));
        lines.lengthsM.forEach((_, line) => {
          const [one, two] = [union(whole, line), union(parts, line)];
          expect(two.length).toBe(one.length);
          two.forEach(([x, y], i) => {
            expect(Math.abs(x - (one[i] as Interval)[0])).toBeLessThan(SAME_M);
            expect(Math.abs(y - (one[i] as Interval)[1])).toBeLessThan(SAME_M);
          });
        });
      }),
      { numRuns: 60 },
    );
  });

  it('is at the same station wherever on earth the site lies', () => {
    const origin = fc.tuple(
      fc.double({ min: -179, max: 179, noNaN: true }),
      fc.double({ min: -70, max: 70, noNaN: true }),
    );
    fc.assert(
      fc.property(way, share, share, origin, (lines, a, b, there) => {
        const { at, to, drain } = reading(lines, a, b);
        const seen = { drain, from: 'A', seen: 'fine', at_m: at, to_m: to };
        // what is drawn in one plane is measured in another: 0.3 ppm a kilometre and the slope of the scale
        expectSame(placed(drawn(lines, there).finding(seen)), placed(drawn(lines).finding(seen)));
      }),
      { numRuns: 60 },
    );
  });

  it('is the same place from above and from below', () => {
    fc.assert(
      fc.property(way, share, (lines, a) => {
        const { at, drain } = reading(lines, a, a);
        const fromAbove = { drain, from: 'A', seen: 'fine', at_m: at, direction: 'downstream' };
        const backM = Math.max(0, sum(travelled(lines)) - at);
        const fromBelow = { drain, from: 'Z', seen: 'fine', at_m: backM, direction: 'upstream' };
        const down = placed(drawn(lines).finding(fromAbove));
        const up = placed(drawn(lines).finding(fromBelow));
        expectSame(up, down);
        expect([down[0]?.direction, up[0]?.direction]).toEqual(['downstream', 'upstream']);
      }),
      { numRuns: 60 },
    );
  });
});
