import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import type { Feature, FeatureCollection, LineString, Point } from 'geojson';
import { describe, expect, it } from 'vitest';
import { rank } from '../../packages/core/src/risk/rank.js';
import { Rescorer } from '../../packages/core/src/risk/rescorer.js';
import { readSite } from '../../packages/core/src/validate/read-site.js';
import { SiteReader } from '../../packages/core/src/validate/site-reader.js';

const AS_OF = '2026-11-25';
const collectionOf = (name: string): FeatureCollection =>
  JSON.parse(readFileSync(new URL(`../../data/sites/${name}.geojson`, import.meta.url), 'utf8'));

const lot = collectionOf('corner-lot');

/** A collection with one line and two trees more, so that edits meet findings, barriers and levels as well. */
const rich: FeatureCollection = {
  ...lot,
  features: [
    ...lot.features,
    ...[0, 1].map(
      (n): Feature => ({
        type: 'Feature',
        properties: {
          kind: 'finding',
          id: `seen${n}`,
          drain: 'tail',
          from: 'start',
          at_m: 2 + 3 * n,
          seen: n ? 'fine' : 'clear',
          to_m: 4 + 3 * n,
          date: '2024',
        },
        geometry: null as never,
      }),
    ),
  ],
};

type Edit = (collection: FeatureCollection) => FeatureCollection;

const withFeature =
  (at: number, make: (feature: Feature) => Feature): Edit =>
  (collection) => {
    const features = [...collection.features];
    const number = at % features.length;
    features[number] = make(features[number] as Feature);
    return { ...collection, features };
  };

/** Moves a point, or the first corner of a line, by some metres. */
const moved = (feature: Feature, east: number, north: number): Feature => {
  const by = ([lon, lat]: number[]): number[] => [
    Number(((lon as number) + east * 1.3e-5).toFixed(8)),
    Number(((lat as number) + north * 9e-6).toFixed(8)),
  ];
  const { geometry } = feature;
  if (geometry?.type === 'Point')
    return { ...feature, geometry: { ...geometry, coordinates: by((geometry as Point).coordinates) } };
  if (geometry?.type !== 'LineString') return feature;
  const [first, ...rest] = (geometry as LineString).coordinates;
  return { ...feature, geometry: { ...geometry, coordinates: [by(first as number[]), ...rest] } };
};

const metres = fc.integer({ min: -60, max: 60 }).map((n) => n / 10);
const at = fc.nat(1000);
const edits: fc.Arbitrary<Edit> = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.tuple(at, metres, metres).map(([n, e, s]) => withFeature(n, (f) => moved(f, e, s))),
  },
  {
    weight: 3,
    arbitrary: fc
      .tuple(
        at,
        fc.constantFrom(
          { sealed: true },
          { dbh_cm: 61 },
          { material: 'clay' },
          { dug: 2019 },
          { note: 'seen' },
        ),
      )
      .map(([n, set]) => withFeature(n, (f) => ({ ...f, properties: { ...f.properties, ...set } }))),
  },
  {
    weight: 2,
    arbitrary: at.map(
      (n): Edit =>
        (c) => ({ ...c, features: c.features.filter((_, i) => i !== n % c.features.length) }),
    ),
  },
  {
    weight: 2,
    arbitrary: fc.tuple(at, metres).map(
      ([n, e]): Edit =>
        (c) => {
          const like = c.features.find((f) => f.properties?.['kind'] === 'tree');
          if (!like) return c;
          const tree = {
            ...moved(like, e, -e),
            properties: { ...like.properties, id: `new${n}-${c.features.length}` },
          };
          return { ...c, features: [...c.features, tree] };
        },
    ),
  },
  {
    weight: 1,
    arbitrary: fc.constantFrom('sand', 'clay').map(
      (soil): Edit =>
        (c) =>
          ({
            ...c,
            rootreach: { ...(c as never as { rootreach: object }).rootreach, soil },
          }) as FeatureCollection,
    ),
  },
);

const readAgain = (collection: FeatureCollection) =>
  readSite([{ name: 'lot', text: JSON.stringify(collection) }]);

