import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { isFeatureCollection } from 'geojson-validation';
import { afterAll, describe, expect, it } from 'vitest';
import { csv } from '../../packages/cli/src/print/csv.js';
import { csvCells } from '../fuzz/csv-cells.js';
import { CORNER_LOT, call, callOn } from './call.js';
import { smallSite } from './small-site.js';

/** Rows of a text as RFC 4180, section 2, has them. */
function rowsOf(text: string): string[][] {
  const rows: string[][] = [[]];
  let at = 0;
  while (at < text.length) {
    const quoted = /^"((?:[^"]|"")*)"/.exec(text.slice(at));
    const cell = quoted ?? (/^[^,\r\n]*/.exec(text.slice(at)) as RegExpExecArray);
    rows[rows.length - 1]?.push(quoted ? (quoted[1] as string).replaceAll('""', '"') : cell[0]);
    at += cell[0].length;
    if (text[at] === ',') at += 1;
    else {
      expect(text.slice(at, at + 2)).toBe('\r\n');
      at += 2;
      if (at < text.length) rows.push([]);
    }
  }
  return rows;
}

describe('rank --csv', () => {
  it('has a header and one row a segment, all of one width', async () => {
    const { code, out } = await call(['rank', CORNER_LOT, '--csv']);
    const rows = rowsOf(out);
    const result = JSON.parse((await call(['rank', CORNER_LOT, '--json'])).out) as {
      segments: { id: string; startM: number; band: string }[];
    };
    expect(code).toBe(0);
    expect(rows).toHaveLength(1 + result.segments.length);
    expect(new Set(rows.map((row) => row.length)).size).toBe(1);
    const [header = [], ...body] = rows;
    const column = (name: string) => body.map((row) => row[header.indexOf(name)] ?? '');
    expect(column('segment')).toEqual(result.segments.map(({ id }) => id));
    expect(column('band')).toEqual(result.segments.map(({ band }) => band));
    column('start_m').forEach((cell, i) => {
      expect(Number(cell)).toBeCloseTo(result.segments[i]?.startM ?? Number.NaN, 3);
    });
  });

  it('is in feet where asked, and its columns say so', async () => {
    const metres = rowsOf((await call(['rank', CORNER_LOT, '--csv'])).out);
    const feet = rowsOf((await call(['rank', CORNER_LOT, '--csv', '--units', 'us'])).out);
    const at = metres[0]?.indexOf('length_m') ?? -1;
    expect(feet[0]?.[at]).toBe('length_ft');
    // the international foot is 0.3048 m exactly
    expect(Number(feet[1]?.[at]) * 0.3048).toBeCloseTo(Number(metres[1]?.[at]), 2);
  });

  it.each([
    ['=1+1', "'=1+1"],
    ['@x', "'@x"],
    ['-2+3', "'-2+3"],
    ['+A1', "'+A1"],
    ['\t=1', "'\t'=1"],
    ['=HYPERLINK("a","b")', "'=HYPERLINK("],
    ['＝1', "'＝1"],
    // set to other customs a spreadsheet splits at semicolons, whatever stands between quotes
    ['a;=1+1;b', "a;'=1+1;b"],
    ['a; "-1', 'a; ""\'-1'],
  ])('has no cell that starts a formula for a line called %j', async (name, written) => {
    const { out } = await callOn(smallSite({ id: name, name }, { id: name }), 'rank', '--csv');
    const cells = [...rowsOf(out), ...[',', ';', '\t'].flatMap((delimiter) => csvCells(out, delimiter))];
    for (const cell of cells.flat()) expect(cell).not.toMatch(/^[=+@\t\r＝]|^-(?!\d+(\.\d+)?$)/);
    expect(out).toContain(written);
  });

  it('can be read back, whatever stands in it', () => {
    const cell = fc.oneof(
      fc.string(),
      fc.string({ unit: 'binary' }),
      fc.constantFrom('=1', '"', 'a,b', '\r\n'),
    );
    fc.assert(
      fc.property(fc.array(fc.array(cell, { minLength: 2, maxLength: 2 }), { minLength: 1 }), (rows) => {
        // but for the marks that keep a text from being a formula
        const bare = (table: readonly (readonly string[])[]) =>
          table.map((row) => row.map((text) => text.replace(/'(?=[=+\-@\t\r\n＝＋－＠])/gu, '')));
        expect(bare(rowsOf(csv(rows)))).toEqual(bare(rows));
      }),
    );
  });
});

describe('rank --geojson', () => {
  it('is GeoJSON by RFC 7946: one line feature a segment, counter-checked', async () => {
    const { out } = await call(['rank', CORNER_LOT, '--geojson']);
    const collection = JSON.parse(out) as GeoJSON.FeatureCollection;
    expect(isFeatureCollection(collection, true)).toEqual([]);
    const { segments } = JSON.parse((await call(['rank', CORNER_LOT, '--json'])).out) as {
      segments: Record<string, unknown>[];
    };
    expect(collection.features.map(({ properties, geometry }) => ({ ...properties, geometry }))).toEqual(
      segments,
    );
    for (const { geometry } of collection.features) {
      expect(geometry.type).toBe('LineString');
      // RFC 7946, 3.1.1 and 4: longitude, then latitude, in degrees
      for (const [lon = 999, lat = 999] of (geometry as GeoJSON.LineString).coordinates) {
        expect(lon).toBeCloseTo(-71.2, 2);
        expect(lat).toBeCloseTo(40.6, 2);
      }
    }
  });
});

describe('--out', () => {
  const folder = mkdtempSync(join(tmpdir(), 'rootreach-'));
  afterAll(() => rmSync(folder, { recursive: true }));

  it('writes what would have been printed, whole, and says where on stderr', async () => {
    const path = join(folder, 'worst.csv');
    writeFileSync(path, 'old');
    const { code, out, err } = await call(['rank', CORNER_LOT, '--csv', '--out', path]);
    expect([code, out, err]).toEqual([0, '', `Wrote ${path}.\n`]);
    expect(readFileSync(path, 'utf8')).toBe((await call(['rank', CORNER_LOT, '--csv'])).out);
    expect(readdirSync(folder)).toEqual(['worst.csv']);
  });

  it('leaves the old file alone where the work fails', async () => {
    const path = join(folder, 'worst.csv');
    const before = readFileSync(path, 'utf8');
    expect((await callOn('{', 'rank', '--csv', '--out', path)).code).toBe(2);
    expect(readFileSync(path, 'utf8')).toBe(before);
    expect(readdirSync(folder)).toEqual(['worst.csv']);
  });

  it.each([
    ['a folder', (): string => folder],
    ['a folder that is not there', (): string => join(folder, 'no', 'where.csv')],
    ['the input itself', (): string => CORNER_LOT],
  ])('refuses %s in one line', async (_, path) => {
    const { code, out, err } = await call(['rank', CORNER_LOT, '--out', path()]);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/^rootreach: .*\n$/);
    expect(readdirSync(folder)).toEqual(['worst.csv']);
  });

  it('is plain text, a hundred columns wide, whatever the terminal', async () => {
    const path = join(folder, 'table.txt');
    await call(['rank', CORNER_LOT, '--out', path], { isTTY: true, styled: true, columns: 60 });
    expect(readFileSync(path, 'utf8')).toBe((await call(['rank', CORNER_LOT])).out);
  });
});
