import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { csvTable } from '../../packages/intake/src/formats/csv.js';
import { takeIn, takeInPieces } from '../../packages/intake/src/take/take-in.js';

/** The bytes in pieces of one size; a letter of several bytes may lie across a border. */
function* inPieces(bytes: Uint8Array, size: number): Iterable<Uint8Array> {
  // the room is used again, as a reader of files does
  const room = new Uint8Array(size);
  for (let at = 0; at < bytes.length; at += size) {
    const part = bytes.subarray(at, at + size);
    room.set(part);
    yield room.subarray(0, part.length);
  }
}

type Features = { features: unknown[] };
const featuresOf = (text: string): unknown[] => (JSON.parse(text) as Features).features;

/** Takes a file in whole and in pieces, and holds one against the other. */
async function expectSame(name: string, bytes: Uint8Array, size: number): Promise<unknown[]> {
  const [whole] = await takeIn({ name, bytes });
  const pieces = takeInPieces({ name, bytes: () => inPieces(bytes, size), collections: null });
  const features = [...(pieces?.texts ?? [])].flatMap(featuresOf);
  expect(features).toEqual(featuresOf(whole?.input.text ?? '{}'));
  expect(pieces?.report()).toEqual(whole?.report);
  expect(pieces?.map).toEqual(whole?.map);
  return features;
}

const quoted = (cell: string): string => `"${cell.replaceAll('"', '""')}"`;

/** Cells that look like borders, or hold a quote that opens nothing. */
const tricky = fc.constantFrom(
  'Maple, red',
  'two\nlines',
  'two\r\nlines',
  'said "elm"',
  '""',
  '\n',
  '5" clay',
  'Bäume 🌳',
  '',
  ' ',
);
const cell = fc.oneof(tricky, fc.string({ maxLength: 12 }));
const row = fc.record({ id: fc.nat(40), note: cell, trunk: fc.integer({ min: 5, max: 80 }), x: fc.nat(9) });
const table = fc.record({
  rows: fc.array(row, { maxLength: 40 }),
  end: fc.constantFrom('\n', '\r\n'),
  delimiter: fc.constantFrom(',', ';', '\t'),
  closed: fc.boolean(),
  mark: fc.constantFrom('', '\uFEFF'),
});

