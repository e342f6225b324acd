import { mkdtempSync, readdirSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { makeTown } from '../bench/town.mjs';
import { CAMPUS, CORNER_LOT, call } from './call.js';

const folder = mkdtempSync(join(tmpdir(), 'rootreach-town-'));
afterAll(() => rmSync(folder, { recursive: true }));
const at = (name: string): string => join(folder, name);

const made = makeTown({ trees: 600, lines: 120, seed: 11 });
writeFileSync(at('trees.geojson'), made.trees);
writeFileSync(at('lines.geojson'), made.lines);
const FILES = [at('trees.geojson'), at('lines.geojson')];

interface Ranked {
  readonly rank: number;
  readonly id: string;
  readonly score: number;
  readonly chance: unknown;
}

describe('rootreach town', () => {
  it.each([
    ['an invented town', FILES],
    ['the campus, with fittings, findings and obstacles', [CAMPUS]],
    ['a lot', [CORNER_LOT]],
  ])('says of %s what rank says of it', async (_, files) => {
    const rank = await call(['rank', ...files, '--json', '--top', '50']);
    const ranked = JSON.parse(rank.out) as { segments: Ranked[]; totals: unknown };
    await call(['town', ...files, '--threads', '0', '--top', '50', '--out', at('same')]);
    const summary = JSON.parse(readFileSync(at('same/summary.json'), 'utf8')) as { totals: unknown };
    expect(summary.totals).toEqual(ranked.totals);
    const worst = JSON.parse(readFileSync(at('same/worst.geojson'), 'utf8')) as {
      features: { properties: Ranked }[];
    };
    expect(worst.features.map(({ properties }) => properties)).toEqual(
      ranked.segments.map((segment) =>
        expect.objectContaining({ id: segment.id, score: segment.score, chance: segment.chance }),
      ),
    );
  });

  it('writes every stretch, every line, and sums that agree with one another', async () => {
    const { code, out } = await call([
      'town',
      ...FILES,
      '--threads',
      '0',
      '--segments',
      '--out',
      at('all'),
      '--json',
    ]);
    expect(code).toBeLessThan(2);
    const summary = JSON.parse(out) as {
      totals: { segments: number; drains: number; lengthM: number; expectedEntries: number };
      byMaterial: { lengthM: number; expected: number }[];
      bySquare: { lengthM: number; expected: number }[];
      bySpecies: { expected: number; trees: number }[];
      lift: { metres: number[]; expected: number[]; halfShare: number };
    };
    const { totals, byMaterial, bySquare, bySpecies, lift } = summary;
    const sum = (rows: readonly { expected: number }[]) => rows.reduce((n, { expected }) => n + expected, 0);
    for (const rows of [byMaterial, bySquare, bySpecies])
      expect(sum(rows)).toBeCloseTo(totals.expectedEntries, 6);
    expect(byMaterial.reduce((n, { lengthM }) => n + lengthM, 0)).toBeCloseTo(totals.lengthM, 6);
    expect(bySpecies.reduce((n, { trees }) => n + trees, 0)).toBe(600);
    expect(readFileSync(at('all/segments.csv'), 'utf8').trim().split('\r\n')).toHaveLength(
      totals.segments + 1,
    );
    const lines = JSON.parse(readFileSync(at('all/lines.geojson'), 'utf8')) as { features: unknown[] };
    expect(lines.features).toHaveLength(totals.drains);
    // worst first: above the diagonal, never falling, ever flatter
    expect(lift.metres.at(-1)).toBeCloseTo(1, 9);
    expect(lift.expected.at(-1)).toBeCloseTo(1, 9);
    for (const [i, m] of lift.metres.entries()) expect(lift.expected[i]).toBeGreaterThanOrEqual(m - 1e-9);
    expect(lift.halfShare).toBeLessThan(0.5);
    expect(readFileSync(at('all/lift.svg'), 'utf8')).toContain('half of it lies in');
  });

  it('starts from its cache the next time, and not from one that is damaged or of other files', async () => {
    const argv = ['town', ...FILES, '--threads', '0', '--cache', at('town.cache'), '--json'];
    const first = await call(argv);
    const second = await call(argv);
    expect(second.out).toBe(first.out);
    const bytes = readFileSync(at('town.cache'));
    expect(bytes.toString('latin1', 0, 22)).toBe('rootreach town cache 3');
    truncateSync(at('town.cache'), bytes.length - 100);
    expect((await call(argv)).out).toBe(first.out);
    // one bit turned over, in the head and in the columns
    for (const place of [60, 0.3, 0.6, 0.95].map((share) =>
      Math.floor(share < 1 ? share * bytes.length : share),
    )) {
      const damaged = Buffer.from(bytes);
      damaged[place] = (damaged[place] ?? 0) ^ 64;
      writeFileSync(at('town.cache'), damaged);
      expect((await call(argv)).out, `byte ${place}`).toBe(first.out);
    }
    // another year: the trees have grown
    const later = await call([...argv, '--as-of', '2036']);
    expect(JSON.parse(later.out)).not.toEqual(JSON.parse(first.out));
    expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([]);
  });

  it('says what was wrong with the files where none of them could be read', async () => {
    writeFileSync(at('torn.csv'), new Uint8Array([0x50, 0x4b, 0x03, 0x04, 1, 2, 3]));
    const { code, out, err } = await call(['town', at('torn.csv'), '--threads', '0']);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/error .*torn\.csv/);
    expect(err).toContain('there is no drain line');
  });

  it('says in one line what it cannot do', async () => {
    for (const argv of [
      ['town'],
      ['town', at('not-there.geojson')],
      ['town', folder],
      ['town', at('trees.geojson'), '--threads', '0'],
      ['town', ...FILES, '--threads', '-1'],
    ]) {
      const { code, err } = await call(argv);
      expect(code).toBe(2);
      expect(err.trim().split('\n').at(-1)).toMatch(/^rootreach: /);
    }
  });
});
