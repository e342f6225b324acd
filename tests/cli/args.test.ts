import { describe, expect, it } from 'vitest';
import { CORNER_LOT, call } from './call.js';

describe('what cannot be done', () => {
  it.each([
    [
      ['prune', CORNER_LOT],
      "no command 'prune'",
      'check, rank, explain, learn, water, route, decide, quote, season',
    ],
    [['rnak', CORNER_LOT], "no command 'rnak'", 'mean rank?'],
    [['toString', CORNER_LOT], "no command 'toString'", 'check'],
    [['rank'], 'name one or more site files', ''],
    [['rank', 'not-there.geojson'], 'cannot read not-there.geojson', 'no such file'],
    [['rank', '.'], 'cannot read .', 'folder'],
    [['rank', '-', '-'], 'only once', ''],
    [['rank', CORNER_LOT, '--tpo', '3'], "unknown option '--tpo'", '--top'],
    [['rank', CORNER_LOT, '--top'], '--top needs a value', ''],
    [['rank', CORNER_LOT, '--top', '0'], '--top takes a whole number', "'0'"],
    [['rank', CORNER_LOT, '--top', '2.5'], '--top takes a whole number', "'2.5'"],
    [['rank', CORNER_LOT, '--years=-5'], '--years takes a number', "'-5'"],
    [['rank', CORNER_LOT, '--years', 'ten'], '--years takes a number', "'ten'"],
    [['rank', CORNER_LOT, '--segment-m', '0'], '--segment-m takes a number', "'0'"],
    [['rank', CORNER_LOT, '--as-of', '2026-13-45'], '--as-of takes a date', "'2026-13-45'"],
    [['rank', CORNER_LOT, '--units', 'feet'], '--units takes us or metric', "'feet'"],
    [['rank', CORNER_LOT, '--json=yes'], '--json takes no value', ''],
    [['rank', CORNER_LOT, '--csv', '--geojson'], 'choose one of --csv and --geojson', ''],
    [['explain', CORNER_LOT, '--segment', 'tail/99'], "no segment 'tail/99'", 'nearest: tail/'],
    [['explain', CORNER_LOT, '--segment', 'tial/3'], "no segment 'tial/3'", 'tail/1'],
  ])('%j ends with 2 and one line', async (argv, says, hint) => {
    const { code, out, err } = await call(argv);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err.trimEnd().split('\n')).toHaveLength(1);
    expect(err).toContain(says);
    expect(err).toContain(hint);
  });
});

describe('help', () => {
  it.each([['--help'], ['-h'], ['help']])('%s tells the commands with an example', async (word) => {
    const { code, out } = await call([word]);
    expect(code).toBe(0);
    for (const name of ['check', 'rank', 'explain', 'map'])
      expect(out).toMatch(new RegExp(`^  ${name} `, 'm'));
    expect(out).toMatch(/Example\n {2}rootreach rank /);
  });

  it.each([['check'], ['rank'], ['explain'], ['map']])(
    'of %s has its options and an example',
    async (name) => {
      const { code, out } = await call([name, '--help']);
      expect(code).toBe(0);
      expect(out).toMatch(new RegExp(`Examples?\\n {2}rootreach ${name} `));
      expect(out).toContain('--json');
      expect((await call(['help', name])).out).toBe(out);
      for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(110);
    },
  );

  it.each([
    'check',
    'rank',
    'decide',
    'quote',
    'page',
    'season',
    'route',
    'water',
    'learn',
    'town',
    'convert',
  ])('of %s keeps to the width of the terminal, its examples aside', async (name) => {
    const { out } = await call([name, '--help'], { isTTY: true, columns: 72 });
    const long = out.split('\n').filter((line) => line.length > 72 && !line.includes(`rootreach ${name} `));
    expect(long).toEqual([]);
    expect(out.split('\n').length).toBeGreaterThan(15);
  });

  it('without a command goes to stderr and ends with 2', async () => {
    const { code, out, err } = await call([]);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('Commands');
  });

  it('tells the version', async () => {
    expect((await call(['--version'])).out).toMatch(/^\d+\.\d+\.\d+\n$/);
  });
});
