// First run: builds, ranks the demo lot in the terminal, then serves the map page and prints its address.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from './build.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const command = join(root, 'packages', 'cli', 'dist', 'main.js');
const demo = join(root, 'data', 'sites', 'corner-lot.geojson');

console.error('Building ...');
if (!build()) process.exit(1);
const run = (...args) => spawnSync(process.execPath, [command, ...args], { stdio: 'inherit' });
// issues in a demo would end with 1; the page is served all the same
const ranked = run('rank', demo, '--top', '10');
if (ranked.status === 2) process.exit(2);
process.exit(run('map', demo, ...process.argv.slice(2)).status ?? 1);
