import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readSite } from '../../packages/core/src/validate/read-site.js';

/*
 * What is valid, invalid and merely unwise GeoJSON by RFC 7946. Where the environment variable
 * ROOTREACH_OPEN_DATA names a folder with the public collection of examples `geojson-validity-a` (MIT licence,
 * 74 files), all of them are read; the cases below stand for it everywhere else.
 */
const folder = join(process.env['ROOTREACH_OPEN_DATA'] ?? '', 'geojson-validity-a');
const hasFolder = process.env['ROOTREACH_OPEN_DATA'] !== undefined && existsSync(folder);

const square = [
  [10, 50],
  [10.001, 50],
  [10.001, 50.001],
  [10, 50.001],
  [10, 50],
];
const point = { type: 'Point', coordinates: [10, 50] };
const feature = (geometry: unknown, more: object = {}) => ({
  type: 'Feature',
  properties: {},
  geometry,
  ...more,
});
const polygon = (...rings: unknown[]) => feature({ type: 'Polygon', coordinates: rings });

type Kind = 'valid' | 'invalid' | 'problematic';

/** Cases with the section of RFC 7946 that decides them. */
const cases: readonly (readonly [kind: Kind, section: string, what: string, value: unknown])[] = [
  ['valid', '3.2', 'a feature', feature(point)],
  ['valid', '3.2', 'a feature without geometry or properties', { ...feature(null), properties: null }],
  ['valid', '3.2', 'a feature with a number for an id', feature(point, { id: 7 })],
  ['valid', '3.3', 'a collection of nothing', { type: 'FeatureCollection', features: [] }],
  [
    'valid',
    '5',
    'a collection with a bbox',
    { type: 'FeatureCollection', bbox: [9, 49, 11, 51], features: [feature(point)] },
  ],
  ['valid', '3.1', 'a geometry by itself', point],
  ['valid', '3.1.6', 'a ring that runs counter-clockwise', polygon(square)],
  ['invalid', '3.1.6', 'an outer ring that runs clockwise', polygon([...square].reverse())],
  ['invalid', '3.1.6', 'a ring that is not closed', polygon(square.slice(0, 4))],
  [
    'invalid',
    '3.1.6',
    'a ring of two places',
    polygon([
      [10, 50],
      [10.001, 50],
      [10, 50],
      [10, 50],
    ]),
  ],
  ['invalid', '3.1.1', 'coordinates that are texts', feature({ type: 'Point', coordinates: ['10', '50'] })],
  ['invalid', '3.1.1', 'a position of one number', feature({ type: 'Point', coordinates: [10] })],
  ['invalid', '3.2', 'properties that are a list', { ...feature(point), properties: [] }],
  ['invalid', '3.2', 'an id that is an object', feature(point, { id: {} })],
  ['invalid', '3.2', 'a geometry that is a text', feature('POINT (10 50)')],
  ['invalid', '3', 'an unknown type', { type: 'Features', features: [] }],
  ['invalid', '3', 'a type in lower case', { type: 'featurecollection', features: [] }],
  ['invalid', '3.3', 'a collection without features', { type: 'FeatureCollection' }],
  [
    'invalid',
    '3.3',
    'a collection with nothing for a feature',
    { type: 'FeatureCollection', features: [null] },
  ],
  ['invalid', '5', 'a bbox of three numbers', feature({ ...point, bbox: [1, 2, 3] })],
  ['invalid', '5', 'a bbox with a text in it', { ...point, bbox: [1, 2, 3, '4'] }],
  [
    'problematic',
    '3.1.1',
    'a position of four numbers',
    feature({ type: 'Point', coordinates: [10, 50, 1, 2] }),
  ],
  [
    'problematic',
    '4',
    'an old crs member',
    { type: 'FeatureCollection', crs: {}, features: [feature(point)] },
  ],
  ['problematic', '4', 'degrees that are none', feature({ type: 'Point', coordinates: [50, 91] })],
  [
    'problematic',
    '3.1.9',
    'a square across the 180th meridian',
    polygon([
      [179, 0],
      [-179, 0],
      [-179, 1],
      [179, 1],
      [179, 0],
    ]),
  ],
  [
    'problematic',
    '11.2',
    'more digits than there is to measure',
    feature({ type: 'Point', coordinates: [10.123456789012, 50] }),
  ],
  [
    'problematic',
    '3.1.8',
    'a collection within a collection',
    feature({
      type: 'GeometryCollection',
      geometries: [{ type: 'GeometryCollection', geometries: [point] }],
    }),
  ],
];

function severities(text: string): { errors: number; warnings: number } {
  const { issues } = readSite([{ name: 'case.geojson', text }]);
  const of = (severity: string) => issues.filter((issue) => issue.severity === severity).length;
  return { errors: of('error'), warnings: of('warning') };
}

function expectKind(kind: Kind, text: string): void {
  const { errors, warnings } = severities(text);
  if (kind === 'invalid') expect(errors).toBeGreaterThan(0);
  else expect(errors).toBe(0);
  if (kind === 'problematic') expect(warnings).toBeGreaterThan(0);
}

describe('RFC 7946', () => {
  it.each(cases)('%s by section %s: %s', (kind, _section, _what, value) => {
    expectKind(kind, JSON.stringify(value));
  });
});

/** Every file of the public collection, or none where it is not at hand. */
function publicFiles(): (readonly [kind: Kind, path: string])[] {
  if (!hasFolder) return [];
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .flatMap(({ name }) =>
      readdirSync(join(folder, name))
        .filter((file) => file.endsWith('.geojson'))
        .map((file) => [name.split('_')[0] as Kind, join(name, file)] as const),
    );
}

describe('the public collection of examples', () => {
  const files = publicFiles();

  it('is there as a whole, where it is at all', () => {
    expect(files).toHaveLength(hasFolder ? 74 : 0);
  });

  for (const [kind, path] of files) {
    it(`${kind}: ${path}`, () => expectKind(kind, readFileSync(join(folder, path), 'utf8')));
  }
});
