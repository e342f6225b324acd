import { spawnSync } from 'node:child_process';
import {
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { writeWhole } from '../../packages/cli/src/write-output.js';
import { call, here } from './call.js';
import { smallSite } from './small-site.js';

const folder = mkdtempSync(join(tmpdir(), 'rootreach-write-'));
afterAll(() => rmSync(folder, { recursive: true }));
const at = (name: string) => join(folder, name);
const text = (name: string) => readFileSync(at(name), 'utf8');

writeFileSync(at('site.geojson'), smallSite());
writeFileSync(at('prices.csv'), readFileSync(here('data/prices/demo-prices.csv')));
mkdirSync(at('town'));
writeFileSync(at('town/lines.geojson'), smallSite());
symlinkSync(at('site.geojson'), at('linked.geojson'));

describe('what is read', () => {
  it.each([
    ['rank', ['rank', at('site.geojson'), '--out', at('site.geojson')], '--out names an input file'],
    ['a link', ['rank', at('site.geojson'), '--out', at('linked.geojson')], '--out names an input file'],
    [
      'a price list',
      ['quote', at('site.geojson'), '--prices', at('prices.csv'), '--out', at('prices.csv')],
      '--out names an input file',
    ],
    [
      'a town into its own folder',
      ['town', at('town/lines.geojson'), '--out', at('town')],
      '--out names an input file',
    ],
    [
      'a cache over the town',
      ['town', at('site.geojson'), '--cache', at('site.geojson')],
      '--cache names an input file',
    ],
    [
      'a cache among the results',
      ['town', at('site.geojson'), '--cache', at('new/lift.svg'), '--out', at('new')],
      'name the same file',
    ],
    [
      'columns and site in one',
      ['convert', at('site.geojson'), '--map', at('x'), '--out', `${folder}/./x`],
      '--out names an input file',
    ],
  ])('is not written over: %s', async (_, argv, said) => {
    const before = [text('site.geojson'), text('prices.csv'), text('town/lines.geojson')];
    const { code, out, err } = await call(argv);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(said);
    expect([text('site.geojson'), text('prices.csv'), text('town/lines.geojson')]).toEqual(before);
  });
});

describe('what is written', () => {
  it('is not a file of nothing over a good one where nothing could be read', async () => {
    writeFileSync(at('good.geojson'), 'as it was');
    writeFileSync(at('broken.geojson'), '{"type":"FeatureCollection","features":[{');
    const { code, err } = await call(['convert', at('broken.geojson'), '--out', at('good.geojson')]);
    expect(code).toBe(2);
    expect(err).toMatch(/error .*broken\.geojson: .*\n.*nothing to convert/s);
    expect(text('good.geojson')).toBe('as it was');
  });

  it('stays a link, and as closed to others as it was', async () => {
    writeFileSync(at('closed'), 'x', { mode: 0o600 });
    symlinkSync(at('closed'), at('way'));
    await writeWhole(at('way'), ['new', new Uint8Array([33, 10])]);
    expect(lstatSync(at('way')).isSymbolicLink()).toBe(true);
    expect(text('closed')).toBe('new!\n');
    expect(statSync(at('closed')).mode & 0o777).toBe(0o600);
  });

  it('goes through a pipe without taking its place', async () => {
    expect(spawnSync('sh', ['-c', 'mkfifo "$0"', at('pipe')]).status).toBe(0);
    const reader = new Promise<string>((done) => {
      void import('node:fs/promises').then(({ readFile }) => readFile(at('pipe'), 'utf8').then(done));
    });
    await writeWhole(at('pipe'), 'through');
    expect(await reader).toBe('through');
    expect(lstatSync(at('pipe')).isFIFO()).toBe(true);
  });

  it('does not trip over what a killed run has left, and leaves nothing itself', async () => {
    writeFileSync(at(`.a.csv.${process.pid}.part`), 'half');
    const { code } = await call(['rank', at('site.geojson'), '--csv', '--out', at('a.csv')]);
    expect(code).toBe(0);
    expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([
      `.a.csv.${process.pid}.part`,
    ]);
  });

  it('says why it cannot be', async () => {
    for (const [path, why] of [
      [at('none/a.csv'), 'no such folder'],
      [folder, 'that is a folder'],
      [at('x'.repeat(300)), 'the name is too long'],
    ] as const) {
      await expect(writeWhole(path, 'x')).rejects.toThrow(why);
    }
    const { code, err } = await call([
      'town',
      at('site.geojson'),
      '--threads=0',
      '--cache',
      at('none/a.cache'),
    ]);
    expect(code).toBe(2);
    expect(err).toContain('no such folder');
  });
});
