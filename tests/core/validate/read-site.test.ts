import { describe, expect, it } from 'vitest';
import { readSite } from '../../../packages/core/src/validate/read-site.js';

const text = (features: readonly unknown[], members = {}) =>
  JSON.stringify({ type: 'FeatureCollection', ...members, features });
const at = (
  coordinates: readonly number[],
  properties: Readonly<Record<string, unknown>> | null,
  more = {},
) => ({
  type: 'Feature',
  properties,
  geometry: { type: 'Point', coordinates },
  ...more,
});
const along = (
  properties: Readonly<Record<string, unknown>> | null,
  path = [
    [10, 50],
    [10.0002, 50],
  ],
) => ({
  type: 'Feature',
  properties,
  geometry: { type: 'LineString', coordinates: path },
});
const finding = (properties: Readonly<Record<string, unknown>>) => ({
  type: 'Feature',
  properties: { kind: 'finding', ...properties },
  geometry: null,
});

const read = (features: readonly unknown[], members = {}) =>
  readSite([{ name: 'f', text: text(features, members) }]);
const codes = (reading: ReturnType<typeof readSite>): string[] =>
  reading.issues.map((issue) => issue.code).filter((code) => code !== 'nothing-to-score');

describe('a site', () => {
  it('is read from several files together', () => {
    const { site, issues, counts } = readSite([
      { name: 'trees', text: text([at([10, 50], { kind: 'tree', id: 't', species: 'Acer rubrum' })]) },
      { name: 'lines', text: text([along({ kind: 'drain', id: 'l', material: 'clay' })]) },
    ]);
    expect(site.trees.map((t) => t.id)).toEqual(['t']);
    expect(site.drains.map((d) => [d.id, d.origin])).toEqual([['l', { file: 'lines', index: 0 }]]);
    expect(issues).toEqual([]);
    expect(counts).toMatchObject({
      features: { tree: 1, drain: 1, fitting: 0 },
      species: { named: 1, genus: 0, unknown: 0 },
      materials: { named: 1, unknown: 0 },
    });
  });

  it('goes on after a file that is no JSON', () => {
    const { site, issues } = readSite([
      { name: 'broken', text: '{"type": "FeatureCollection", "features": [' },
      { name: 'lines', text: text([along({ kind: 'drain' })]) },
    ]);
    expect(site.drains).toHaveLength(1);
    expect(issues).toMatchObject([
      { code: 'not-json', place: { file: 'broken' } },
      { code: 'nothing-to-score', missing: 'trees' },
    ]);
  });

  it('says what is missing for a score', () => {
    expect(read([]).issues).toMatchObject([
      { code: 'nothing-to-score', missing: 'trees', severity: 'notice' },
      { code: 'nothing-to-score', missing: 'drains', severity: 'notice' },
    ]);
  });

  it('is read from nothing at all', () => {
    expect(readSite([]).site).toMatchObject({ trees: [], drains: [] });
  });
});

describe('a feature that does not say its kind', () => {
  it('is a tree where a point has a tree’s columns, whatever their case', () => {
    for (const columns of [
      { species: 'Acer' },
      { SPC_LATIN: 'Acer' },
      { common_name: 'maple' },
      { DBH: 12 },
      { girth_in: 40 },
    ]) {
      expect(read([at([10, 50], columns)]).site.trees).toHaveLength(1);
    }
  });

  it('is a drain where it is a line', () => {
    const reading = read([along(null)]);
    expect(reading.site.drains).toHaveLength(1);
    expect(reading.issues).toMatchObject([
      { code: 'kind-guessed', kind: 'drain', severity: 'notice' },
      { code: 'nothing-to-score' },
    ]);
  });

  it('is not used where nothing tells it', () => {
    expect(codes(read([at([10, 50], { colour: 'red' })]))).toEqual(['kind-unknown']);
  });

  it('is not guessed against what it says', () => {
    for (const kind of ['lamp-post', 'toString', '__proto__', 'hasOwnProperty', 5, true, {}]) {
      const reading = read([at([10, 50], { kind, species: 'Acer rubrum' })]);
      expect(reading.site.trees).toEqual([]);
      expect(codes(reading)).toEqual(['kind-unknown']);
    }
  });
});

describe('a trunk', () => {
  const stem = (properties: Readonly<Record<string, unknown>>, members = {}) =>
    read([at([10, 50], { kind: 'tree', ...properties })], members);
  const diameter = (properties: Readonly<Record<string, unknown>>, members = {}) =>
    stem(properties, members).site.trees[0]?.stemDiameterM;

  it('is a diameter, a girth, or several stems', () => {
    expect(diameter({ dbh_cm: 30 })).toBeCloseTo(0.3, 12);
    expect(diameter({ girth_cm: 100 })).toBeCloseTo(1 / Math.PI, 12);
    // BS 5837:2012, 4.6.1: two to five stems, root of the sum of squares
    expect(diameter({ stems_cm: [30, 40] })).toBeCloseTo(0.5, 12);
    expect(diameter({})).toBeNull();
  });

  it('without a unit is in inches where the site says so, else in centimetres', () => {
    expect(diameter({ dbh: 30 })).toBeCloseTo(0.3, 12);
    expect(diameter({ dbh: 10 }, { rootreach: { units: 'us' } })).toBeCloseTo(0.254, 12);
    expect(codes(stem({ dbh: 30 }))).toEqual(['unit-guessed']);
  });

  it('of more than a house’s width is doubted, and beyond reason not taken', () => {
    expect(codes(stem({ dbh_cm: 250 }))).toEqual(['odd-diameter']);
    expect(diameter({ dbh_cm: 250 })).toBeCloseTo(2.5, 12);
    expect(diameter({ dbh_cm: 450 })).toBeNull();
  });
});

