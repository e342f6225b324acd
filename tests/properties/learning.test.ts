import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { summaryOf } from '../../packages/core/src/infer/density.js';
import { type GroupEvidence, pooledPosterior } from '../../packages/core/src/infer/pooled.js';
import { learn, observe } from '../../packages/core/src/learn/learn.js';
import type { LearnedModel } from '../../packages/core/src/model/learned.js';
import type { SegmentResult } from '../../packages/core/src/model/result.js';
import type { Observation } from '../../packages/core/src/risk/observed.js';
import { rank } from '../../packages/core/src/risk/rank.js';
import { readSite } from '../../packages/core/src/validate/read-site.js';
import type { Scene } from '../scenes/scene.js';
import { AS_OF, sceneOf, type Yard, yards } from './yard.js';

const RUNS = { seed: 20_261_125, numRuns: 25 };
const FEW = { seed: 20_261_125, numRuns: 12 };
const COUNTS = { sites: 1, lines: 1 };

const GROUPS = ['mortar/clay', 'mortar/concrete', 'gasket/pvc-sdr35', 'gasket/hdpe-dual-wall'];

const observations = (): fc.Arbitrary<Observation[]> =>
  fc.array(
    fc
      .record({
        line: fc.constantFrom('a', 'b', 'c', 'd', 'e'),
        group: fc.constantFrom(...GROUPS),
        saw: fc.constantFrom('none' as const, 'some' as const, 'count' as const),
        entries: fc.integer({ min: 1, max: 12 }),
        expected: fc.double({ min: 0.001, max: 6, noNaN: true }),
      })
      .map((o) => ({
        ...o,
        entries: o.saw === 'count' ? o.entries : 0,
        drainId: o.line,
        fromM: 0,
        toM: 5,
        year: 2020,
        sinceYear: 1980,
      })),
    { minLength: 1, maxLength: 12 },
  );

const meansOf = (model: LearnedModel): number[] =>
  [...model.groups, ...model.kinds].map((g) => g.multiplier.mean);

describe('learning', () => {
  it('never lowers a rate for more entries, nor that of another group of the kind', () => {
    fc.assert(
      fc.property(observations(), fc.nat(), fc.integer({ min: 1, max: 9 }), (seen, pick, more) => {
        const at = pick % seen.length;
        const worse = seen.map(
          (o, i): Observation => (i === at ? { ...o, saw: 'count', entries: o.entries + more } : o),
        );
        // a stretch with roots not counted holds one at least
        const before = seen.map(
          (o, i): Observation => (i === at && o.saw === 'some' ? { ...o, saw: 'count', entries: 1 } : o),
        );
        const [low, high] = [learn(before, COUNTS), learn(worse, COUNTS)];
        low.groups.forEach((g, i) => {
          const m = high.groups[i]?.multiplier;
          expect(m?.low).toBeGreaterThanOrEqual(g.multiplier.low * (1 - 1e-6));
          expect(m?.mean).toBeGreaterThanOrEqual(g.multiplier.mean * (1 - 1e-9));
          expect(m?.high).toBeGreaterThanOrEqual(g.multiplier.high * (1 - 1e-6));
        });
      }),
      RUNS,
    );
  });

  it('raises a rate for roots that were not counted, and lowers it for a clean stretch', () => {
    fc.assert(
      fc.property(observations(), fc.double({ min: 0.01, max: 3, noNaN: true }), (seen, expected) => {
        const first = seen[0] as Observation;
        const meanOf = (list: readonly Observation[]): number =>
          learn(list, COUNTS).groups.find((g) => g.group === first.group)?.multiplier.mean ?? Number.NaN;
        const plain = meanOf(seen);
        expect(meanOf([...seen, { ...first, saw: 'some', entries: 0, expected }])).toBeGreaterThan(plain);
        expect(meanOf([...seen, { ...first, saw: 'none', entries: 0, expected }])).toBeLessThan(plain);
      }),
      RUNS,
    );
  });

  it('gives the same digits in whatever order observations and sites come', () => {
    fc.assert(
      fc.property(observations(), fc.infiniteStream(fc.nat()), (seen, stream) => {
        const shuffled = seen
          .map((o) => ({ o, key: stream.next().value as number }))
          .sort((a, b) => a.key - b.key)
          .map(({ o }) => o);
        expect(learn(shuffled, COUNTS)).toEqual(learn(seen, COUNTS));
      }),
      RUNS,
    );
  });

  it('is never less sure of a group than before anything was seen, by more than a tenth', () => {
    fc.assert(
      fc.property(observations(), (seen) => {
        for (const g of learn(seen, COUNTS).groups) {
          expect(g.logSd).toBeLessThan(1.1 * g.priorLogSd);
          expect(g.multiplier.low).toBeLessThan(g.multiplier.high);
          expect(Number.isFinite(g.multiplier.mean)).toBe(true);
        }
      }),
      RUNS,
    );
  });
});

