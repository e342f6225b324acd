import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { makeTown } from '../bench/town.mjs';
import { here } from './call.js';

const command = here('packages/cli/dist/main.js');
const folder = mkdtempSync(join(tmpdir(), 'rootreach-town-stopped-'));
afterAll(() => rmSync(folder, { recursive: true }));
const at = (name: string): string => join(folder, name);

const made = makeTown({ trees: 300, lines: 800, seed: 13 });
writeFileSync(at('trees.geojson'), made.trees);
writeFileSync(at('lines.geojson'), made.lines);
const FILES = [at('trees.geojson'), at('lines.geojson')];

/** A folder with the result of an earlier run in it. */
function earlier(name: string): string {
  mkdirSync(at(name));
  writeFileSync(join(at(name), 'lines.geojson'), 'from an earlier run');
  return at(name);
}

/** Half of a kilobyte each: the system stops a file at so many, as a full disk does. */
function withLimit(blocks: number, ...argv: string[]) {
  const script = `ulimit -f ${blocks}; exec "$0" "$@"`;
  return spawnSync('bash', ['-c', script, process.execPath, command, ...argv], { encoding: 'utf8' });
}

const ended = (child: ChildProcess): Promise<[code: number | null, signal: string | null]> =>
  new Promise((done) => child.once('close', (code, signal) => done([code, signal])));

describe('a town that cannot be written to the end', { timeout: 180_000 }, () => {
  it('leaves the results of an earlier run and nothing else where there is no room', () => {
    const out = earlier('full');
    const { status, stderr } = withLimit(100, 'town', ...FILES, '--threads', '0', '--top', '5', '--out', out);
    expect(status).toBe(2);
    expect(stderr.trim().split('\n').at(-1)).toMatch(/^rootreach: cannot write .*lines\.geojson: .*large/);
    expect(readdirSync(out)).toEqual(['lines.geojson']);
    expect(readFileSync(join(out, 'lines.geojson'), 'utf8')).toBe('from an earlier run');
  });

  it('leaves no cache where there is no room for it', () => {
    mkdirSync(at('caches'));
    const cache = join(at('caches'), 'town.cache');
    const { status, stderr } = withLimit(
      100,
      'town',
      ...FILES,
      '--threads',
      '0',
      '--top',
      '5',
      '--cache',
      cache,
    );
    expect(status).toBe(2);
    expect(stderr).toMatch(/rootreach: cannot write .*town\.cache/);
    expect(readdirSync(at('caches'))).toEqual([]);
  });

  // a signal may come while nothing is written yet: it is sent when the first unfinished file is seen
  it.each(['SIGINT', 'SIGTERM'] as const)('takes its unfinished files away on %s', async (signal) => {
    const out = earlier(signal);
    const child = spawn(process.execPath, [
      command,
      'town',
      ...FILES,
      '--top',
      '5',
      '--segments',
      '--out',
      out,
    ]);
    const end = ended(child);
    while (child.exitCode === null && !readdirSync(out).some((name) => name.endsWith('.part')))
      await new Promise((soon) => setTimeout(soon, 1));
    child.kill(signal);
    expect(await end).toEqual([null, signal]);
    expect(readdirSync(out)).toEqual(['lines.geojson']);
    expect(readFileSync(join(out, 'lines.geojson'), 'utf8')).toBe('from an earlier run');
  });
});
