import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { describe, expect, it } from 'vitest';
import { knownBad } from './known-bad.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const cli = fileURLToPath(new URL('vitest.mjs', import.meta.resolve('vitest/package.json')));

/** How the tests of each fault ended. */
async function endings(): Promise<Record<string, string[]>> {
  const args = [cli, 'run', '-c', 'tests/mutation/known-bad.config.ts'];
  const failed = await promisify(execFile)(process.execPath, args, { cwd: root }).catch((error) => error);
  return JSON.parse(failed.stdout.trim().split('\n').at(-1));
}

describe('the tests', async () => {
  const found = await endings();

  // a fault that fails everything would be a broken set-up, not a test that sees it
  it.each(knownBad.map(({ name }) => name))('notice that %s', (name) => {
    expect(found[name]).toContain('AssertionError');
    expect(found[name]).toContain('passed');
  });
});