describe('a group with little data', () => {
  const lines = (count: number, entries: number, expected: number): GroupEvidence =>
    Array.from({ length: count }, () => ({ entries, expected, some: [] }));
  const meanOf = (groups: readonly GroupEvidence[]): number => {
    const [first] = pooledPosterior(groups);
    return first ? summaryOf(first).mean : Number.NaN;
  };

  it('leans on its neighbours of the same kind, the less the more is known of itself', () => {
    const neighbour = fc.record({
      count: fc.integer({ min: 3, max: 20 }),
      times: fc.constantFrom(0, 0.2, 0.5, 2, 4, 8),
      expected: fc.integer({ min: 1, max: 4 }),
    });
    fc.assert(
      fc.property(neighbour, ({ count, times, expected }) => {
        const theirs = lines(count, Math.round(times * expected), expected);
        const pulls = [0, 2, 8, 32].map((own) => {
          const mine = lines(own, 1, 1);
          return Math.log(meanOf([mine, theirs]) / meanOf([mine]));
        });
        const sign = Math.sign(pulls[0] as number);
        const ratio = Math.round(times * expected) / expected;
        if (ratio !== 1) expect(sign).toBe(Math.sign(ratio - 1));
        pulls.slice(1).forEach((pull, i) => {
          expect(Math.abs(pull)).toBeLessThanOrEqual(Math.abs(pulls[i] as number) + 1e-9);
        });
      }),
      FEW,
    );
  });
});

const seenOn = (yard: Yard, findings: readonly Readonly<Record<string, unknown>>[]): Scene =>
  findings.reduce<Scene>((made, f) => made.finding({ drain: 'line', from: 'end', ...f }), sceneOf(yard));

const observed = (made: Scene): Observation[] => observe(made.site(), { asOf: AS_OF }).observations;

const ranked = (made: Scene, segmentM: number, learned?: LearnedModel): SegmentResult[] => {
  const { segments } = rank(made.site(), { asOf: AS_OF, segmentM, ...(learned ? { learned } : {}) });
  return [...segments].sort((a, b) => a.startM - b.startM);
};

const laidBefore2010 = (): fc.Arbitrary<Yard> =>
  yards().map((yard) => ({
    ...yard,
    line: { ...yard.line, installed: Math.min(2009, yard.line.installed) },
  }));

describe('findings', () => {
  it('move no posterior by more than 1e-9 where a stretch is told in two parts', () => {
    const share = fc.double({ min: 0.02, max: 0.98, noNaN: true });
    const kinds = fc.constantFrom('clear', 'counted', 'some');
    fc.assert(
      fc.property(laidBefore2010(), fc.tuple(share, share, share), kinds, (yard, shares, kind) => {
        const [a, b, c] = shares.map((s) => s * yard.lengthM).sort((x, y) => x - y) as [
          number,
          number,
          number,
        ];
        fc.pre(b - a > 0.01 && c - b > 0.01);
        const seen = kind === 'clear' ? 'clear' : 'mass';
        const part = (from: number, to: number, entries: number) => ({
          at_m: from,
          to_m: to,
          seen,
          date: '2020-04-01',
          ...(kind === 'counted' ? { entries } : {}),
        });
        const whole = meansOf(learn(observed(seenOn(yard, [part(a, c, 5)])), COUNTS));
        const split = meansOf(learn(observed(seenOn(yard, [part(a, b, 2), part(b, c, 3)])), COUNTS));
        expect(split.length).toBe(whole.length);
        split.forEach((mean, i) => {
          expect(Math.abs(mean - (whole[i] as number))).toBeLessThanOrEqual(1e-9);
        });
      }),
      RUNS,
    );
  });

  it('do not depend on the order of the features', () => {
    fc.assert(
      fc.property(laidBefore2010(), fc.infiniteStream(fc.nat()), (yard, stream) => {
        const L = yard.lengthM;
        const made = seenOn(yard, [
          { at_m: 0, to_m: L / 2, seen: 'clear', date: 2015 },
          { at_m: L / 2, to_m: L, seen: 'fine', date: 2015 },
          { at_m: L / 3, seen: 'fine', date: 2015 },
          { at_m: L / 3 + 0.5, seen: 'mass', entries: 2, date: 2015 },
          { at_m: 0, to_m: L, seen: 'clear', date: 2020 },
          { at_m: L / 4, to_m: L, seen: 'full', entries: 3, date: 2022 },
        ]);
        const json = made.toGeoJson();
        const features = json.features
          .map((feature) => ({ feature, key: feature.geometry ? 0 : 1 + (stream.next().value as number) }))
          .sort((a, b) => a.key - b.key)
          .map(({ feature }) => feature);
        const other = readSite([{ name: 'scene', text: JSON.stringify({ ...json, features }) }]).site;
        expect(observe(other, { asOf: AS_OF }).observations).toEqual(observed(made));
      }),
      FEW,
    );
  });

  it('leave a ranking as it was to the last digit where there are none', () => {
    const nothing = learn([], COUNTS);
    fc.assert(
      fc.property(yards(), (yard) => {
        const made = sceneOf(yard);
        expect(ranked(made, yard.segmentM, nothing)).toEqual(ranked(made, yard.segmentM));
      }),
      FEW,
    );
  });

  it('of a clean line lower its scores and never bring the next look forward', () => {
    fc.assert(
      fc.property(laidBefore2010(), (yard) => {
        const plain = ranked(sceneOf(yard), yard.segmentM);
        const clear = { at_m: 0, to_m: yard.lengthM, seen: 'clear', date: '2025-06-01' };
        const made = seenOn(yard, [clear]);
        // a tree that has but just come within reach tells nothing of the years before
        const told = observed(made).every((o) => o.expected > 1e-9);
        ranked(made, yard.segmentM).forEach((s, i) => {
          const before = plain[i] as SegmentResult;
          expect(s.score).toBeLessThanOrEqual(before.score);
          if (told && before.score > 0) expect(s.score).toBeLessThan(before.score);
          expect(Number(s.nextLook)).toBeGreaterThanOrEqual(Number(before.nextLook));
        });
      }),
      RUNS,
    );
  });

  it('of roots raise the joints of the other segments of the line', () => {
    fc.assert(
      fc.property(laidBefore2010(), (yard) => {
        fc.pre(yard.lengthM > 2 * yard.segmentM);
        const plain = ranked(sceneOf(yard), yard.segmentM);
        const roots = { at_m: 0, to_m: yard.segmentM / 2, seen: 'mass', date: '2025-06-01' };
        const made = seenOn(yard, [roots]);
        const seen = ranked(made, yard.segmentM);
        const told = observed(made).some((o) => o.expected > 0);
        seen.slice(1).forEach((s, i) => {
          const [now, before] = [s.expectedEntries, (plain[i + 1] as SegmentResult).expectedEntries];
          if (told && before.joints > 0) expect(now.joints).toBeGreaterThan(before.joints);
          else expect(now.joints).toBe(before.joints);
          expect(now.crush).toBe(before.crush);
        });
      }),
      RUNS,
    );
  });
});

