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
    expect((await call(['route', FRENCH_DRAIN, ...ends, '--from', 'E1'])).out).toMatch(/Together \d+ ft/);
  });

  it.each([
    [['--from', 'CO1'], 'a route needs --from and --to'],
    [['--from', 'CO2', '--to', 'O1'], "no fitting, drain or level 'CO2'"],
    [[...ends, '--pipe', 'cheese'], "there is no material 'cheese'"],
    [[...ends, '--cover', '12'], '--cover takes a length such as'],
    [[...ends, '--via', 'here'], '--via takes LON,LAT'],
    [[...ends, '--size-mm', '100', '--size-in', '4'], 'choose one of --size-mm and --size-in'],
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
