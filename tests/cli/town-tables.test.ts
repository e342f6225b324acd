import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makeTown } from '../bench/town.mjs';
import { call, here } from './call.js';

const folder = mkdtempSync(join(tmpdir(), 'rootreach-town-tables-'));
afterAll(() => rmSync(folder, { recursive: true }));
const at = (name: string): string => join(folder, name);

interface Feature {
  readonly properties: Readonly<Record<string, unknown>>;
  readonly geometry: { readonly coordinates: unknown };
}

interface Part {
  readonly key: string;
  readonly name: string;
  readonly lines: number;
  readonly lengthM: number;
  readonly expected: number;
}

interface Summary {
  readonly totals: { readonly drains: number; readonly lengthM: number; readonly expectedEntries: number };
  readonly byStreet: readonly Part[];
  readonly linesNamedByTree: number;
}

/** On this thread; few of the worst described, which takes the longest. */
const FEW = ['--threads', '0', '--top', '20'];
const STREETS = ['ELM ST', 'Elm St.', 'Oak Avenue', '5th Ave'];
const made = makeTown({ trees: 3000, lines: 60, seed: 12 });
const featuresOf = (text: string): Feature[] => (JSON.parse(text) as { features: Feature[] }).features;
const trees = featuresOf(made.trees);
const lines = featuresOf(made.lines);

/** Trees as a city writes them: an address with its number, a quoted note over two lines, a stump. */
const rows = trees.map(({ properties, geometry }, i) => {
  const [lon, lat] = geometry.coordinates as [number, number];
  const note = i % 50 === 0 ? '"two\nlines, ""really"""' : 'none';
  const species = i % 250 === 7 ? 'Stump' : properties['species'];
  const address = `${100 + i} ${STREETS[Math.floor(i / 250) % STREETS.length]}`;
  return [`T-${i}`, species, properties['dbh_cm'], note, address, lon, lat].join(',');
});
const CSV = `Tree ID,Botanical Name,DBH (cm),Remarks,Address,Longitude,Latitude\r\n${rows.join('\r\n')}\r\n`;

const town = async (...argv: string[]): Promise<Summary> => {
  const { out, err, code } = await call(['town', ...argv, ...FEW, '--json']);
  expect([code < 2, err]).toEqual([true, expect.any(String)]);
  return JSON.parse(out) as Summary;
};

beforeAll(() => {
  writeFileSync(at('trees.csv'), CSV);
  writeFileSync(at('lines.geojson'), made.lines);
});

describe('a town from tables', () => {
  it('is the town of the same tables converted first', async () => {
    const argv = ['town', at('trees.csv'), at('lines.geojson'), ...FEW, '--out', at('direct')];
    const direct = await call(argv);
    expect(direct.err).toContain('3,000 rows, 2,988 trees taken, 12 set aside');
    await call(['convert', at('trees.csv'), '--out', at('trees.geojson')]);
    await call(['town', at('trees.geojson'), at('lines.geojson'), ...FEW, '--out', at('converted')]);
    for (const name of [
      'worst.csv',
      'lines.geojson',
      'streets.csv',
      'squares.csv',
      'species.csv',
      'lift.csv',
    ]) {
      expect(readFileSync(join(at('direct'), name), 'utf8'), name).toBe(
        readFileSync(join(at('converted'), name), 'utf8'),
      );
    }
  });

  it('starts from its cache the next time, with what was said of the table', async () => {
    const argv = ['town', at('trees.csv'), at('lines.geojson'), ...FEW, '--cache', at('c')];
    const first = await call(argv);
    expect(await call(argv)).toEqual(first);
    // other scores from the same trees: the cache must not answer for them
    const other = await call([...argv, '--segment-m', '2']);
    expect(other.code).toBe(first.code);
    expect(other.out).not.toBe(first.out);
    expect(other).toEqual(
      await call(['town', at('trees.csv'), at('lines.geojson'), ...FEW, '--segment-m', '2']),
    );
  });
});

describe('threads', () => {
  it('change no byte of what is made of a table of several pieces', () => {
    const head = CSV.slice(0, CSV.indexOf('\r\n') + 2);
    const many = Array.from({ length: 3 }, (_, i) => CSV.slice(head.length).replaceAll('T-', `T${i}-`));
    writeFileSync(at('many.csv'), head + many.join(''));
    const results = ['0', '1', '3'].map((threads) => {
      const out = at(`by-${threads}`);
      const argv = [
        'town',
        at('many.csv'),
        at('lines.geojson'),
        '--threads',
        threads,
        '--top',
        '9',
        '--segments',
      ];
      const { status } = spawnSync(process.execPath, [
        here('packages/cli/dist/main.js'),
        ...argv,
        '--out',
        out,
      ]);
      expect(status).toBeLessThan(2);
      return readdirSync(out).map((name) => [name, readFileSync(join(out, name), 'utf8')]);
    });
    expect(results[0]).toHaveLength(11);
    expect(results[1]).toEqual(results[0]);
    expect(results[2]).toEqual(results[0]);
  }, 180_000);
});

describe('sums by street', () => {
  it('give lines that name none the street of the nearest tree, and add up to the town', async () => {
    const { byStreet, totals, linesNamedByTree } = await town(at('trees.csv'), at('lines.geojson'));
    const sum = (of: (part: Part) => number): number => byStreet.reduce((n, part) => n + of(part), 0);
    expect(sum(({ lengthM }) => lengthM)).toBeCloseTo(totals.lengthM, 6);
    expect(sum(({ expected }) => expected)).toBeCloseTo(totals.expectedEntries, 6);
    expect(sum(({ lines: n }) => n)).toBe(totals.drains);
    // one street, written in two ways
    expect(byStreet.map(({ key }) => key).filter((key) => key !== '')).toEqual(
      expect.arrayContaining(['elm st', 'oak avenue', '5th ave']),
    );
    const nameless = byStreet.find(({ key }) => key === '')?.lines ?? 0;
    expect(linesNamedByTree).toBe(totals.drains - nameless);
    expect(linesNamedByTree).toBeGreaterThan(totals.drains / 2);
  });

  it('go by the name that a line has itself', async () => {
    const named = lines.map((line, i) => ({
      ...line,
      properties: { ...line.properties, ...(i % 3 === 0 ? {} : { street: i % 3 === 1 ? 'Calle 5' : '42' }) },
    }));
    writeFileSync(at('named.geojson'), JSON.stringify({ type: 'FeatureCollection', features: named }));
    const { byStreet, linesNamedByTree } = await town(at('named.geojson'));
    expect(linesNamedByTree).toBe(0);
    expect(Object.fromEntries(byStreet.map(({ name, lines: n }) => [name, n]))).toEqual({
      '': 20,
      'Calle 5': 20,
      42: 20,
    });
  });

  it('are left out where nothing names a street', async () => {
    const { out } = await call(['town', at('lines.geojson'), ...FEW, '--out', at('plain')]);
    expect(out).not.toContain('By street');
    expect(() => readFileSync(join(at('plain'), 'streets.csv'))).toThrow('no such file');
  });
});
