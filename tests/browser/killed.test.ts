import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { killPage } from '../crash/saving.js';

const folder = mkdtempSync(join(tmpdir(), 'rootreach-killed-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Two of the 100 kills that `npm run crash -- --page` makes. */
it('a browser killed while the page saves comes back with the site, at most its last change missing', async () => {
  const { kills, withLast, withoutLast, lost } = await killPage(2, 7, folder);
  expect(lost).toEqual([]);
  expect([kills, withLast + withoutLast]).toEqual([2, 2]);
});
