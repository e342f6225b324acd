import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { chanceOf } from '../fuzz/chance.js';
import { afterwards, JOBS, killOnce, tried } from './writing.js';

const folder = mkdtempSync(join(tmpdir(), 'rootreach-crash-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** A few of the 500 kills that `npm run crash` makes. */
describe('a command that is killed', () => {
  it('leaves every file as it was or whole', async () => {
    const job = JOBS.find(({ name }) => name === 'town');
    if (job === undefined) throw new Error('no such job');
    const ready = tried(job, join(folder, 'out'));
    expect(ready.old).not.toEqual(ready.fresh);
    for (let number = 0; number < 3; number++) {
      const { faults, old, fresh } = await killOnce(ready, chanceOf(1, job.name, number));
      expect(faults).toEqual([]);
      expect(old + fresh).toBe(ready.old.size);
    }
    expect(afterwards(ready)).toBeNull();
  });
});
