import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wordIssue } from '../../packages/core/src/explain/issue-words.js';
import { rank } from '../../packages/core/src/risk/rank.js';
import { readSite } from '../../packages/core/src/validate/read-site.js';
import { AS_OF } from './yard.js';

const RUNS = { seed: 20_261_125, numRuns: 300 };

/** Reads a text and scores what came of it; every issue has words, every number is one. */
function throughAll(text: string): void {
  const { site, issues } = readSite([{ name: 'f', text }]);
  const result = rank(site, { asOf: AS_OF, segmentM: 50, top: 20 });
  for (const issue of [...issues, ...result.issues]) expect(wordIssue(issue)).not.toMatch(/undefined|NaN/);
  for (const segment of result.segments) {
    expect(segment.score).toBeGreaterThanOrEqual(0);
    expect(segment.score).toBeLessThanOrEqual(100);
    expect(Object.values(segment.chance).every(Number.isFinite)).toBe(true);
  }
}

/** Degrees close together, now and then off the globe, missing or no number. */
const degree = fc.oneof(
  { weight: 12, arbitrary: fc.double({ min: 9.999, max: 10.001, noNaN: true }) },
  { weight: 1, arbitrary: fc.constantFrom<unknown>(null, 'x', 181, -191, 5e5, 1e308) },
);
const position = fc.array(degree, { minLength: 1, maxLength: 3 });
const pair = fc.tuple(degree, degree);
const path = fc.array(fc.oneof({ weight: 9, arbitrary: pair }, { weight: 1, arbitrary: position }), {
  maxLength: 5,
});
const geometry = fc.oneof(
  fc.record({ type: fc.constant('Point'), coordinates: fc.oneof(pair, position) }),
  fc.record({ type: fc.constant('LineString'), coordinates: path }),
  fc.record({ type: fc.constant('Polygon'), coordinates: fc.array(path, { maxLength: 2 }) }),
  fc.record({ type: fc.constant('MultiLineString'), coordinates: fc.array(path, { maxLength: 2 }) }),
  fc.record({ type: fc.constantFrom('MultiPoint', 'Circle', 'GeometryCollection'), coordinates: path }),
  fc.constant(null),
);

const value = fc.oneof(
  fc.constantFrom<unknown>(
    '',
    ' ',
    '12',
    0,
    -1,
    3,
    1e6,
    true,
    null,
    '2004',
    '2004-13',
    'clay',
    'Acer rubrum',
    'start',
  ),
  fc.jsonValue({ maxDepth: 1 }),
);
const NAMES = [
  'id',
  'species',
  'dbh_cm',
  'dbh_in',
  'dbh',
  'stems_cm',
  'canopy_radius_m',
  'planted',
  'felled',
  'condition',
  'material',
  'size_mm',
  'piece_ft',
  'joint',
  'sealed',
  'depth_start_m',
  'depth_end_ft',
  'installed',
  'dug',
  'cut',
  'flow',
  'wet',
  'type',
  'drain',
  'from',
  'at_m',
  'to_ft',
  'seen',
  'blocked_pct',
  'date',
  'elevation_m',
  'perforated',
];
const properties = fc
  .tuple(
    fc.constantFrom<unknown>(
      'tree',
      'drain',
      'fitting',
      'finding',
      'obstacle',
      'barrier',
      'level',
      'constructor',
      5,
      undefined,
    ),
    fc.dictionary(fc.constantFrom(...NAMES), value, { maxKeys: 6 }),
  )
  .map(([kind, rest]) => (kind === undefined ? rest : { ...rest, kind }));

describe('no input', () => {
  it('stops the reading: any text', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        throughAll(text);
      }),
      RUNS,
    );
  });

  it('stops the reading: features of any kind, shape and content', () => {
    const feature = fc.record({ type: fc.constant('Feature'), properties, geometry });
    const members = fc.record({ rootreach: value, bbox: value, crs: value }, { requiredKeys: [] });
    fc.assert(
      fc.property(fc.array(feature, { maxLength: 8 }), members, (features, more) => {
        throughAll(JSON.stringify({ type: 'FeatureCollection', ...more, features }));
      }),
      RUNS,
    );
  });
});
