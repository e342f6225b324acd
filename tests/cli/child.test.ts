import { spawn, spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CAMPUS, CORNER_LOT, callOn, here } from './call.js';
import { smallSite } from './small-site.js';

const command = here('packages/cli/dist/main.js');

function start(argv: readonly string[], input = '') {
  const { status, stdout, stderr } = spawnSync(process.execPath, [command, ...argv], {
    input,
    encoding: 'utf8',
    env: { PATH: process.env['PATH'] ?? '' },
  });
  return { code: status, out: stdout, err: stderr };
}

const STACK = /^\s+at .*:\d+/m;

describe('the built command', () => {
  it('ends with 0 for a good file, 1 for one with faults, 2 for what it cannot do', () => {
    expect(start(['rank', CORNER_LOT])).toMatchObject({ code: 0, err: '' });
    expect(start(['check', here('data/bad/odd-diameter.geojson')]).code).toBe(1);
    expect(start(['rank', 'not-there'])).toMatchObject({ code: 2, out: '' });
    expect(start(['no-such-command']).code).toBe(2);
  });

  it('reads standard input and is plain into a pipe', () => {
    const { code, out } = start(['rank', '-'], smallSite());
    expect(code).toBe(0);
    expect(out).toContain('main/');
    expect(out).not.toContain('\u001b');
  });

  it('shows no stack trace for all bad files together', () => {
    const files = readdirSync(here('data/bad')).map((file) => here(`data/bad/${file}`));
    for (const name of ['check', 'rank', 'explain']) {
      const { code, out, err } = start([name, ...files]);
      expect(code).toBe(1);
      expect(out).not.toBe('');
      expect(err).not.toMatch(STACK);
    }
  });

  it('ends quietly when the reader has seen enough', async () => {
    const child = spawn(process.execPath, [command, 'rank', CAMPUS, '--json']);
    let err = '';
    child.stderr.on('data', (chunk: Buffer) => {
      err += chunk.toString();
    });
    child.stdout.once('data', () => child.stdout.destroy());
    const code = await new Promise((done) => child.once('close', done));
    expect([code, err]).toEqual([0, '']);
  });
});

describe('threads', () => {
  it('change nothing in what a town is told, byte by byte', () => {
    const outs = ['0', '1', '3'].map((threads) => start(['town', CAMPUS, '--threads', threads, '--json']));
    expect(outs.map(({ code }) => code)).toEqual([0, 0, 0]);
    expect(outs[1]?.out).toBe(outs[0]?.out);
    expect(outs[2]?.out).toBe(outs[0]?.out);
  });
});

describe('garbage', () => {
  it('is refused or read, never with a stack trace', async () => {
    const texts = fc.oneof(fc.string(), fc.string({ unit: 'binary' }), fc.json());
    await fc.assert(
      fc.asyncProperty(texts, fc.constantFrom('check', 'rank', 'explain'), async (text, name) => {
        const { code, err } = await callOn(text, name);
        expect([1, 2, 0]).toContain(code);
        expect(err).not.toMatch(STACK);
        expect(err).not.toContain('something went wrong inside');
      }),
      { numRuns: 40 },
    );
  });

  it('in the properties of features is an issue', async () => {
    const properties = fc.dictionary(
      fc.constantFrom(
        'id',
        'material',
        'size_mm',
        'installed',
        'flow',
        'joint',
        'depth_start_m',
        'name',
        'wet',
      ),
      fc.jsonValue({ maxDepth: 1 }),
    );
    await fc.assert(
      fc.asyncProperty(properties, async (drain) => {
        const { code, err } = await callOn(smallSite(drain as Record<string, unknown>), 'rank', '--json');
        expect([0, 1, 2]).toContain(code);
        expect(err).not.toContain('something went wrong inside');
      }),
      { numRuns: 40 },
    );
  });
});
