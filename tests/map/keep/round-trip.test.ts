import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exactNumbers } from '../../../apps/map/src/keep/exact-numbers.js';
import { fileText } from '../../../apps/map/src/keep/file-text.js';
import { withName } from '../../../apps/map/src/keep/site-text.js';
import { setProperties } from '../../../apps/map/src/sketch/changes.js';
import { refOf } from '../../../apps/map/src/sketch/document.js';
import { readDocument } from '../../../apps/map/src/sketch/read-document.js';
import { textOf } from '../../../packages/core/src/read/text-of.js';

const open = (text: string) => readDocument('k', [{ name: 'a.geojson', text: exactNumbers(text) }]).document;
const shelf = new URL('../../../data/', import.meta.url);
const textsIn = (folder: string) =>
  readdirSync(new URL(folder, shelf)).map(
    (name) => [name, readFileSync(new URL(`${folder}/${name}`, shelf), 'utf8')] as const,
  );

/** JSON has no -0: it is written as 0 (ECMA-262, SerializeJSONProperty). */
const json = fc.jsonValue({ maxDepth: 4 }).map((value) => JSON.parse(JSON.stringify(value)) as unknown);
const key = fc.oneof(fc.string(), fc.constantFrom('__proto__', 'constructor', 'toString', 'name', 'Ünï'));
const bag = fc
  .array(fc.tuple(key, json), { maxLength: 5 })
  .map((entries) => Object.fromEntries(entries) as Record<string, unknown>);

const degree = fc.double({ min: -80, max: 80, noNaN: true });
const position = fc.tuple(degree, degree).map((at) => JSON.parse(JSON.stringify(at)) as number[]);
const tree = fc.record({ at: position, more: bag, foreign: bag });
const site = fc
  .record({ trees: fc.array(tree, { maxLength: 6 }), members: bag, info: bag })
  .map(({ trees, members, info }) => ({
    ...members,
    type: 'FeatureCollection',
    rootreach: info,
    features: trees.map(({ at, more, foreign }, i) => ({
      ...foreign,
      type: 'Feature',
      properties: { ...more, kind: 'tree', id: `own-${i}` },
      geometry: { type: 'Point', coordinates: at },
    })),
  }));

