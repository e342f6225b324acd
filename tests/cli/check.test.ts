import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { CAMPUS, CORNER_LOT, call, callOn, here } from './call.js';
import { smallSite } from './small-site.js';

interface CheckResult {
  readonly features: Record<string, number>;
  readonly species: Record<string, number>;
  readonly materials: Record<string, number>;
  readonly issues: readonly Record<string, unknown>[];
  readonly assumed: readonly { path: string; value: unknown; why: string }[];
}

const parsed = (out: string): CheckResult => JSON.parse(out) as CheckResult;

describe('files that are wrong on purpose', () => {
  const files = readdirSync(here('data/bad'));

  it('are there, one for each fault', () => {
    const model = readFileSync(here('packages/core/src/model/issue.ts'), 'utf8');
    const codes = [...model.matchAll(/readonly code: '([\w-]+)'/g)].map(([, code]) => code);
    const found = new Set(files.map((file) => file.split('.')[0]));
    // the last one stands for many of another code
    expect([...found, 'more-of-the-same'].sort()).toEqual(codes.sort());
    expect(files.length).toBeGreaterThan(35);
  });

  it.each(files)('%s raises the issue it is named for', async (file) => {
    const { code, out, err } = await call(['check', '--json', here(`data/bad/${file}`)]);
    const { issues } = parsed(out);
    // what stands behind the code tells several files of one code apart
    const wanted = file.split('.')[0];
    const found = issues.find((issue) => issue['code'] === wanted);
    expect(found, JSON.stringify(issues)).toBeDefined();
    expect(found?.['message']).toMatch(/\w/);
    const grave = issues.some(({ severity }) => severity !== 'notice');
    expect(code).toBe(wanted === 'not-json' ? 2 : grave ? 1 : 0);
    expect(err).toBe('');
  });

  it.each(files)('%s is ranked, or refused in plain words', async (file) => {
    const { code, out, err } = await call(['rank', '--json', here(`data/bad/${file}`)]);
    expect(err).not.toMatch(/^\s+at /m);
    if (code === 2) expect([out, err]).toEqual(['', expect.stringContaining('no drain line')]);
    else expect(JSON.parse(out)).toMatchObject({ schema: 1 });
  });
});

describe('check', () => {
  it('counts what was understood, with the field names of the contract', async () => {
    const { code, out } = await call(['check', '--json', CORNER_LOT]);
    const result = parsed(out);
    expect(code).toBe(0);
    expect(result.features).toMatchObject({ tree: 6, drain: 6 });
    expect(result.species).toEqual({ named: 6, genus: 0, unknown: 0 });
    expect(result.materials).toEqual({ named: 6, unknown: 0 });
    expect(result.issues).toEqual([]);
    expect(result.assumed.map(({ path }) => path)).toContain('trees/birch-4/canopyRadiusM');
  });

  it('gives an issue flat: code, severity, file, feature, path, message', async () => {
    const { out } = await callOn(smallSite({}, { dbh_cm: 250 }), 'check', '--json');
    expect(parsed(out).issues).toEqual([
      {
        code: 'odd-diameter',
        severity: 'warning',
        file: 'standard input',
        index: 0,
        feature: 't1',
        path: 'properties',
        message: expect.stringContaining('2.5 m'),
      },
    ]);
  });

  it('prints one line an issue, the worst first', async () => {
    const text = smallSite({ material: 'cheese' }, { species: 'Gnome', dbh_cm: -3 });
    const { code, out } = await callOn(text, 'check');
    const lines = out.split('\n').filter((line) => /^(error|warning|notice) /.test(line));
    expect(code).toBe(1);
    expect(lines[0]).toMatch(/^error +standard input, t1, properties\.dbh_cm: .*-3/);
    expect(lines.some((line) => /^warning.*main, properties\.material.*cheese/.test(line))).toBe(true);
  });

  it('says each assumption once, counted, with examples', async () => {
    const { out } = await call(['check', CAMPUS]);
    expect(out).toMatch(/^ {2}2 lines: material not known: .*\(roof-7-2,\s+roof-9-3\)/m);
    expect(out).toMatch(/and \d+ more\)/);
    expect(out.split('canopy not given').length - 1).toBe(1);
  });

  it('reads several files together', async () => {
    const [trees, lines] = ['tree', 'drain'].map((kind) => {
      const site = JSON.parse(smallSite()) as { features: { properties: { kind: string } }[] };
      return JSON.stringify({
        ...site,
        features: site.features.filter(({ properties }) => properties.kind === kind),
      });
    });
    const { out } = await call(['check', '-', CORNER_LOT, '--json'], {
      stdin: () => Promise.resolve(lines ?? ''),
    });
    expect(parsed(out).features).toMatchObject({ tree: 6, drain: 7 });
    expect(parsed((await callOn(trees ?? '', 'check', '--json')).out).features).toMatchObject({
      tree: 1,
      drain: 0,
    });
  });

  it('passes nothing from a file on to the terminal as a command', async () => {
    const hostile = '\u001b[2J\u0007\u202ename';
    const { out } = await callOn(smallSite({ material: hostile }, {}, { name: hostile }), 'check');
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must not be there
    expect(out).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u202e]/);
    expect(out).toContain('name');
  });
});