describe('reading a sketch again after each edit', () => {
  it('comes to what reading the whole as text comes to, whatever was edited', () => {
    fc.assert(
      fc.property(fc.array(edits, { minLength: 1, maxLength: 6 }), (sequence) => {
        const reader = new SiteReader('lot');
        let now = rich;
        reader.take(now);
        for (const edit of sequence) {
          now = edit(now);
          const reading = reader.take(now);
          // undefined members are lost on the way through text
          expect(JSON.parse(JSON.stringify(reading))).toEqual(JSON.parse(JSON.stringify(readAgain(now))));
        }
      }),
      { seed: 41, numRuns: 60 },
    );
  });

  it('keeps what was not touched, object for object', () => {
    const reader = new SiteReader('lot');
    const before = reader.take(rich).site;
    const number = rich.features.findIndex((f) => f.properties?.['kind'] === 'tree');
    const after = reader.take(withFeature(number, (f) => moved(f, 1, 1))(rich)).site;
    expect(after.trees.filter((tree, i) => tree !== before.trees[i])).toHaveLength(1);
    expect(after.drains.every((drain, i) => drain === before.drains[i])).toBe(true);
  });
});

describe('scoring a sketch again after each edit', () => {
  const RUNS = { seed: 42, numRuns: 25 };

  it('gives the ranking of the whole site, to the last digit, whatever was edited', () => {
    fc.assert(
      fc.property(fc.array(edits, { minLength: 1, maxLength: 5 }), (sequence) => {
        const rescorer = new Rescorer();
        let now = rich;
        rescorer.take(readAgain(now).site, AS_OF);
        rescorer.settle();
        for (const edit of sequence) {
          now = edit(now);
          const { site } = readAgain(now);
          rescorer.take(site, AS_OF);
          expect(rescorer.settle()).toBe(true);
          expect(rescorer.result()).toEqual(rank(site, { asOf: AS_OF }));
        }
      }),
      RUNS,
    );
  });

  it('has the likely scores, the bands and the order of the ranking before it is sampled', () => {
    const told = (result: ReturnType<typeof rank>) =>
      result.segments.map(({ rank: place, id, score, band, chance }) => [
        place,
        id,
        score,
        band,
        chance.likely,
      ]);
    fc.assert(
      fc.property(fc.array(edits, { minLength: 1, maxLength: 4 }), (sequence) => {
        const rescorer = new Rescorer();
        rescorer.take(readAgain(rich).site, AS_OF);
        rescorer.settle();
        let now = rich;
        for (const edit of sequence) {
          now = edit(now);
          const { site } = readAgain(now);
          rescorer.take(site, AS_OF);
          const quick = rescorer.result();
          const full = rank(site, { asOf: AS_OF });
          expect(told(quick)).toEqual(told(full));
          expect(quick.totals).toEqual(full.totals);
          for (const { chance } of quick.segments) {
            expect(chance.low).toBeLessThanOrEqual(chance.likely);
            expect(chance.high).toBeGreaterThanOrEqual(chance.likely);
          }
        }
      }),
      RUNS,
    );
  });

  it('samples in parts when asked to, and comes to the same', () => {
    const { site } = readAgain(rich);
    const rescorer = new Rescorer();
    rescorer.take(site, AS_OF);
    let turns = 0;
    while (!rescorer.settle(7)) turns += 1;
    expect(turns).toBe(Math.ceil(rank(site, { asOf: AS_OF }).segments.length / 7) - 1);
    expect(rescorer.result()).toEqual(rank(site, { asOf: AS_OF }));
  });

  it('keeps the rows of lines that no change reaches, object for object', () => {
    const campus = collectionOf('small-campus');
    const reader = new SiteReader('campus');
    const rescorer = new Rescorer();
    rescorer.take(reader.take(campus).site, AS_OF);
    const before = new Map(rescorer.result().segments.map((row) => [row.id, row]));
    const number = campus.features.findIndex((f) => f.properties?.['kind'] === 'tree');
    rescorer.take(reader.take(withFeature(number, (f) => moved(f, 1, 0))(campus)).site, AS_OF);
    const after = rescorer.result().segments;
    const kept = after.filter((row) => before.get(row.id)?.trees === row.trees);
    expect(kept.length).toBeGreaterThan(after.length / 2);
    expect(kept.length).toBeLessThan(after.length);
  });

  it('scores everything anew at another date', () => {
    const { site } = readAgain(rich);
    const rescorer = new Rescorer();
    rescorer.take(site, AS_OF);
    rescorer.take(site, '2036-11-25');
    rescorer.settle();
    expect(rescorer.result()).toEqual(rank(site, { asOf: '2036-11-25' }));
  });

  it('throws for a date that is none', () => {
    expect(() => new Rescorer().take(readAgain(rich).site, 'soon')).toThrow(RangeError);
  });
});
