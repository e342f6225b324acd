import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { CORNER_LOT, call, callOn, here } from './call.js';
import { smallSite } from './small-site.js';

const CAMERA = here('data/camera/corner-lot-2026.geojson');
const DEMO_PRICES = here('data/prices/demo-prices.csv');

/** Text without its line breaks. */
const flat = (text: string): string => text.replace(/\s+/g, ' ');

interface Decided {
  readonly choices: readonly { readonly id: string; readonly possible: boolean; readonly why: string }[];
  readonly [member: string]: unknown;
}
async function decided(...argv: string[]): Promise<Decided> {
  return JSON.parse((await call(['decide', CORNER_LOT, CAMERA, ...argv, '--json'])).out) as Decided;
}

describe('decide --json', () => {
  it('has the fields of the contract', async () => {
    const result = await decided('--line', 'tail');
    expect(result).toMatchObject({
      schema: 1,
      recommended: 'replace-heavier',
      runnerUp: 'replace-like',
      target: { drainId: 'tail', fromM: 0 },
      prices: { invented: true },
      issues: [],
      priceIssues: [],
    });
    const chance = { low: expect.any(Number), likely: expect.any(Number), high: expect.any(Number) };
    expect(result.choices.find(({ id }) => id === 'replace-heavier')).toMatchObject({
      possible: true,
      why: expect.any(String),
      now: expect.any(Number),
      recurring: [expect.objectContaining({ what: 'camera-look' })],
      chance: { '10': chance, '25': chance },
      presentValue: expect.any(Number),
    });
    for (const { possible, why } of result.choices) if (!possible) expect(why).not.toBe('');
  });

  it('gives the same twice', async () => {
    expect(await decided('--segment', 'collector/11')).toEqual(await decided('--segment', 'collector/11'));
  });

  it('takes the worst stretch where none is named: here the whole tail', async () => {
    expect(await decided()).toMatchObject({ target: { drainId: 'tail', known: { seen: 'full' } } });
  });

  it('takes a part of a line in feet, and in metres where metric is asked for', async () => {
    const feet = await decided('--line', 'collector', '--between', '60,70');
    const metres = await decided('--line', 'collector', '--between', '18.288,21.336', '--units', 'metric');
    expect(feet['target']).toMatchObject({ fromM: 60 * 0.3048 });
    expect((metres['target'] as { fromM: number }).fromM).toBeCloseTo(60 * 0.3048, 9);
  });

  it('weighs a new line where its ends are named', async () => {
    const { choices } = await decided('--line', 'tail', '--from', 'CO1', '--to', 'O2');
    expect(choices.find(({ id }) => id === 'move')).toMatchObject({
      possible: true,
      now: expect.any(Number),
    });
  });

  it('keeps to the limits of the owner', async () => {
    const result = await decided('--segment', 'collector/11', '--no-trench', '--budget', '100', '--may-fell');
    expect(result).toMatchObject({
      recommended: 'leave',
      limits: { mostNow: 100, keepTrees: false, noTrench: true },
    });
  });
});

describe('decide', () => {
  it('says what to do first, in words that a crew can read', async () => {
    const { out, code } = await call(['decide', CORNER_LOT, CAMERA, '--line', 'tail']);
    expect(code).toBe(0);
    const text = flat(out);
    expect(text).toContain(
      'old clay tail (tail), all 35 ft of it: 4 in clay tile; seen full of roots over 18 ft in 2026.',
    );
    expect(text).toContain('Cheapest over 25 years: replace with tight, stout pipe:');
    expect(text).toContain(
      'clear it, again and again: a line full of roots cannot be cleared, only replaced or moved',
    );
    expect(text).toContain('INVENTED list');
    expect(text).toContain('have buried utilities located');
    expect(text).toContain('Local code and licensed people decide.');
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
  });

  it('is one row a choice in the spreadsheet', async () => {
    const { out } = await call(['decide', CORNER_LOT, CAMERA, '--line', 'tail', '--csv']);
    const rows = out.trimEnd().split('\r\n');
    expect(rows).toHaveLength(12);
    expect(rows.filter((row) => /,yes,yes,/.test(row))).toHaveLength(1);
  });

  it('reads a price list of the firm and does without the word INVENTED', async () => {
    const own = join(mkdtempSync(join(tmpdir(), 'prices-')), 'ours.csv');
    writeFileSync(
      own,
      readFileSync(DEMO_PRICES, 'utf8').replaceAll(
        'Invented. Not market data: put in your own and clear this note.',
        '',
      ),
    );
    const { out, code } = await call(['decide', CORNER_LOT, CAMERA, '--line', 'tail', '--prices', own]);
    expect(code).toBe(0);
    expect(out).toContain('Prices: your list of 2026-11-01.');
  });

  it('says which prices are missing or wrong, and ends with 1', async () => {
    const own = join(mkdtempSync(join(tmpdir(), 'prices-')), 'ours.csv');
    writeFileSync(
      own,
      readFileSync(DEMO_PRICES, 'utf8').replace(/^basin,.*$/m, 'basin,basin,piece,ask,USD,2026-11-01,'),
    );
    const { out, err, code } = await call(['decide', CORNER_LOT, CAMERA, '--line', 'tail', '--prices', own]);
    expect(code).toBe(1);
    expect(err).toMatch(/ours\.csv, line \d+: basin: 'ask' is no price; left out/);
    expect(out).toContain('No price for: basin.');
  });

  it.each([
    [['--line', 'nowhere'], "there is no line 'nowhere'"],
    [['--segment', 'tail/77'], "there is no segment 'tail/77'"],
    [['--line', 'tail', '--segment', 'tail/1'], 'choose one of --line and --segment'],
    [['--between', '1,2'], '--between needs --line'],
    [['--line', 'tail', '--between', '9,3'], '--between takes two stations'],
    [['--line', 'tail', '--between', '300,310'], 'is no stretch of it'],
    [['--assume', 'clearing-years'], '--assume takes KEY=N'],
    [['--assume', 'nonsense=1'], "there is no assumption 'nonsense'"],
    [['--horizon', '0'], '--horizon takes a whole number from 1 to 50'],
    [['--prices', '/nowhere.csv'], 'cannot read'],
    [['--json', '--csv'], 'choose one of --json and --csv'],
  ])('cannot do %j and says why', async (argv, words) => {
    const { code, err, out } = await call(['decide', CORNER_LOT, CAMERA, ...argv]);
    expect(code).toBe(2);
    expect(err).toContain(words);
    expect(err).not.toContain('went wrong inside');
    expect(out).toBe('');
  });

  it('lets no name in a file move the cursor', async () => {
    const { out } = await callOn(
      smallSite({ name: 'x\u001b[2Jy\nz' }, {}, { name: 'a\u0007b' }),
      'decide',
      '--line',
      'main',
    );
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
    expect(out).not.toMatch(/[\u0000-\u0009\u000b-\u001f]/);
  });
});
