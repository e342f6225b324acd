import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { chanceOf } from '../fuzz/chance.js';
import { killWriter } from './rewriting.js';
import { afterwards, JOBS, killOnce, tried } from './writing.js';

const folder = mkdtempSync(join(tmpdir(), 'rootreach-crash-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** A few of the kills that `npm run crash` makes. */
describe('killed', () => {
  it('while it writes, the command leaves one of two texts whole', async () => {
    let inTheMiddle = 0;
    for (let number = 0; number < 10; number++) {
      const { faults, old, fresh, parts } = await killWriter(
        join(folder, 'writer'),
        chanceOf(1, 'writer', number),
      );
      expect(faults).toEqual([]);
      expect(old + fresh).toBe(1);
      inTheMiddle += parts;
    }
    expect(inTheMiddle).toBeGreaterThan(0);
  });

  it('at any moment, a command leaves its file as it was or whole, and works the next time', async () => {
    const job = JOBS.find(({ name }) => name === 'rank --csv');
    if (job === undefined) throw new Error('no such job');
    const ready = tried(job, join(folder, 'out'));
    const { faults, old, fresh } = await killOnce(ready, chanceOf(1, job.name, 0));
    expect(faults).toEqual([]);
    expect(old + fresh).toBe(ready.old.size);
    expect(afterwards(ready)).toBeNull();
  });
});
