import { describe, expect, it } from 'vitest';
import { gate } from '../../../packages/core/src/validate/gate.js';

const point = { type: 'Point', coordinates: [10, 50] };
const feature = { type: 'Feature', properties: { kind: 'tree' }, geometry: point };
const collection = (...features: unknown[]) => ({ type: 'FeatureCollection', features });

const codes = (value: unknown): string[] => gate('f', value).issues.map((issue) => issue.code);
const indices = (value: unknown): number[] => gate('f', value).features.map((f) => f.index);

describe('the first gate', () => {
  it('lets a collection through with the number of each feature', () => {
    expect(codes(collection(feature, feature))).toEqual([]);
    expect(indices(collection(feature, feature))).toEqual([0, 1]);
  });

  it('takes a lone feature for a collection of one', () => {
    expect(codes(feature)).toEqual([]);
    expect(indices(feature)).toEqual([0]);
  });

  it('takes a bare geometry, and says so', () => {
    expect(gate('f', point).issues).toMatchObject([
      { code: 'bare-geometry', type: 'Point', severity: 'warning' },
    ]);
    expect(indices(point)).toEqual([0]);
  });

  it('sets a broken feature aside and lets the rest through', () => {
    const broken = { type: 'Feature', properties: {}, geometry: { type: 'Point', coordinates: ['a', 'b'] } };
    const value = collection(feature, broken, feature, null, 7);
    expect(indices(value)).toEqual([0, 2]);
    expect(gate('f', value).issues).toMatchObject([
      { code: 'not-geojson', severity: 'error', place: { file: 'f', index: 1 } },
      { code: 'not-geojson', severity: 'error', place: { file: 'f', index: 3 } },
      { code: 'not-geojson', severity: 'error', place: { file: 'f', index: 4 } },
    ]);
  });

  // RFC 7946, 3.2: properties is an object or null, an id is a text or a number
  it('does not take a list for properties or an object for an id', () => {
    expect(codes(collection({ ...feature, properties: [1] }))).toEqual(['not-geojson']);
    expect(codes(collection({ ...feature, id: { a: 1 } }))).toEqual(['not-geojson']);
    expect(codes(collection({ ...feature, properties: null }))).toEqual([]);
  });

  it.each([
    ['nothing', null],
    ['a text', 'FeatureCollection'],
    ['a list', [feature]],
    ['an object of some other kind', { type: 'Topology' }],
    ['a collection without features', { type: 'FeatureCollection' }],
    ['a feature without geometry', { type: 'Feature', properties: {} }],
  ])('says that %s is not GeoJSON', (_, value) => {
    const found = gate('f', value);
    expect(found.features).toEqual([]);
    expect(found.issues).toMatchObject([{ code: 'not-geojson', severity: 'error' }]);
  });

  it('says of what is nested beyond reason that it cannot be read', () => {
    let deep: unknown = point;
    for (let i = 0; i < 20_000; i++) deep = { type: 'GeometryCollection', geometries: [deep] };
    expect(codes({ ...feature, geometry: deep })).toEqual(['not-geojson']);
  });
});
