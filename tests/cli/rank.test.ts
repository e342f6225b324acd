import { describe, expect, it } from 'vitest';
import { CAMPUS, CORNER_LOT, call, callOn, FRENCH_DRAIN, here } from './call.js';
import { smallSite } from './small-site.js';

interface Ranked {
  readonly segments: readonly Record<string, unknown>[];
  readonly [member: string]: unknown;
}

async function ranked(...argv: string[]): Promise<Ranked> {
  return JSON.parse((await call(['rank', ...argv, '--json'])).out) as Ranked;
}

describe('rank --json', () => {
  it('has the members of the contract, worst first', async () => {
    const result = await ranked(CORNER_LOT);
    expect(Object.keys(result)).toEqual(
      expect.arrayContaining([
        ...['schema', 'model', 'asOf', 'horizonYears', 'segments', 'totals', 'issues', 'cautions'],
      ]),
    );
    expect(result).toMatchObject({ schema: 1, asOf: '2026-11-25', horizonYears: 10 });
    expect(result['model']).toEqual({ version: expect.any(String), fingerprint: expect.any(String) });
    expect(result.segments.map(({ rank }) => rank)).toEqual(result.segments.map((_, i) => i + 1));
  });

  it('has the fields of the contract in every segment', async () => {
    const number = expect.any(Number);
    const text = expect.any(String);
    for (const segment of (await ranked(CORNER_LOT)).segments) {
      expect(segment).toMatchObject({
        rank: number,
        id: expect.stringMatching(/^.+\/\d+$/),
        drainId: text,
        startM: number,
        endM: number,
        lengthM: number,
        score: number,
        chance: { low: number, likely: number, high: number },
        band: expect.stringMatching(/^(leave|watch|inspect|act|cannot-say)$/),
        known: null,
        overlapM: { dripline: number, trunkMultiple: number, structural: number, reach: number },
        joints: { count: number, perM: number, basis: text },
        material: text,
        expectedEntries: { joints: number, slots: number, crush: number },
        trees: expect.any(Array),
        drivers: expect.any(Array),
        assumed: expect.any(Array),
        reach: { from: text, direction: expect.stringMatching(/^(up|down)stream$/), atM: number },
        nextLook: expect.stringMatching(/^\d{4}$/),
        geometry: { type: 'LineString', coordinates: expect.any(Array) },
      });
    }
  });

  it('lists all segments unless --top says fewer', async () => {
    const all = await ranked(CAMPUS);
    expect(all.segments).toHaveLength((all['totals'] as { segments: number }).segments);
    expect((await ranked(CAMPUS, '--top', '7')).segments).toEqual(all.segments.slice(0, 7));
  });

  it('looks as far ahead, from the day and in the lengths that it is told', async () => {
    const score = (result: Ranked) => result.segments[0]?.['score'] as number;
    const usual = await ranked(CORNER_LOT);
    const short = await ranked(CORNER_LOT, '--years', '3');
    expect(short['horizonYears']).toBe(3);
    expect(score(short)).toBeLessThan(score(usual));
    // a drain dug last month: in eight years roots have grown back to it
    const later = await ranked(FRENCH_DRAIN, '--as-of', '2034');
    expect(later['asOf']).toBe('2034');
    expect(score(later)).toBeGreaterThan(score(await ranked(FRENCH_DRAIN)));
    const fine = await ranked(CORNER_LOT, '--segment-m', '1');
    expect(Math.max(...fine.segments.map(({ lengthM }) => lengthM as number))).toBeLessThanOrEqual(1);
  });

  it('gives the same for the same files and day', async () => {
    expect(await ranked(CORNER_LOT)).toEqual(await ranked(CORNER_LOT));
  });

  it('puts what was found wrong into the result, and ends with 1 for it', async () => {
    const { code, out, err } = await call([
      'rank',
      here('data/bad/finding-misplaced.geojson'),
      '--json',
      '--top',
      '1',
    ]);
    expect(code).toBe(1);
    expect(err).toMatch(/^In the input: 1 error\.\n {2}error .*s1.*past the end/);
    expect(JSON.parse(out)).toMatchObject({
      issues: [{ code: 'finding-misplaced', severity: 'error', feature: 's1' }],
    });
  });
});

