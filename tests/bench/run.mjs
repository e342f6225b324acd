// Benchmark: a seeded town ranked end to end against the bare reading and parsing of the same files, and the
// overlap step against Turf and GEOS. Ratios within one run; the tasks take turns, medians of the rounds.
//   npm run bench              100,000 trees and 20,000 lines, 5 rounds
//   npm run bench -- 0.1 3     a tenth of that, 3 rounds
import { spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { makeTown } from './town.mjs';

const size = Number(process.argv[2] ?? 1);
const rounds = Number(process.argv[3] ?? 5);
const counts = { trees: Math.round(100_000 * size), lines: Math.round(20_000 * size) };
const folder = join(tmpdir(), 'rootreach-bench');
const measure = fileURLToPath(new URL('measure.mjs', import.meta.url));

mkdirSync(folder, { recursive: true });
const town = makeTown({ ...counts, seed: 7 });
writeFileSync(join(folder, 'trees.geojson'), town.trees);
writeFileSync(join(folder, 'lines.geojson'), town.lines);
const megabytes = ((town.trees.length + town.lines.length) / 1e6).toFixed(1);
console.log(`${counts.trees} trees, ${counts.lines} lines, ${megabytes} MB; ${rounds} rounds`);

const tasks = ['floor', 'rank', 'overlap-ours', 'overlap-geos', 'overlap-turf'];
const taken = Object.fromEntries(tasks.map((task) => [task, []]));
for (let round = 0; round < rounds; round++) {
  for (const task of tasks) {
    // the Turf pipeline takes minutes: two rounds tell enough
    if (task === 'overlap-turf' && round > 1) continue;
    const { stdout, stderr, status } = spawnSync(process.execPath, [measure, task, folder], {
      encoding: 'utf8',
    });
    if (status !== 0) throw new Error(`${task}: ${stderr}`);
    taken[task].push(JSON.parse(stdout));
  }
}

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
const msOf = (task) => taken[task].map((t) => t.ms);
for (const task of tasks) {
  const ms = msOf(task);
  const peak = median(taken[task].map((t) => t.peakMb)).toFixed(0);
  const got = JSON.stringify(taken[task][0].got);
  const spread = `${Math.min(...ms).toFixed(0)}-${Math.max(...ms).toFixed(0)}`;
  console.log(
    `${task.padEnd(13)} ${median(ms).toFixed(0).padStart(7)} ms (${spread}), peak ${peak} MB, ${got}`,
  );
}
const ratio = (a, b) => (median(msOf(a)) / median(msOf(b))).toFixed(2);
console.log(`rank end to end : reading and parsing = ${ratio('rank', 'floor')} (aim: at most 2.5)`);
console.log(
  `Turf pipeline : ours, overlap alone = ${ratio('overlap-turf', 'overlap-ours')} (aim: at least 20)`,
);
console.log(`GEOS 64-gons : ours, overlap alone = ${ratio('overlap-geos', 'overlap-ours')}`);

// its own process, and a database started for it; twice, since the first run warms the disk
const postgis = [1, 2].map(() =>
  JSON.parse(
    spawnSync(process.execPath, [fileURLToPath(new URL('overlap-postgis.mjs', import.meta.url)), folder], {
      encoding: 'utf8',
    }).stdout || '{"missing":"PostGIS did not answer"}',
  ),
);
if (postgis[1].missing) console.log(`PostGIS: not compared, ${postgis[1].missing}`);
else {
  const ms = Math.min(...postgis.map((one) => one.ms));
  console.log(`PostGIS ${ms.toFixed(0)} ms, ${JSON.stringify(postgis[1].got)}`);
  console.log(
    `PostGIS : ours, overlap alone = ${(ms / median(msOf('overlap-ours'))).toFixed(1)} (aim: at least 20)`,
  );
}