describe('a file that is opened and saved', () => {
  it('is equal, whatever the page does not know of it', () => {
    fc.assert(
      fc.property(site, (given) => {
        const text = JSON.stringify(given);
        expect(JSON.parse(fileText(open(text)))).toEqual(JSON.parse(text));
      }),
      { numRuns: 300, seed: 7 },
    );
  });

  it('keeps the order of things and of what is said of them', () => {
    fc.assert(
      fc.property(site, (given) => {
        const text = JSON.stringify(given.features);
        const saved = JSON.parse(fileText(open(JSON.stringify(given)))) as { features: unknown };
        expect(JSON.stringify(saved.features)).toBe(text);
      }),
      { numRuns: 200, seed: 8 },
    );
  });

  it('is equal but for what was edited', () => {
    fc.assert(
      fc.property(site, fc.nat(), (given, pick) => {
        if (given.features.length === 0) return;
        const before = open(JSON.stringify(given));
        const at = pick % before.features.length;
        const one = before.features[at];
        if (!one) throw new Error('no feature');
        const after = setProperties(refOf(one), { height_m: 12.5 })(before);
        const saved = fileText(after, 2);
        const expected = JSON.parse(JSON.stringify(given));
        expected.features[at].properties.height_m = 12.5;
        expect(JSON.parse(saved)).toEqual(expected);
        expect(open(saved)).toEqual(after);
      }),
      { numRuns: 200, seed: 9 },
    );
  });

  for (const [name, text] of [...textsIn('sites'), ...textsIn('bad')]) {
    it(`loses nothing that is in ${name}`, () => {
      const once = open(text);
      const again = open(fileText(once));
      // a box that was wrong is put right
      const { bbox: _, ...members } = once.members;
      expect(again).toMatchObject({ ...once, members });
      let given: { type?: string; features?: unknown[] };
      try {
        given = JSON.parse(exactNumbers(text));
      } catch {
        expect(once.features).toEqual([]);
        return;
      }
      if (given.type !== 'FeatureCollection' || !Array.isArray(given.features)) return;
      const things = given.features.filter((one) => typeof one === 'object' && one !== null);
      expect(once.features.length).toBe(things.length);
      const seen = new Set<string>();
      things.forEach((one, i) => {
        const { properties, ...rest } = one as { properties?: Record<string, unknown> | null };
        expect(once.features[i]).toMatchObject(rest);
        if (typeof properties !== 'object' || properties === null || Array.isArray(properties)) return;
        const isRepeated = seen.has(textOf(properties['id']));
        seen.add(textOf(properties['id']));
        const { id, ...others } = properties;
        expect(once.features[i]?.properties).toMatchObject(isRepeated || id === '' ? others : properties);
      });
    });
  }

  it('keeps an id with who had it first and gives new ones round it', () => {
    const point = { type: 'Point', coordinates: [1, 2] };
    const features = [
      { species: 'oak' },
      { kind: 'tree', id: 't1' },
      { kind: 'tree', id: 't1' },
      { note: 'x' },
    ];
    const text = JSON.stringify({
      type: 'FeatureCollection',
      features: features.map((properties) => ({ type: 'Feature', properties, geometry: point })),
    });
    expect(open(text).features.map((one) => [one.properties['kind'], one.properties['id']])).toEqual([
      ['tree', 't2'],
      ['tree', 't1'],
      ['tree', 't3'],
      [undefined, undefined],
    ]);
    expect(readDocument('k', [{ name: 'a', text }]).isAsGiven).toBe(false);
  });

  it('puts several files together and passes over one that is broken', () => {
    const [, lot] = textsIn('sites').find(([name]) => name === 'corner-lot.geojson') ?? [];
    const { document } = readDocument('k', [
      { name: 'a', text: '{"type":' },
      { name: 'b', text: '\uFEFF{"type":"FeatureCollection","rootreach":{"name":"First"},"features":[]}' },
      { name: 'c', text: lot ?? '' },
    ]);
    expect(document.info['name']).toBe('First');
    expect(document.info['soil']).toBe('loam');
    expect(document.features.length).toBe(JSON.parse(lot ?? '').features.length);
  });

  it('says anew how far it reaches once something lies outside the box it came with (RFC 7946, 5)', () => {
    const text = (box: number[], at: number[]) =>
      JSON.stringify({
        type: 'FeatureCollection',
        rootreach: {},
        bbox: box,
        features: [
          {
            type: 'Feature',
            bbox: box,
            properties: { kind: 'tree', id: 'a' },
            geometry: { type: 'Point', coordinates: at },
          },
        ],
      });
    const saved = (box: number[], at: number[]) => JSON.parse(fileText(open(text(box, at))));
    expect(saved([0, 0, 2, 2], [1, 1])).toMatchObject({
      bbox: [0, 0, 2, 2],
      features: [{ bbox: [0, 0, 2, 2] }],
    });
    expect(saved([0, 0, 2, 2], [5, 1])).toMatchObject({
      bbox: [5, 1, 5, 1],
      features: [{ bbox: [5, 1, 5, 1] }],
    });
    // across the antimeridian west is larger than east
    expect(saved([177, -20, -178, -16], [-179, -18]).bbox).toEqual([177, -20, -178, -16]);
  });

  it('takes another name without any other change', () => {
    for (const [, text] of textsIn('sites')) {
      const renamed = JSON.parse(withName(text, 'New <b>name</b>'));
      const given = JSON.parse(text);
      expect(renamed).toEqual({ ...given, rootreach: { ...given.rootreach, name: 'New <b>name</b>' } });
    }
  });
});
