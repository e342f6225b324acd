import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { call } from './call.js';

const folder = mkdtempSync(join(tmpdir(), 'rootreach-convert-'));
afterAll(() => rmSync(folder, { recursive: true }));
const at = (name: string): string => join(folder, name);

writeFileSync(
  at('trees.csv'),
  'TreeNo,Art,Umfang,lon,lat\n1,Acer platanoides,120,1.5,50\n2,Stump,30,1.5,50.001\n3,Tilia cordata,,1.5,50.002\n',
);

describe('rootreach convert', () => {
  it('writes a site file, says what became of the rows, and keeps the columns to be edited', async () => {
    const { code, err } = await call([
      'convert',
      at('trees.csv'),
      '--map',
      at('map.json'),
      '--out',
      at('trees.geojson'),
    ]);
    expect(code).toBe(0);
    expect(err).toContain('3 rows, 2 trees taken, 1 set aside');
    expect(err).toContain('trunk girth: Umfang in centimetres');
    expect(err.replace(/\s+/g, ' ')).toContain('a stump, a dead tree or an empty place (row 2: Stump)');
    const { features } = JSON.parse(readFileSync(at('trees.geojson'), 'utf8')) as {
      features: { properties: Record<string, unknown> }[];
    };
    expect(features[0]?.properties).toMatchObject({
      kind: 'tree',
      species: 'Acer platanoides',
      dbh_cm: 38.2,
    });
    expect(existsSync(at('map.json'))).toBe(true);
  });

  it('reads the columns as an edited map says, in every command', async () => {
    const map = JSON.parse(readFileSync(at('map.json'), 'utf8')) as { columns: Record<string, unknown> };
    map.columns['trunk'] = { column: 'Umfang', unit: 'cm' };
    delete map.columns['girth'];
    writeFileSync(at('edited.json'), JSON.stringify(map));
    await call(['convert', at('trees.csv'), '--map', at('edited.json'), '--out', at('again.geojson')]);
    const again = JSON.parse(readFileSync(at('again.geojson'), 'utf8')) as {
      features: { properties: Record<string, unknown> }[];
    };
    expect(again.features[0]?.properties['dbh_cm']).toBe(120);
    const { out } = await call(['check', at('trees.csv'), '--map', at('edited.json'), '--json']);
    expect(JSON.parse(out)).toMatchObject({ features: { tree: 2 } });
  });

  it('tells what is wrong with a map, a grid or a file, in one line', async () => {
    writeFileSync(at('bad.json'), '{"schema":2}');
    const faults = [
      [['convert', at('trees.csv'), '--map', at('bad.json')], 'is no column map'],
      [['check', at('trees.csv'), '--map', at('none.json')], 'writes one to edit'],
      [['check', at('trees.csv'), '--crs', 'EPSG:99999'], 'is not known here'],
    ] as const;
    for (const [argv, message] of faults) {
      const { code, err } = await call(argv);
      expect(code).toBe(2);
      expect(err).toContain(message);
      expect(err.trim().split('\n')).toHaveLength(1);
    }
  });

  it('warns of a table of which no row can be used', async () => {
    writeFileSync(at('counts.csv'), 'material,total\nclay,12\niron,3\n');
    const { code, out } = await call(['check', at('counts.csv')]);
    expect(code).toBe(1);
    expect(out).toContain('any row that can be used');
  });

  it('goes on with the others where one file cannot be read', async () => {
    writeFileSync(at('broken.zip'), 'PK\u0003\u0004 not really');
    const { code, out } = await call(['check', at('trees.csv'), at('broken.zip'), '--json']);
    expect(code).toBe(1);
    const { issues, features } = JSON.parse(out) as {
      issues: { code: string }[];
      features: { tree: number };
    };
    expect(features.tree).toBe(2);
    expect(issues[0]?.code).toBe('not-json');
  });
});
