import { afterEach, expect, it, vi } from 'vitest';
import { countOf, featuresOf, taken } from './town-files.js';

afterEach(() => {
  vi.restoreAllMocks();
});

const LINE = '{"type":"LineString","coordinates":[[-70.6,40.5],[-70.5998,40.5]]}';
const quoted = (cell: string) => `"${cell.replaceAll('"', '""')}"`;

it('a cell that is no geometry costs its own row alone', async () => {
  const cells = ['5', 'null', '{"type":"LineString","coordinates":null}', '{"coordinates":[[1,2]]}'];
  const rows = [LINE, LINE, LINE, LINE, LINE, ...cells].map((cell, i) => `p${i},clay,${quoted(cell)}`);
  const read = await taken('lines.csv', `pipe_id,material,the_geom\n${rows.join('\n')}\n`);
  expect(featuresOf(read)).toHaveLength(5);
  expect(countOf(read, 'no-position')).toBe(cells.length);
});

it('a geometry without a type or coordinates costs its own feature alone', async () => {
  const feature = (geometry: unknown, id: number) => ({
    type: 'Feature',
    properties: { TREE_ID: id, Botanical: 'Acer rubrum' },
    geometry,
  });
  const point = { type: 'Point', coordinates: [-70.6, 40.5] };
  // an object with a toString of its own is no number and cannot be made one
  const odd = [
    { coordinates: [1, 2] },
    { type: 'Point' },
    { type: 'Point', coordinates: [null, {}] },
    { type: 'Point', coordinates: [-70.6, { toString: 40.5 }] },
  ];
  const features = [point, point, point, point, point, ...odd].map(feature);
  const read = await taken('trees.geojson', JSON.stringify({ type: 'FeatureCollection', features }));
  expect(featuresOf(read)).toHaveLength(5);
  expect(countOf(read, 'no-position')).toBe(odd.length);
  expect(JSON.stringify(read.report)).not.toMatch(/NaN|undefined/);
});

it('columns of one name are told apart without a word on the console', async () => {
  const warn = vi.spyOn(console, 'warn').mockImplementation(() => undefined);
  const read = await taken('trees.csv', 'id,species,id,lon,lat\n1,Acer rubrum,2,-70.6,40.5\n');
  expect(warn).not.toHaveBeenCalled();
  expect(featuresOf(read)[0]?.properties).toMatchObject({ id: '1', species: 'Acer rubrum' });
});

it('a column named like what every object has is empty where the file has none', async () => {
  const map = {
    schema: 1,
    kind: 'rootreach-columns',
    what: 'tree',
    position: { from: 'columns', x: 'lon', y: 'lat' },
    crs: null,
    latitudeFirst: false,
    columns: { species: { column: 'toString' }, id: { column: 'constructor' } },
  } as const;
  const read = await taken('trees.csv', 'lon,lat\n-70.6,40.5\n', { map });
  expect(JSON.stringify(featuresOf(read))).not.toContain('native code');
});
