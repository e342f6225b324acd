// Runs all tests: builds first, finds a browser for the page tests, and closes with one plain line of counts.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { findBrowser } from './browser.mjs';
import { build } from './build.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
if (!build()) process.exit(1);

const browser = await findBrowser();
if (browser === null) {
  console.error('No Chromium found for the page tests: set ROOTREACH_BROWSER to one.');
  process.exit(1);
}
const report = join(root, 'node_modules', '.cache', 'test-report.json');
mkdirSync(join(root, 'node_modules', '.cache'), { recursive: true });
const args = ['vitest', 'run', '-c', 'tests/vitest.config.ts', '--reporter=default', '--reporter=json'];
const given = process.argv.slice(2);
const ALL = '--all-screens';
const asked = given.filter((word) => word !== ALL);
const { status } = spawnSync('npx', [...args, `--outputFile.json=${report}`, ...asked], {
  cwd: root,
  stdio: 'inherit',
  env: {
    ...process.env,
    ROOTREACH_BROWSER: browser,
    ...(given.includes(ALL) ? { ROOTREACH_SCREENS: 'all' } : {}),
  },
  shell: process.platform === 'win32',
});
const { numPassedTests, numFailedTests, numPendingTests, numTodoTests } = JSON.parse(
  readFileSync(report, 'utf8'),
);
const skipped = numPendingTests + numTodoTests;
console.log(`${numPassedTests} passed, ${numFailedTests} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`);
process.exit(status ?? 1);
