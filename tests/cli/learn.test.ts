import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Io } from '../../packages/cli/src/io.js';
import { learnFrom } from '../../packages/cli/src/learning.js';
import { learnedReport } from '../../packages/cli/src/print/learned-report.js';
import { styleFor } from '../../packages/cli/src/print/style.js';
import { type Called, CORNER_LOT, call, callOn, here } from './call.js';
import { smallSite } from './small-site.js';
import { faultOf } from './well-formed.js';

const folder = mkdtempSync(join(tmpdir(), 'rootreach-learn-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Four of the sites: the whole history has a test of its own. */
const history = readdirSync(here('data/findings'))
  .filter((file) => file.endsWith('.geojson'))
  .slice(0, 4)
  .map((file) => here(`data/findings/${file}`));
const model = join(folder, 'model.json');
const picture = join(folder, 'learned.svg');

/** A world in which nobody watches. */
const silent: Io = {
  stdout: { write: () => {} },
  stderr: { write: () => {} },
  stdin: () => Promise.resolve(''),
  now: new Date(2026, 10, 25),
  columns: undefined,
  isTTY: false,
  stderrIsTTY: false,
  styled: false,
  stopped: () => Promise.resolve(),
};

interface Group {
  readonly group: string;
  readonly entries: number;
  readonly expected: number;
  readonly multiplier: { readonly low: number; readonly mean: number; readonly high: number };
  readonly words: string;
}
interface Learned {
  readonly fingerprint: string;
  readonly groups: readonly Group[];
  readonly backtest: Record<string, unknown> | null;
  readonly backtestByTime: Record<string, unknown> | null;
}

let table: Called;
let plain: Learned;
beforeAll(async () => {
  table = await call(['learn', ...history, '--out', model, '--picture', picture], {
    columns: 80,
    isTTY: true,
  });
  plain = JSON.parse((await call(['learn', ...history, '--json'])).out) as Learned;
});

/** A file of the history with one more finding, written beside the others. */
function withFinding(name: string, properties: Record<string, unknown>): string {
  const site = JSON.parse(readFileSync(history[0] as string, 'utf8')) as { features: unknown[] };
  const finding = { type: 'Feature', geometry: null, properties: { kind: 'finding', ...properties } };
  const path = join(folder, name);
  writeFileSync(path, JSON.stringify({ ...site, features: [...site.features, finding] }));
  return path;
}

describe('learn --json', () => {
  it('has the members of the contract', () => {
    const number = expect.any(Number);
    const area = { auc: number };
    expect(plain.fingerprint).toMatch(/^[0-9a-f]{8}$/);
    for (const group of plain.groups) {
      expect(group).toMatchObject({
        group: expect.stringMatching(/^[a-z-]+\/[a-z0-9-]+$/),
        entries: number,
        expected: number,
        multiplier: { low: number, mean: number, high: number },
      });
      expect(group.multiplier.low).toBeLessThan(group.multiplier.high);
    }
    const test = {
      auc: number,
      ...{ worst10: number, worst20: number, worst30: number, brier: number },
      baselines: { nearestTree: area, age: area, unlearned: { auc: number, brier: number } },
    };
    expect(plain.backtest).toMatchObject({ ...test, by: 'sites' });
    expect(plain.backtestByTime).toMatchObject({ ...test, by: 'time' });
  });

  it('keeps areas and shares between 0 and 1 and finds no fewer roots in more metres', () => {
    for (const test of [plain.backtest, plain.backtestByTime]) {
      const { auc, worst10, worst20, worst30, brier } = test as Record<string, number>;
      for (const value of [auc, worst10, worst20, worst30, brier]) {
        expect(value).toBeGreaterThanOrEqual(0);
        expect(value).toBeLessThanOrEqual(1);
      }
      expect(worst10).toBeLessThanOrEqual(worst20 as number);
      expect(worst20).toBeLessThanOrEqual(worst30 as number);
    }
  });

  it('says each kind of opening in one plain sentence', () => {
    const clay = plain.groups.find(({ group }) => group === 'mortar/clay') as Group;
    expect(clay.words).toMatch(
      /^\d+ entries and \d+ stretches with roots not counted where [\d.]+ were expected: about .* we assumed \([\d.]+ to [\d.]+\)$/,
    );
    expect(clay.words).toContain(`${clay.entries} entries`);
    expect(clay.words).toContain(`where ${clay.expected.toFixed(1)} were`);
  });

  it('gives the same for the files in any order', async () => {
    const [first, ...others] = [...history].reverse();
    const again = await call(['learn', ...others, first as string, '--json']);
    expect(JSON.parse(again.out)).toEqual(plain);
  });
});

describe('the report', () => {
  it.each([80, 100, 140])('keeps within %i columns', async (width) => {
    const learning = await learnFrom(history, '2026-11-25', silent);
    for (const units of ['us', 'metric'] as const) {
      const text = learnedReport(learning, undefined, { units, width, style: styleFor(false) });
      for (const line of text.split('\n')) expect(line.length).toBeLessThanOrEqual(width);
      expect(text).not.toMatch(/ $/m);
    }
  });

  it('says what it learned from, what it passed over, and that the sites are invented', () => {
    expect(table.out.replace(/\s+/g, ' ')).toMatch(
      /^Learned from 4 sites \(INVENTED EXAMPLES\): 24 lines, \d+ findings; passed over: \d+ that say nothing of entry/,
    );
  });

  it('sets every way of ranking side by side, and says how few roots that rests on', () => {
    for (const name of ['rates as learned', 'rates as assumed', 'nearest tree', 'age of the line']) {
      const rows = table.out.match(new RegExp(`^${name} .*\\d % +\\d+ % +\\d+ % +0\\.\\d\\d \\(0\\.`, 'gm'));
      expect(rows).toHaveLength(2);
    }
    const said = table.out.replace(/\s+/g, ' ');
    expect(said).toMatch(/Only \d+ stretches with roots on 4 sites: .* 8 times in 10/);
    expect(said).toMatch(/The last lot: odds of \d+ % over \d+ stretches make [\d.]+; \d+ had roots\./);
  });

  it('speaks the units asked for, else those that all sites share', async () => {
    // two of the four sites are in feet, two in metres
    expect(table.out).toMatch(/ [\d,]+ stretches in [\d,]+ m,\s/);
    const feet = await call(['learn', ...history.slice(0, 2), '--units', 'us']);
    expect(feet.out).toMatch(/ [\d,]+ stretches in [\d,]+ ft,\s/);
  });

  it('says so where two sites with roots are wanting', async () => {
    const { code, out } = await call(['learn', history[0] as string]);
    expect(code).toBe(0);
    expect(out).toContain('Too little to try it out on');
  });
});

describe('findings that cannot be placed', () => {
  it('are listed with file, feature and reason, and end the command with 1', async () => {
    const path = withFinding('far.geojson', {
      id: 'too-far',
      drain: 'main',
      at_m: 900,
      seen: 'mass',
      date: '2024-05-06',
    });
    const { code, out, err } = await call(['learn', path, history[1] as string]);
    expect(code).toBe(1);
    expect(err).toMatch(/error +\S*far\.geojson, too-far, properties: .*past the end of line 'main'/);
    expect(out.replace(/\s+/g, ' ')).toContain('1 that could not be placed');
    const result = JSON.parse((await call(['learn', path, '--json'])).out) as { issues: unknown[] };
    expect(result.issues).toContainEqual(
      expect.objectContaining({ code: 'finding-misplaced', feature: 'too-far', file: path }),
    );
  });
});

describe('the picture', () => {
  it('is well-formed XML without script and without anything from elsewhere', () => {
    const svg = readFileSync(picture, 'utf8');
    expect(faultOf(svg)).toBeNull();
    expect(svg).toMatch(/<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
    expect(svg).not.toMatch(/<(script|image|use|style|foreignObject)\b|\bon\w+=|href|url\(|@import|data:/i);
    // the namespace is a name, not an address that is fetched
    expect(svg.match(/https?:/g)).toHaveLength(1);
  });

  it('tells its curves apart by pattern and by a name at each line', () => {
    const svg = readFileSync(picture, 'utf8');
    const patterns = [...svg.matchAll(/stroke-dasharray="([^"]+)" stroke-linejoin/g)].map(([, dash]) => dash);
    expect(patterns).toHaveLength(5);
    // the line of luck is the only other plain one, and a hairline
    expect(new Set(patterns).size).toBe(4);
    for (const name of [
      'rates as learned',
      'rates as assumed',
      'nearest tree',
      'age of the line',
      'by luck',
    ]) {
      expect(svg).toContain(`>${name}</text>`);
    }
  });
});

describe('rank and explain --model', () => {
  const ranked = async (...options: string[]) =>
    JSON.parse((await callOn(smallSite(), 'rank', '--json', ...options)).out) as {
      model: Record<string, string>;
      segments: { id: string; chance: { low: number; likely: number; high: number } }[];
    };
  /** Width of the range of expected entries, in logarithms: it does not depend on the level. */
  const widthOf = ({ low, high }: { low: number; high: number }) =>
    Math.log(Math.log1p(-high) / Math.log1p(-low));

  it('score with what was learned: the rate of clay joints rises and its range narrows', async () => {
    const [before, after] = [await ranked(), await ranked('--model', model)];
    expect(after.segments.length).toBeGreaterThan(2);
    for (const segment of after.segments) {
      const same = before.segments.find(({ id }) => id === segment.id);
      expect(same).toBeDefined();
      expect(segment.chance.likely).toBeGreaterThan(same?.chance.likely as number);
      expect(widthOf(segment.chance)).toBeLessThan(widthOf(same?.chance as never));
    }
  });

  it('name the model in the result', async () => {
    expect((await ranked('--model', model)).model['learned']).toBe(plain.fingerprint);
    expect((await ranked()).model['learned']).toBeUndefined();
    const text = (await callOn(smallSite(), 'rank', '--model', model)).out;
    expect(text).toContain(`Rates as learned from findings (model ${plain.fingerprint}).`);
    const why = (await callOn(smallSite(), 'explain', '--model', model)).out;
    expect(why).toMatch(/learned\s+from\s+findings:\s+1\./);
  });

  it.each([
    ['not JSON', 'x', /not JSON/],
    ['another kind of file', readFileSync(CORNER_LOT, 'utf8'), /not a learned model/],
    ['a model of other tables', null, /other tables or relations/],
  ])('refuse %s in one line', async (_, text, reason) => {
    const path = join(folder, 'unusable.json');
    const learned = JSON.parse(readFileSync(model, 'utf8')) as { model: Record<string, string> };
    const other = { ...learned, model: { ...learned.model, fingerprint: '00000000' } };
    writeFileSync(path, text ?? JSON.stringify(other));
    for (const name of ['rank', 'explain']) {
      const { code, out, err } = await call([name, CORNER_LOT, '--model', path]);
      expect([code, out]).toEqual([2, '']);
      expect(err).toMatch(reason);
      expect(err.trimEnd().split('\n')).toHaveLength(1);
    }
  });

  it('do not write over the model', async () => {
    const { code, err } = await call(['rank', CORNER_LOT, '--model', model, '--out', model]);
    expect(code).toBe(2);
    expect(err).toContain('--out names an input file');
  });
});

describe('nothing to learn', () => {
  it.each([
    ['no file', []],
    ['a site without findings', [CORNER_LOT]],
    ['a file that is not there', ['no-such.geojson']],
    ['one file twice', [history[0] as string, history[0] as string]],
    ['one name for two results', [history[0] as string, '--out', 'x', '--picture', 'x']],
    ['a picture of one site', [history[0] as string, '--picture', join(folder, 'one.svg')]],
    ['a picture over an input', [history[0] as string, '--picture', history[0] as string]],
  ])('from %s: one line, and 2', async (_, words) => {
    const { code, out, err } = await call(['learn', ...words]);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/^rootreach: /m);
    expect(err).not.toContain('went wrong inside');
  });
});