describe('names', () => {
  it('that are not understood are said, and the feature stays', () => {
    const reading = read([
      at([10, 50], { kind: 'tree', species: 'zzqx' }),
      along({ kind: 'drain', material: 'cheese' }),
    ]);
    expect(codes(reading)).toEqual(['species-unknown', 'material-unknown']);
    expect(reading.counts).toMatchObject({ species: { unknown: 1 }, materials: { unknown: 1 } });
  });

  it('of stumps and empty pits are no trees', () => {
    const reading = read([at([10, 50], { kind: 'tree', species: 'Stump' })]);
    expect(codes(reading)).toEqual(['not-a-live-tree']);
    expect(reading.site.trees).toEqual([]);
  });

  it('of a felled tree stay, since its roots fade slowly', () => {
    const reading = read([
      at([10, 50], { kind: 'tree', species: 'Acer rubrum', condition: 'removed', felled: 2025 }),
    ]);
    expect(reading.site.trees).toMatchObject([{ felledYear: 2025.5 }]);
  });

  it('say that a pipe is perforated, unless the file says otherwise', () => {
    const perforated = (more: Readonly<Record<string, unknown>>) =>
      read([along({ kind: 'drain', material: 'perforated corrugated pipe', ...more })]).site.drains[0]
        ?.perforated;
    expect(perforated({})).toBe(true);
    expect(perforated({ perforated: false })).toBe(false);
  });
});

describe('a finding and a level', () => {
  it('need a reading', () => {
    const reading = read([
      finding({ drain: 'l', seen: 'fine' }),
      finding({ drain: 'l', seen: 'fine', at_ft: 10, to_m: 4, blocked_pct: 25, date: '2025-06' }),
      at([10, 50], { kind: 'level' }),
      at([10, 50], { kind: 'level', elevation_ft: -10 }),
    ]);
    expect(codes(reading)).toEqual(['missing-value', 'missing-value']);
    expect(reading.site.findings).toMatchObject([
      { atM: expect.closeTo(3.048, 9), toM: 4, blockedShare: 0.25 },
    ]);
    expect(reading.site.levels).toMatchObject([{ elevationM: expect.closeTo(-3.048, 9) }]);
  });

  it('may say which way the reel went and how many entries it passed', () => {
    const seen = { drain: 'l', seen: 'mass', at_m: 2 };
    const reading = read([
      finding({ ...seen, direction: 'downstream', entries: '3' }),
      finding(seen),
      finding({ ...seen, direction: 'down' }),
      finding({ ...seen, entries: 0 }),
      finding({ ...seen, entries: 1.5 }),
    ]);
    expect(reading.site.findings).toMatchObject([
      { direction: 'downstream', entries: 3 },
      { direction: null, entries: null },
    ]);
    const bad = reading.issues.filter((issue) => issue.code === 'bad-value');
    expect(bad.map((issue) => issue.place.path)).toEqual([
      'properties.direction',
      'properties.entries',
      'properties.entries',
    ]);
  });
});

describe('ids', () => {
  it('are taken from the properties, else from the feature, numbers too', () => {
    const reading = read([
      at([10, 50], { kind: 'tree', id: 7 }),
      at([10, 50], { kind: 'tree' }, { id: 'by-feature' }),
      at([10, 50], { kind: 'tree', id: '' }),
      at([10, 50], { kind: 'tree', id: '7' }),
    ]);
    expect(reading.site.trees.map((t) => t.id)).toEqual(['7', 'by-feature', 't3', '7-2']);
    expect(codes(reading)).toEqual(['duplicate-id']);
  });

  it('are apart by kind', () => {
    expect(codes(read([at([10, 50], { kind: 'tree', id: 'a' }), along({ kind: 'drain', id: 'a' })]))).toEqual(
      [],
    );
  });
});

describe('members of the collection', () => {
  it('that name another grid are not applied', () => {
    const crs = { type: 'name', properties: { name: 'EPSG:25832' } };
    expect(read([along({ kind: 'drain' })], { crs }).issues).toMatchObject([
      { code: 'crs-member', name: 'EPSG:25832' },
      { code: 'nothing-to-score' },
    ]);
  });

  it('that box it must run from south to north', () => {
    expect(codes(read([along({ kind: 'drain' })], { bbox: [10, 51, 11, 50] }))).toEqual(['bbox-order']);
    expect(codes(read([along({ kind: 'drain' })], { bbox: [10, 50, 0, 11, 51, 9] }))).toEqual([]);
  });
});

describe('the same fault on every feature', () => {
  it('is listed fifty times and counted beyond', () => {
    const many = Array.from({ length: 80 }, () => at([10, 50], { kind: 'tree', dbh_cm: -1 }));
    const { issues } = read(many);
    expect(issues.filter((i) => i.code === 'bad-value')).toHaveLength(50);
    expect(issues).toContainEqual(
      expect.objectContaining({ code: 'more-of-the-same', of: 'bad-value', count: 30, severity: 'error' }),
    );
  });
});
