import { describe, expect, it } from 'vitest';
import { CAMPUS, CORNER_LOT, call, callOn, FRENCH_DRAIN, here } from './call.js';
import { smallSite } from './small-site.js';

interface Water {
  readonly lines: readonly Record<string, unknown>[];
  readonly [member: string]: unknown;
}

async function watered(...argv: string[]): Promise<Water> {
  return JSON.parse((await call(['water', ...argv, '--json'])).out) as Water;
}

/** Text without its line breaks. */
const flat = (text: string): string => text.replace(/\s+/g, ' ');

describe('water --json', () => {
  it('has the fields of the contract in every line', async () => {
    const number = expect.any(Number);
    const range = { low: number, mid: number, high: number };
    const result = await watered(CORNER_LOT, '--rain-in-h', '4', '--slope', '1');
    expect(result).toMatchObject({
      schema: 1,
      issues: [],
      assumed: expect.any(Array),
      cautions: expect.any(Array),
    });
    expect(result.lines).toHaveLength(6);
    for (const line of result.lines) {
      expect(line).toMatchObject({
        drainId: expect.any(String),
        insideDiameterM: number,
        slope: number,
        n: range,
        fullFlowM3s: range,
        fullVelocityMs: range,
        selfCleansing: expect.any(Boolean),
        withRootsM3s: null,
      });
      if (line['drainId'] !== 'patio-branch') expect(line['designFlowM3s']).toEqual(range);
    }
  });

  it('takes the same rain in inches and in millimetres', async () => {
    const inches = await watered(FRENCH_DRAIN, '--rain-in-h', '2');
    const millimetres = await watered(FRENCH_DRAIN, '--rain-mm-h', '50.8');
    expect(inches).toEqual(millimetres);
  });

  it('leaves unknown what is not known', async () => {
    const { rain, lines } = await watered(CORNER_LOT);
    expect(rain).toMatchObject({ mmPerHour: null, from: null });
    expect(lines.every(({ designFlowM3s, usedShare }) => designFlowM3s === null && usedShare === null)).toBe(
      true,
    );
    expect(lines.filter(({ slope, fullFlowM3s }) => slope === null && fullFlowM3s === null)).toHaveLength(4);
  });

  it('follows the water of the corner lot to the old tail', async () => {
    const { lines } = await watered(CORNER_LOT, '--rain-in-h', '4');
    const of = (id: string) => lines.find(({ drainId }) => drainId === id) ?? {};
    expect(of('downspout-west')['drainsInto']).toBe('collector');
    expect(of('collector')['drainsInto']).toBe('tail');
    // 1,450 + 520 sq ft
    expect(of('tail')['servedM2']).toBeCloseTo(1970 * 0.3048 ** 2, 6);
    expect(of('tail')['notCounted']).toEqual({ lines: 1, examples: ['patio-branch'] });
    expect(of('east-collector')['servedM2']).toBeCloseTo(1080 * 0.3048 ** 2, 6);
  });
});