describe('the table', () => {
  it.each([
    [80, 'us'],
    [100, 'us'],
    [140, 'us'],
    [80, 'metric'],
    [100, 'metric'],
    [140, 'metric'],
  ] as const)('keeps within %i columns in %s units', async (columns, units) => {
    for (const file of [CORNER_LOT, FRENCH_DRAIN, CAMPUS]) {
      const { out } = await call(['rank', file, '--units', units], { columns, isTTY: true });
      for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(columns);
      expect(out).not.toMatch(/ $/m);
    }
  });

  it('speaks the units of the site unless told otherwise', async () => {
    expect((await call(['rank', CORNER_LOT])).out).toMatch(/from [^,]+, upstream, [\d.]+ to [\d.]+ ft/);
    expect((await call(['rank', CORNER_LOT, '--units', 'metric'])).out).toMatch(
      /from [^,]+, upstream, [\d.]+ to [\d.]+ m/,
    );
    expect((await call(['rank', CORNER_LOT, '--units', 'metric'])).out).not.toMatch(/\d ft /);
    expect((await callOn(smallSite(), 'rank')).out).toMatch(/\d m in 1 line/);
  });

  it('says that an example is invented, and of which day and how many years it speaks', async () => {
    const { out } = await call(['rank', CORNER_LOT]);
    expect(out).toMatch(
      /^Corner lot with an old elm \(INVENTED EXAMPLE\)\nAs of 2026-11-25, looking 10 years/,
    );
    expect((await callOn(smallSite(), 'rank')).out).not.toContain('INVENTED');
  });

  it('gives each segment its place, its odds, its tree and what to do', async () => {
    const { out } = await call(['rank', CORNER_LOT, '--top', '2']);
    expect(out).toMatch(
      / 1 {2}act +\d+ % \(\d+-\d+\) {2}from the outlet, upstream, 17 to 26 ft, on old clay tail\n/,
    );
    expect(out).toMatch(/American elm \(elm\) [\d.]+ ft away brings \d+ %; 4 joints +tail\/3\n/);
    expect(out).toMatch(/camera now, and plan the work; joints sealed: \d+ -> \d+ %\n/);
    expect(out).toContain('33 more segments below these: --top 35 lists all.');
  });

  it('stands on the usual cautions', async () => {
    const { out } = await call(['rank', CORNER_LOT]);
    for (const word of ['utilities located', 'trench walls', 'near a trunk', 'Local code']) {
      expect(out.replace(/\s+/g, ' ')).toContain(word);
    }
  });

  it('gives no odds where too little is known', async () => {
    const site = JSON.parse(smallSite()) as { features: unknown[] };
    const { code, out, err } = await callOn(
      JSON.stringify({ ...site, features: site.features.slice(1) }),
      'rank',
    );
    expect(code).toBe(0);
    expect(err).toContain('no tree');
    expect(out).toMatch(/cannot-say {2}\? /);
    expect(out).not.toMatch(/\d+ % \(/);
  });

  it('is bold and dim on a terminal only', async () => {
    const onTerminal = await call(['rank', CORNER_LOT], { columns: 100, isTTY: true, styled: true });
    expect(onTerminal.out).toContain('\u001b[1m');
    const plain = await call(['rank', CORNER_LOT], { columns: 100, isTTY: true, styled: false });
    expect(plain.out).not.toContain('\u001b');
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what has been added
    expect(onTerminal.out.replace(/\u001b\[\d+m/g, '')).toBe(plain.out);
  });

  it('keeps words from the file from acting on the terminal or the shell', async () => {
    const text = smallSite({ id: "x'; rm -rf $HOME", name: 'a\u001b]0;b' });
    const { out } = await callOn(text, 'rank');
    expect(out).not.toContain('\u001b');
    expect(out).toContain(`--segment 'x'\\''; rm -rf $HOME/`);
  });
});

describe('nothing to rank', () => {
  it('says what stands in the way and ends with 2', async () => {
    const { code, out, err } = await call(['rank', here('data/bad/projected-coordinates.geojson'), '--json']);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('grid, not degrees');
    expect(err).toContain('no drain line to score');
  });
});
