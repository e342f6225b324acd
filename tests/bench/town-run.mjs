// Benchmark of a whole town: `rootreach town` from the files and from its cache, against the bare reading and parsing
// of the same files with one thread. Ratios within one run; each task in a process of its own; medians of the rounds.
//   npm run bench:town              1,000,000 trees and 200,000 lines, 3 rounds, and a tenth of that for the growth
//   npm run bench:town -- 0.1 1     a tenth, one round
import { spawnSync } from 'node:child_process';
import { mkdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { makeTown } from './town.mjs';
import { writeTable } from './town-table.mjs';

const size = Number(process.argv[2] ?? 1);
const rounds = Number(process.argv[3] ?? 3);
const at = (name) => fileURLToPath(new URL(name, import.meta.url));
const command = at('../../packages/cli/bin/rootreach.mjs');
const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

/** Makes a town of so many millionths of a million trees; returns its folder. */
function town(share) {
  const folder = join(tmpdir(), `rootreach-town-${share}`);
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const made = makeTown({
    trees: Math.round(1_000_000 * share),
    lines: Math.round(200_000 * share),
    seed: 7,
  });
  writeFileSync(join(folder, 'trees.geojson'), made.trees);
  writeFileSync(join(folder, 'lines.geojson'), made.lines);
  const table = writeTable(join(folder, 'trees.csv'), made.trees);
  const bytes = made.trees.length + made.lines.length;
  console.log(
    `${1_000_000 * share} trees, ${200_000 * share} lines, ${(bytes / 1e6).toFixed(0)} MB; the trees as a table ${(table / 1e6).toFixed(0)} MB`,
  );
  return folder;
}

/** Time in ms and peak memory in MB of a process of its own. */
function measured(args) {
  const from = performance.now();
  const { status, stderr } = spawnSync('/usr/bin/env', ['time', '-f', '%M', process.execPath, ...args], {
    encoding: 'utf8',
    maxBuffer: 1 << 28,
  });
  const ms = performance.now() - from;
  if (status === null || status > 1) throw new Error(stderr);
  return { ms, mb: Number(stderr.trim().split('\n').at(-1)) / 1024 };
}

function run(folder) {
  const files = ['trees', 'lines'].map((name) => join(folder, `${name}.geojson`));
  const cache = join(folder, 'town.cache');
  const out = ['--top', '1000', '--out', join(folder, 'out')];
  const tasks = {
    floor: [at('measure.mjs'), 'floor', folder],
    files: [command, 'town', ...files, ...out],
    'trees as a table': [command, 'town', join(folder, 'trees.csv'), files[1], ...out],
    'one thread': [command, 'town', ...files, ...out, '--threads', '1'],
    'first, with cache': [command, 'town', ...files, ...out, '--cache', cache],
    'from the cache': [command, 'town', ...files, ...out, '--cache', cache],
    'every stretch too': [command, 'town', ...files, ...out, '--cache', cache, '--segments'],
  };
  const taken = Object.fromEntries(Object.keys(tasks).map((task) => [task, []]));
  for (let round = 0; round < rounds; round++) {
    for (const [task, args] of Object.entries(tasks)) {
      if (task === 'first, with cache') rmSync(cache, { force: true });
      taken[task].push(measured(args));
    }
  }
  const ms = (task) => median(taken[task].map((one) => one.ms));
  for (const task of Object.keys(tasks)) {
    const mb = median(taken[task].map((one) => one.mb)).toFixed(0);
    const ratio = (ms(task) / ms('floor')).toFixed(2);
    console.log(
      `${task.padEnd(18)} ${ms(task).toFixed(0).padStart(7)} ms, ${ratio} x the parse, peak ${mb} MB`,
    );
  }
  const rows = ms('every stretch too') - ms('from the cache');
  const csv = statSync(join(folder, 'out', 'segments.csv')).size;
  console.log(`writing every stretch: ${rows.toFixed(0)} ms for ${(csv / 1e6).toFixed(0)} MB`);
  return ms('files');
}

const small = run(town(size / 10));
const large = run(town(size));
console.log(`ten times the town takes ${(large / small).toFixed(1)} times as long`);