describe('the table', () => {
  it.each([
    [60, 'us'],
    [80, 'us'],
    [100, 'metric'],
    [140, 'us'],
  ] as const)('keeps within %i columns in %s units', async (columns, units) => {
    for (const file of [CORNER_LOT, FRENCH_DRAIN, CAMPUS, here('data/findings/quince-court.geojson')]) {
      const argv = ['water', file, '--units', units, '--rain-mm-h', '110', '--slope', '1'];
      const { out } = await call(argv, { columns, isTTY: true });
      for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(columns);
      expect(out).not.toMatch(/ $/m);
    }
  });

  it('gives each line its fall, what it carries with the range, its rain and whether it cleans itself', async () => {
    const { code, out } = await call(['water', CORNER_LOT, '--rain-in-h', '4.2']);
    expect(code).toBe(0);
    expect(out).toMatch(
      /^old clay tail: 4 in clay tile, 35 ft\n {2}2\.3 % +\d+ gpm \(\d+-\d+\) +82 gpm \(\d+-\d+\)\+ +\d+ % \(\d+-\d+\)\+ +yes$/m,
    );
    expect(out).toContain('Rain to carry: 4.2 in/h;');
    expect(out).toContain('+: at least; water also comes from lines whose area is not given (patio-branch).');
    expect(flat(out)).toContain("Water sent onto a neighbour's land, a public street or into a foul sewer");
    expect(out).not.toContain('Before anybody digs or cuts: .');
  });

  it('speaks litres a second in metric', async () => {
    const { out } = await call(['water', CORNER_LOT, '--rain-in-h', '4.2', '--units', 'metric']);
    expect(out).toMatch(/\d L\/s \(/);
    expect(out).toContain('107 mm/h');
    expect(out).not.toMatch(/gpm|ft\/s/);
  });

  it('says where to look up the rain when it is not given, and still tells what the lines carry', async () => {
    const { code, out } = await call(['water', FRENCH_DRAIN]);
    expect(code).toBe(0);
    expect(flat(out)).toContain('public precipitation-frequency tables of the national weather service');
    expect(out).toContain('--rain-in-h N');
    expect(out).toMatch(/\d+ gpm \(\d+-\d+\) +\? +\?/);
  });

  it('says what to do about a fall that is not known', async () => {
    const { out } = await call(['water', CORNER_LOT, '--rain-in-h', '4']);
    expect(flat(out)).toContain(
      '4 lines: no ground level near both ends; take spot levels there, or give --slope PERCENT',
    );
    expect(out).toContain('laid at the usual 1 % it would not clean itself');
    const given = await call(['water', CORNER_LOT, '--rain-in-h', '4', '--slope', '1']);
    expect(given.out).toContain('does not clean itself: 1.6 ft/s');
    expect(flat(given.out)).toContain('fall not known: as asked for; taken as 1 %');
  });

  it('warns of the French drain that backs up', async () => {
    const { out } = await call(['water', FRENCH_DRAIN, '--rain-in-h', '4.2']);
    expect(out).toContain('2 lines: 1 too small for the rain, 1 not self-cleaning.');
    expect(flat(out)).toContain('water that seeps in through the holes is not counted');
  });

  it('shows what roots leave where a camera saw some', async () => {
    const { out } = await call(['water', here('data/findings/quince-court.geojson'), '--slope', '1']);
    expect(out).toContain('with roots');
    expect(out).toMatch(/seen in \d{4}: a root mass .*, taken as \d+ % of the bore/);
  });

  it('keeps words from the file from acting on the terminal', async () => {
    const { out } = await callOn(smallSite({ name: 'a\u001b]0;b' }), 'water');
    expect(out).not.toContain('\u001b');
  });
});

describe('water --csv', () => {
  it('has one row a line, its units in the names of the columns', async () => {
    const { out } = await call(['water', CORNER_LOT, '--csv', '--units', 'us', '--rain-in-h', '4']);
    const rows = out.trimEnd().split('\r\n');
    expect(rows).toHaveLength(7);
    expect(rows[0]).toMatch(
      /^line,line_name,material,length_ft,inside_in,slope_pct,.*full_gpm_mid,.*,not_known$/,
    );
    const metric = (await call(['water', CORNER_LOT, '--csv'])).out;
    expect(metric).toContain('full_l_s_mid');
    expect(metric).not.toContain('gpm');
  });
});

describe('what cannot be done', () => {
  it.each([
    [['--rain-mm-h', '100', '--rain-in-h', '4'], 'choose one of --rain-mm-h and --rain-in-h'],
    [['--rain-mm-h', '0'], '--rain-mm-h takes a number from 0.1 to 2500'],
    [['--rain-in-h', 'much'], '--rain-in-h takes a number'],
    [['--slope', '-1'], '--slope'],
    [['--slope', '0'], '--slope takes a number from 0.01 to 100'],
    [['--surface', 'moss'], '--surface takes roof or asphalt'],
    [['--json', '--csv'], 'choose one of --json and --csv'],
  ])('%j ends with 2 and one line', async (options, message) => {
    const { code, out, err } = await call(['water', CORNER_LOT, ...options]);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(message);
    expect(err.trimEnd().split('\n')).toHaveLength(1);
  });

  it('nothing to work out ends with 2; a finding past the end with 1', async () => {
    expect((await call(['water', here('data/bad/projected-coordinates.geojson')])).code).toBe(2);
    const { code, out } = await call(['water', here('data/bad/finding-misplaced.geojson'), '--json']);
    expect(code).toBe(1);
    expect(JSON.parse(out)).toMatchObject({ issues: [{ code: 'finding-misplaced' }] });
  });

  it('is told of in the help', async () => {
    expect((await call(['--help'])).out).toMatch(/^ {2}water +what each line carries/m);
    expect((await call(['water', '--help'])).out).toContain('--rain-in-h N');
  });
});
