import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { chunksOf, textOfChunk } from '../../packages/cli/src/town/chunks.js';

const folder = mkdtempSync(join(tmpdir(), 'rootreach-chunks-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Names that look like the border between two features. */
const tricky = fc.constantFrom(
  '},{"type":"Feature"',
  '{"type":"Feature"',
  'a "quoted" \\ name',
  'Bäume\n',
  '',
);

const feature = fc.record({ name: fc.oneof(tricky, fc.string()), x: fc.integer() }).map((properties) => ({
  type: 'Feature',
  properties,
  geometry: { type: 'Point', coordinates: [1, 2] },
}));

describe('a file cut into pieces', () => {
  it('has in its pieces, in order, every feature of the whole, whatever stands in the names', () => {
    fc.assert(
      fc.property(
        fc.array(feature, { maxLength: 60 }),
        fc.integer({ min: 1, max: 800 }),
        fc.boolean(),
        (features, bytes, spaced) => {
          const path = join(folder, 'x.geojson');
          const list = features.map((one) => JSON.stringify(one)).join(spaced ? ' ,\n ' : ',');
          writeFileSync(
            path,
            `{"type":"FeatureCollection","rootreach":{"soil":"clay"},"features":[${list}],"after":[1,2]}`,
          );
          const texts = chunksOf(path, bytes).map(textOfChunk);
          const pieces = texts.map((text) => JSON.parse(text) as { features: unknown[]; rootreach: unknown });
          expect(pieces.flatMap((piece) => piece.features)).toEqual(features);
          for (const piece of pieces) expect(piece.rootreach).toEqual({ soil: 'clay' });
        },
      ),
      { numRuns: 150, seed: 5 },
    );
  });

  it('stays whole where its features are written in another way', () => {
    const path = join(folder, 'y.geojson');
    writeFileSync(
      path,
      '{"features":[{"geometry":null,"type":"Feature","properties":{}}],"type":"FeatureCollection"}',
    );
    expect(chunksOf(path, 10)).toHaveLength(1);
  });
});
