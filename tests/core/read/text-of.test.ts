import { readSite } from '@rootreach/core';
import { describe, expect, it } from 'vitest';
import { featuresOf, taken } from '../../intake/town-files.js';

/** Throws where it is made into text by `String`. */
const UNNAMEABLE = { toString: null, valueOf: 1 };
const TEXT = '{"toString":null,"valueOf":1}';
const LINE = [
  [-80, 40],
  [-80.0003, 40],
];
const collection = (properties: object, id?: unknown): string =>
  JSON.stringify({
    type: 'FeatureCollection',
    features: [{ type: 'Feature', id, properties, geometry: { type: 'LineString', coordinates: LINE } }],
  });

describe('an object where a text belongs', () => {
  it('is told as its JSON in a site file', () => {
    const drain = readSite([{ name: 'f', text: collection({ kind: 'drain', id: UNNAMEABLE }) }]);
    expect(drain.issues.map(({ code, place }) => [code, place?.feature])).toContainEqual(['bad-value', TEXT]);
    const { issues } = readSite([{ name: 'f', text: collection({ kind: UNNAMEABLE }, 'a') }]);
    expect(issues).toContainEqual(expect.objectContaining({ code: 'kind-unknown', kind: TEXT }));
  });

  it('is told as its JSON in a table', async () => {
    const properties = {
      PIPE_ID: UNNAMEABLE,
      MATERIAL: UNNAMEABLE,
      DIAMETER: UNNAMEABLE,
      INSTALLED: [UNNAMEABLE],
    };
    const [feature] = featuresOf(await taken('pipes.geojson', collection(properties)));
    expect(feature?.properties).toMatchObject({ id: TEXT, material: TEXT });
  });
});