/** Width of the 80 % interval in the logarithm of the expected entries. */
const widthOf = ({ chance }: SegmentResult): number =>
  Math.log(Math.log1p(-chance.high) / Math.log1p(-chance.low));

describe('a ranking with what was learned', () => {
  // as many seen as expected, so that the shares of the ways in stay what they were
  it('has narrower intervals for the groups that were seen', () => {
    fc.assert(
      fc.property(yards(), (yard) => {
        const made = sceneOf(yard);
        const groups = new Set(
          observed(
            seenOn({ ...yard, line: { ...yard.line, installed: 1940 } }, [
              { at_m: 0, to_m: yard.lengthM, seen: 'clear', date: 2020 },
            ]),
          ).map((o) => o.group),
        );
        const seen = [...groups].flatMap((group) =>
          Array.from(
            { length: 12 },
            (_, i): Observation => ({
              drainId: `${i}`,
              line: `${i}`,
              group,
              saw: 'count',
              entries: 2,
              expected: 2,
              year: 2020,
              sinceYear: 1980,
              fromM: 0,
              toM: 20,
            }),
          ),
        );
        const learned = learn(seen, COUNTS);
        const plain = ranked(made, yard.segmentM);
        ranked(made, yard.segmentM, learned).forEach((s, i) => {
          const before = plain[i] as SegmentResult;
          if (before.chance.low > 1e-12) expect(widthOf(s)).toBeLessThan(widthOf(before));
        });
      }),
      FEW,
    );
  });
});

describe('an example', () => {
  const yard: Yard = {
    lengthM: 12,
    segmentM: 3,
    line: {
      material: 'concrete',
      joint: 'mortar',
      pieceM: 1.4,
      perforated: false,
      depthStartM: 0.6,
      depthEndM: 0.6,
      installed: 1985,
      wet: 'dry',
    },
    trees: [{ eastM: 0, northM: 3, species: 'Acer rubrum', dbhCm: 40, canopyM: null }],
  };

  it('names a later next look where the line was seen clean last year', () => {
    const clear = { at_m: 0, to_m: 12, seen: 'clear', date: '2025-06-01' };
    const before = ranked(sceneOf(yard), 3).map((s) => Number(s.nextLook));
    const after = ranked(seenOn(yard, [clear]), 3).map((s) => Number(s.nextLook));
    after.forEach((year, i) => {
      expect(year).toBeGreaterThan(before[i] as number);
    });
  });
});
