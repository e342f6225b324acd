import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { call, FRENCH_DRAIN } from './call.js';

const flat = (text: string): string => text.replace(/\s+/g, ' ');
const ends = ['--from', 'CO1', '--to', 'O1'];

describe('route', () => {
  it('gives the contract in JSON', async () => {
    const { code, out } = await call(['route', FRENCH_DRAIN, ...ends, '--json']);
    expect(code).toBe(0);
    const result = JSON.parse(out);
    const number = expect.any(Number);
    expect(result).toMatchObject({ schema: 1, none: null, pricesInvented: true, issues: [] });
    for (const route of result.alternatives) {
      expect(route).toMatchObject({
        id: expect.any(String),
        name: expect.any(String),
        lengthM: number,
        bends: number,
        chance: { '10': { low: number, likely: number, high: number }, '25': { likely: number } },
        depthM: { min: number, max: number },
        fall: { min: number },
        cost: { now: number, presentValue: number },
        geometry: { type: 'LineString', coordinates: expect.any(Array) },
      });
      expect(route.trees[0]).toMatchObject({
        id: expect.any(String),
        nearestM: number,
        severedShare: number,
        rule: expect.any(String),
      });
    }
    expect(result.cautions.map(({ code: which }: { code: string }) => which)).toContain('locate-utilities');
  });

  it.each([
    [80, 'us'],
    [100, 'metric'],
  ] as const)('keeps its table within %i columns in %s units', async (columns, units) => {
    const { out } = await call(['route', FRENCH_DRAIN, ...ends, '--units', units], { columns, isTTY: true });
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(columns);
    expect(out).toContain('a: cheapest to dig');
    expect(out).toContain('roots in 25 years');
    expect(flat(out)).toContain('Before anybody digs or cuts: have buried utilities located');
    expect(flat(out)).toContain('Prices: an INVENTED list');
    expect(flat(out)).toContain('crosses water service at');
  });

  it('says plainly when no gravity line is possible, and ends with 1', async () => {
    const { code, out } = await call(['route', FRENCH_DRAIN, ...ends, '--fall', '4']);
    expect(code).toBe(1);
    expect(flat(out)).toMatch(/No gravity line: on the way that fails least, \d+ in of fall is missing/);
    expect(flat(out)).toMatch(/Any one of these would make one: .*lift it with a pump/);
    const none = JSON.parse((await call(['route', FRENCH_DRAIN, ...ends, '--fall', '4', '--json'])).out);
    expect(none.alternatives).toEqual([]);
    expect(none.none).toMatchObject({ reason: 'no-fall', shortfallM: expect.any(Number) });
  });

  it('writes the ways for a map program', async () => {
    const { out } = await call(['route', FRENCH_DRAIN, ...ends, '--pipe', 'corrugated', '--geojson']);
    const collection = JSON.parse(out);
    expect(collection.type).toBe('FeatureCollection');
    expect(collection.features[0].geometry.type).toBe('LineString');
    expect(collection.features[0].properties.cost.now).toBeGreaterThan(0);
  });

  it('joins several sources', async () => {
    const { code, out } = await call(['route', FRENCH_DRAIN, ...ends, '--from', 'E1', '--json']);
    expect(code).toBe(0);
    const { route } = JSON.parse(out);
    expect(route.lines.length).toBeGreaterThan(1);
    expect(route.cost.now).toBeLessThanOrEqual(route.separate.cost.now * 1.001);
    const text = (await call(['route', FRENCH_DRAIN, ...ends, '--from', 'E1'])).out;
    for (const row of [
      'length',
      'price now',
      'together, today',
      'roots within 10 years',
      'roots within 25 years',
    ])
      expect(text).toMatch(new RegExp(`^${row} +\\S+`, 'm'));
    expect(route.chance['10'].likely).toBeLessThan(route.chance['25'].likely);
  });

  it('prints the sheet of lines that share a trench for the crew', async () => {
    const two = [...ends, '--from', 'E1', '--crew'];
    const { code, out } = await call(['route', FRENCH_DRAIN, ...two], { columns: 80, isTTY: true });
    expect(code).toBe(0);
    expect(out).toContain('Stations are measured from the upper end of each line.');
    expect(out).toContain('Before you dig');
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
    const plain = JSON.parse((await call(['route', FRENCH_DRAIN, ...two, '--json'])).out);
    const sum = plain.lines.reduce((total: number, { lengthM }: { lengthM: number }) => total + lengthM, 0);
    expect(plain.sheet.lengthM).toBeCloseTo(sum, 3);
  });

  it('says what would carry water that is too much for one pipe', async () => {
    const much = [...ends, '--serves', '6000', '--rain-in-h', '6', '--units', 'us'];
    const { out } = await call(['route', FRENCH_DRAIN, ...much]);
    // 6 in/h on 6,000 m2: 254 l/s, 4,030 gpm; three 12 in sewer pipes at 1 % carry that
    expect(flat(out)).toMatch(
      /has 4,0\d0 gpm to carry, and the largest pipe .*, 12 in, takes .*: lay 3 of them/,
    );
  });

  it('prints the sheet of one way for the crew, and the same for a script', async () => {
    const { code, out } = await call(['route', FRENCH_DRAIN, ...ends, '--crew', '--units', 'us'], {
      columns: 80,
      isTTY: true,
    });
    expect(code).toBe(0);
    expect(out).toContain('Way a (cheapest to dig)');
    expect(out).toContain('Before you dig');
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
    const plain = JSON.parse(
      (await call(['route', FRENCH_DRAIN, ...ends, '--crew', '--choose', 'a', '--json'])).out,
    );
    expect(plain).toMatchObject({ schema: 1, alternative: 'a', issues: [] });
    expect(plain.sheet.lengthM).toBeCloseTo(plain.lengthM, 3);
    expect(plain.sheet.cautions.length).toBeGreaterThan(0);
  });

  it('sizes shared pipe by rain and areas, and says so', async () => {
    const two = [...ends, '--from', 'E1', '--serves', '60', '--serves', '1000ft2'];
    const { out } = await call(['route', FRENCH_DRAIN, ...two, '--rain-in-h', '6', '--json']);
    const { route, sizing } = JSON.parse(out);
    // 1 ft = 0.3048 m, exact: 1,000 ft2 are 92.90304 m2
    expect(sizing).toMatchObject({ kind: 'sized', from: 'given' });
    expect(sizing.rainMmPerHour).toBeCloseTo(6 * 25.4, 9);
    expect(sizing.servesM2).toBeCloseTo(60 + 92.90304, 6);
    const ending = route.lines.filter(({ to }: { to: string }) => to === 'O1');
    const arriving = ending.reduce((sum: number, line: { servesM2: number }) => sum + line.servesM2, 0);
    expect(arriving).toBeCloseTo(60 + 92.90304, 6);
    const text = (await call(['route', FRENCH_DRAIN, ...two, '--rain-in-h', '6', '--units', 'us'])).out;
    expect(flat(text)).toContain('Sized for 6 in/h of rain');
    const one = await call([
      'route',
      FRENCH_DRAIN,
      ...ends,
      '--serves',
      '9000ft2',
      '--rain-in-h',
      '6',
      '--json',
    ]);
    expect(JSON.parse(one.out).sizing.kind).toBe('sized');
  });

  it('says that pipe was not sized and where rain is looked up', async () => {
    const { out } = await call(['route', FRENCH_DRAIN, ...ends, '--serves', '60', '--units', 'us']);
    expect(flat(out)).toContain(
      'The pipe was not sized by the water it has to carry. Rain to carry is not known.',
    );
    expect(flat(out)).toContain('precipitation-frequency tables');
  });

  it('takes ground heights from a grid and says what they rest on', async () => {
    // invented: 30 m at the north edge, 3 cm lower for each 0.00001 degree to the south
    const rows = Array.from({ length: 21 }, (_, r) =>
      Array(21)
        .fill((30 - 3 * r).toFixed(2))
        .join(' '),
    ).join('\n');
    const head = 'ncols 21\nnrows 21\nxllcenter -70.91\nyllcenter 40.49\ncellsize 0.001\n';
    const heightAt = (lat: number): number => 30 - (3 * (40.51 - lat)) / 0.001;
    const folder = await mkdtemp(join(tmpdir(), 'rootreach-'));
    const heights = join(folder, 'heights.asc');
    await writeFile(heights, `${head}${rows}\n`);
    const { out } = await call(['route', FRENCH_DRAIN, ...ends, '--ground', heights, '--json']);
    const result = JSON.parse(out);
    expect(result.ground.kind).toBe('grid');
    for (const { geometry, profile } of result.alternatives) {
      const [first, last] = [geometry.coordinates[0], geometry.coordinates.at(-1)];
      expect(profile.groundM[0]).toBeCloseTo(heightAt(first[1]), 3);
      expect(profile.groundM.at(-1)).toBeCloseTo(heightAt(last[1]), 3);
    }
    expect(result.alternatives.length).toBeGreaterThan(0);
    const text = (await call(['route', FRENCH_DRAIN, ...ends, '--ground', heights])).out;
    expect(flat(text)).toContain('Ground heights: from a grid of heights every');
    const odd = await call(['route', FRENCH_DRAIN, ...ends, '--ground', FRENCH_DRAIN]);
    expect(odd.code).toBe(2);
    expect(odd.err).toContain('cannot read ground heights from');
    expect(odd.err.trimEnd().split('\n')).toHaveLength(1);
    await rm(folder, { recursive: true });
  });

  it.each([
    [['--from', 'CO1'], 'a route needs --from and --to'],
    [['--from', 'CO2', '--to', 'O1'], "no fitting, drain or level 'CO2'"],
    [[...ends, '--pipe', 'cheese'], "there is no material 'cheese'"],
    [[...ends, '--cover', '12'], '--cover takes a length such as'],
    [[...ends, '--via', 'here'], '--via takes LON,LAT'],
    [[...ends, '--size-mm', '100', '--size-in', '4'], 'choose one of --size-mm and --size-in'],
    [[...ends, '--serves', 'much'], '--serves takes an area'],
    [[...ends, '--serves', '60', '--serves', '40'], '--serves goes with each --from'],
    [[...ends, '--choose', 'a'], '--choose goes with --crew'],
    [[...ends, '--crew', '--choose', 'q'], "there is no way 'q'"],
    [[...ends, '--crew', '--choose', 'a', '--from', 'E1'], '--choose goes with one --from only'],
    [[...ends, '--ground', 'nowhere.tif'], 'cannot read nowhere.tif: no such file'],
    [[...ends, '--ground-unit', 'ft'], '--ground-unit goes with --ground'],
    [[...ends, '--json', '--geojson'], 'choose one of --json and --geojson'],
  ])('%j ends with 2 and one line', async (options, message) => {
    const { code, out, err } = await call(['route', FRENCH_DRAIN, ...options]);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(message);
    expect(err.trimEnd().split('\n')).toHaveLength(1);
  });

  it('is told of in the help', async () => {
    expect((await call(['--help'])).out).toMatch(/^ {2}route +ways for a new line/m);
    expect((await call(['route', '--help'])).out).toContain('--from ID|LON,LAT');
  });
});