/** A table of trees; notes are quoted where they must be, and one in three of the others as well. */
function textOf({
  rows,
  end,
  delimiter,
  closed,
  mark,
}: typeof table extends fc.Arbitrary<infer T> ? T : never) {
  const lines = rows.map(({ id, note, trunk, x }, i) => {
    const plain = !/[\r\n",;\t]/.test(note) && i % 3 !== 0;
    return [id, plain ? note : quoted(note), trunk, -71 + x / 1000, 40.6].join(delimiter);
  });
  const text = [['id', 'Common Name', 'DBH', 'longitude', 'latitude'].join(delimiter), ...lines].join(end);
  return `${mark}${text}${closed ? end : ''}`;
}

const encode = (text: string): Uint8Array => new TextEncoder().encode(text);

describe('a table read in pieces', () => {
  it('gives the features and the report of the table read whole, wherever the pieces end', async () => {
    await fc.assert(
      fc.asyncProperty(table, fc.integer({ min: 1, max: 300 }), async (made, size) => {
        await expectSame('trees.csv', encode(textOf(made)), size);
      }),
      { numRuns: 200, seed: 3 },
    );
  });

  // Papa Parse, a general-purpose reader of CSV (RFC 4180), reading the whole text at once
  it('has the cells that the library finds in the whole text', () => {
    fc.assert(
      fc.property(table, fc.integer({ min: 1, max: 80 }), (made, size) => {
        const text = textOf({ ...made, mark: '' });
        const pieces = () => text.match(new RegExp(`[^]{1,${size}}`, 'g')) ?? [];
        const rows = [...csvTable('x.csv', pieces).records].flatMap((record) =>
          'properties' in record ? [record.properties] : [],
        );
        const read = Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: 'greedy' });
        expect(rows).toEqual(read.data);
      }),
      { numRuns: 200, seed: 4 },
    );
  });

  it('reads text of the old western code page and of UTF-16', async () => {
    const text = 'Baumart;Stammumfang;lon;lat\nAcer plátanoides;100;8,5;47\n'.replace('8,5', '8.5');
    const latin = Uint8Array.from(text, (letter) => letter.charCodeAt(0));
    const wide = Uint8Array.from(
      [0xff, 0xfe, ...text].flatMap((one) => (typeof one === 'number' ? [one] : [one.charCodeAt(0), 0])),
    );
    for (const size of [1, 7, 1000]) {
      for (const bytes of [latin, wide]) {
        const [tree] = await expectSame('baum.csv', bytes, size);
        expect(tree).toMatchObject({ properties: { species: 'Acer plátanoides' } });
      }
    }
  });

  it('says where a quote does not close, and what has more cells than columns; the rest is taken', async () => {
    const text = [
      'id,species,DBH,longitude,latitude',
      '1,Acer rubrum,30,-71,40',
      '2,Acer rubrum,30,-71.001,40,,',
      '3,Acer, rubrum,30,-71.002,40',
      '4,Acer rubrum,30',
      '5,"Acer rubrum,30,-71.003,40',
      '6,Acer rubrum,30,-71.004,40',
    ].join('\n');
    for (const size of [1, 10, 64, 1000]) {
      const features = await expectSame('trees.csv', encode(text), size);
      expect(features).toHaveLength(2);
    }
    const [taken] = await takeIn({ name: 'trees.csv', bytes: encode(text) });
    expect(taken?.report).toMatchObject({ rows: 5, taken: 2, aside: 3 });
    expect(taken?.report.entries.find(({ reason }) => reason === 'broken-row')).toMatchObject({
      count: 2,
      examples: ['row 3: 6 cells in 5 columns', 'row 5: quoted field unterminated'],
    });
  });

  it('reads one feature a line in the same way', async () => {
    const feature = (i: number): string =>
      JSON.stringify({
        type: 'Feature',
        properties: { spc_latin: `Acer rubrüm ${i}`, tree_dbh: i, ...(i === 30 ? { height: 3 } : {}) },
        geometry: { type: 'Point', coordinates: [-71 - i / 1000, 40.6] },
      });
    const lines = Array.from({ length: 40 }, (_, i) => (i === 7 ? '{"broken' : feature(i)));
    for (const size of [1, 13, 500, 100_000]) {
      const features = await expectSame('trees.ndjson', encode(`\u001e${lines.join('\n\u001e')}`), size);
      expect(features).toHaveLength(39);
    }
  });

  it('reads a collection that comes as several, with the columns of them all', async () => {
    const feature = (i: number) => ({
      type: 'Feature',
      properties: {
        BOTANICAL: 'Acer rubrum',
        DBH_IN: 3 + (i % 30),
        ...(i > 30 ? { CONDITION: i % 7 ? 'Good' : 'Stump' } : {}),
      },
      geometry: { type: 'Point', coordinates: [956424 + 9 * i, 168759] },
    });
    const collection = (from: number, to: number) =>
      JSON.stringify({
        type: 'FeatureCollection',
        crs: { type: 'name', properties: { name: 'EPSG:2263' } },
        features: Array.from({ length: to - from }, (_, i) => feature(from + i)),
      });
    const bytes = encode(collection(0, 50));
    const [whole] = await takeIn({ name: 'trees.geojson', bytes });
    const pieces = takeInPieces({
      name: 'trees.geojson',
      bytes: () => [bytes],
      collections: () => [collection(0, 20), collection(20, 33), collection(33, 50)],
    });
    const features = [...(pieces?.texts ?? [])].flatMap(featuresOf);
    expect(features).toEqual(featuresOf(whole?.input.text ?? ''));
    expect(features).toHaveLength(47);
    expect(pieces?.report()).toEqual(whole?.report);
  });

  it('cannot be had of what must be read whole', () => {
    const of = (name: string, text: string) =>
      takeInPieces({ name, bytes: () => [encode(text)], collections: null });
    expect(of('trees.kml', '<kml/>')).toBeNull();
    expect(of('trees.csv', 'PK\u0003\u0004')).toBeNull();
    expect(of('trees.geojson', '{}')).toBeNull();
  });
});
