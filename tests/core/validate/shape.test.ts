import { describe, expect, it } from 'vitest';
import { readSite } from '../../../packages/core/src/validate/read-site.js';

type Coordinates = readonly unknown[];

/** Issues and number of features kept of a collection with one feature. */
function reading(
  properties: Readonly<Record<string, unknown>>,
  type: string,
  coordinates: Coordinates,
  more = {},
) {
  const feature = { type: 'Feature', properties, geometry: { type, coordinates }, ...more };
  const { issues, counts } = readSite([
    { name: 'f', text: JSON.stringify({ type: 'FeatureCollection', features: [feature] }) },
  ]);
  return {
    issues: issues
      .filter((i) => i.code !== 'nothing-to-score')
      .map(({ code, severity }) => `${severity} ${code}`),
    kept: Object.values(counts.features).reduce((sum, n) => sum + n, 0),
  };
}

const tree = (at: Coordinates) => reading({ kind: 'tree' }, 'Point', at);
const drain = (path: Coordinates, type = 'LineString') =>
  reading({ kind: 'drain', flow: 'as-drawn' }, type, path);
const house = (rings: Coordinates) => reading({ kind: 'obstacle', type: 'building' }, 'Polygon', rings);

const CLEAN = { issues: [], kept: 1 };
const ring = [
  [0, 0],
  [0.001, 0],
  [0.001, 0.001],
  [0, 0.001],
  [0, 0],
];

describe('coordinates that can be used', () => {
  it('are on the globe', () => {
    expect(tree([10, 50])).toEqual(CLEAN);
    expect(tree([180, -90])).toEqual(CLEAN);
    expect(tree([181, 50])).toEqual({ issues: ['error out-of-range'], kept: 0 });
    expect(tree([50, 95])).toEqual({ issues: ['error out-of-range'], kept: 0 });
  });

  it('are degrees and not metres of a grid', () => {
    expect(tree([432_000, 5_411_000])).toEqual({ issues: ['error projected-coordinates'], kept: 0 });
    expect(
      drain([
        [432_000, 5_411_000],
        [432_010, 5_411_000],
      ]),
    ).toEqual({
      issues: ['error projected-coordinates'],
      kept: 0,
    });
  });

  it('may have a height, which is not used', () => {
    expect(tree([10, 50, 123])).toEqual({ issues: ['warning extra-dimensions'], kept: 1 });
  });

  it('may have more digits than there is to measure, which is said', () => {
    expect(tree([10.123456789, 50])).toEqual(CLEAN);
    expect(tree([10.12345678912, 50])).toEqual({ issues: ['warning excess-precision'], kept: 1 });
  });

  it('do not cross the 180th meridian uncut', () => {
    expect(
      drain([
        [179.9999, 10],
        [-179.9999, 10],
      ]),
    ).toEqual({ issues: ['error antimeridian'], kept: 0 });
  });
});

describe('lines', () => {
  it('have a length', () => {
    expect(
      drain([
        [10, 50],
        [10, 50],
      ]),
    ).toEqual({ issues: ['warning zero-length'], kept: 0 });
    expect(
      drain(
        [
          [
            [10, 50],
            [10, 50],
          ],
        ],
        'MultiLineString',
      ).kept,
    ).toBe(0);
  });

  it('may repeat a point, of which one is used', () => {
    expect(
      drain([
        [10, 50],
        [10, 50],
        [10.0001, 50],
      ]),
    ).toEqual({ issues: ['warning duplicate-nodes'], kept: 1 });
  });

  it('may come as a many-part line of one part but not of more', () => {
    const part = [
      [10, 50],
      [10.0001, 50],
    ];
    expect(drain([part], 'MultiLineString')).toEqual({ issues: ['warning single-member'], kept: 1 });
    expect(drain([part, part], 'MultiLineString')).toEqual({ issues: ['error wrong-geometry'], kept: 0 });
  });

  it('are no place for a tree', () => {
    expect(
      reading({ kind: 'tree' }, 'LineString', [
        [10, 50],
        [10.0001, 50],
      ]),
    ).toEqual({
      issues: ['error wrong-geometry'],
      kept: 0,
    });
  });
});

// RFC 7946, 3.1.6: closed rings, exterior counter-clockwise, interior clockwise
describe('areas', () => {
  it('have an outer ring that runs counter-clockwise', () => {
    expect(house([ring])).toEqual(CLEAN);
    expect(house([[...ring].reverse()])).toEqual({ issues: ['error ring-orientation'], kept: 1 });
  });

  it('have three corners', () => {
    expect(
      house([
        [
          [0, 0],
          [0.001, 0],
          [0, 0],
          [0, 0],
        ],
      ]),
    ).toMatchObject({ kept: 0 });
  });

  it('may have a hole, which is said', () => {
    const hole = [
      [0.0002, 0.0002],
      [0.0002, 0.0004],
      [0.0004, 0.0004],
      [0.0004, 0.0002],
      [0.0002, 0.0002],
    ];
    expect(house([ring, hole])).toEqual({ issues: ['warning holes'], kept: 1 });
  });

  it('may cross themselves, which is said', () => {
    const bow = [
      [0, 0],
      [0.001, 0.001],
      [0.001, 0],
      [0, 0.001],
      [0, 0],
    ];
    expect(house([bow])).toEqual({ issues: ['warning self-intersection'], kept: 1 });
  });
});

describe('a box that does not hold its feature', () => {
  const path = [
    [10, 50],
    [10.0001, 50],
  ];
  const boxed = (bbox: number[]) => reading({ kind: 'drain' }, 'LineString', path, { bbox });

  it('is said and not used', () => {
    expect(boxed([10, 50, 10.0001, 50])).toEqual(CLEAN);
    expect(boxed([50, 10, 50, 10.0001])).toEqual({ issues: ['warning bbox-order'], kept: 1 });
  });

  it('is fine where it crosses the 180th meridian', () => {
    expect(boxed([170, 50, -170, 50])).toEqual(CLEAN);
  });
});
