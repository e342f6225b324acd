import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { run } from '../../packages/cli/src/run.js';
import { here } from '../cli/call.js';
import { inProcess } from './child.js';
import type { Run } from './run-case.js';
import { type Target, targetsWith } from './targets.js';
import { modelText, targetOf, tryCase } from './try-case.js';

/** A slice of what `npm run fuzz` runs: the same every time. */
const SEED = 20_261_127;
const CASES = 600;

const folder = mkdtempSync(join(tmpdir(), 'rootreach-fuzz-'));
afterAll(() => rmSync(folder, { recursive: true }));
let targets: readonly Target[];
beforeAll(async () => {
  targets = targetsWith(await modelText(run as Run, here('data/findings/kettle-lane.geojson')));
});

describe('bad input', () => {
  it('ends in plain words and the right exit code, and comes out as no number, formula, markup or key', async () => {
    const found: unknown[] = [];
    const met = new Set<string>();
    for (let number = 1; number <= CASES; number++) {
      const target = targetOf(targets, SEED, number);
      met.add(target.name);
      const one = await tryCase(run as Run, target, SEED, number, join(folder, 'case'));
      if (one.faults.length > 0) found.push(one);
    }
    expect(found).toEqual([]);
    expect(met.size).toBeGreaterThan(10);
  });

  it.each([
    ['a million brackets', '['.repeat(1_000_000)],
    ['objects in objects', `${'{"a":'.repeat(200_000)}1${'}'.repeat(200_000)}`],
    ['one long text', `{"type":"FeatureCollection","features":[],"x":"${'"'.padStart(20_000_000, 'x')}}`],
    ['nothing but zeros', new Uint8Array(1_000_000)],
  ])('of some size is refused or read by the command as it is built: %s', (_, input) => {
    const { code, out, err } = inProcess(['check', '-'], input);
    expect([0, 1, 2]).toContain(code);
    expect(out + err).toMatch(/\w/);
    expect(out + err).not.toMatch(/^\s+at .*:\d+|call stack|went wrong inside/m);
  });
});
