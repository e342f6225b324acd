// Kills the built command with SIGKILL while it works and writes, and the page's browser while it saves; looks at what
// is left each time.
//   npm run crash -- --kills 500 --seed 1
//   npm run crash -- --kills 60 --job town
//   npm run crash -- --kills 400 --writer
//   npm run crash -- --page --kills 100
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { runnerImport } from 'vite';
import { findBrowser } from './browser.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const load = async (path) => (await runnerImport(join(root, path), { root, logLevel: 'error' })).module;

/** Kills so many times, tells what was left, and gives the number of faults. */
async function killed(name, kills, kill) {
  const sum = { kills: 0, running: 0, old: 0, fresh: 0, withParts: 0, faults: 0 };
  for (let number = 0; number < kills; number++) {
    const after = await kill(number);
    sum.kills += 1;
    sum.running += after.killed ? 1 : 0;
    sum.old += after.old;
    sum.fresh += after.fresh;
    sum.withParts += after.parts > 0 ? 1 : 0;
    sum.faults += after.faults.length;
    for (const fault of after.faults) console.log(`${name}, kill ${number}: ${fault}`);
  }
  console.log(JSON.stringify({ job: name, ...sum }));
  return sum.faults;
}

async function killCommands(kills, seed, folder, only) {
  const { JOBS, tried, killOnce, afterwards } = await load('tests/crash/writing.ts');
  const { chanceOf } = await load('tests/fuzz/chance.ts');
  let bad = 0;
  const jobs = only === undefined ? JOBS : JOBS.filter(({ name }) => name === only);
  for (const [i, job] of jobs.entries()) {
    const ready = tried(job, join(folder, `job-${i}`));
    const share = Math.floor(kills / jobs.length) + (i < kills % jobs.length ? 1 : 0);
    bad += await killed(job.name, share, (number) => killOnce(ready, chanceOf(seed, job.name, number)));
    const after = afterwards(ready);
    if (after !== null) console.log(after);
    bad += after === null ? 0 : 1;
  }
  return bad;
}

async function killWriting(kills, seed, folder) {
  const { killWriter } = await load('tests/crash/rewriting.ts');
  const { chanceOf } = await load('tests/fuzz/chance.ts');
  return await killed('the writer', kills, (number) =>
    killWriter(join(folder, 'writer'), chanceOf(seed, 'writer', number)),
  );
}

async function killSaving(kills, seed, folder) {
  const { killPage } = await load('tests/crash/saving.ts');
  process.env.ROOTREACH_BROWSER = (await findBrowser()) ?? '';
  const { lost, ...counts } = await killPage(kills, seed, folder);
  for (const one of lost) console.log(one);
  console.log(JSON.stringify({ job: 'the page saving', ...counts, faults: lost.length }));
  return lost.length;
}

const { values } = parseArgs({
  options: {
    kills: { type: 'string', default: '500' },
    seed: { type: 'string', default: '1' },
    job: { type: 'string' },
    writer: { type: 'boolean', default: false },
    page: { type: 'boolean', default: false },
  },
});
const folder = mkdtempSync(join(tmpdir(), 'rootreach-crash-'));
try {
  const [kills, seed] = [Number(values.kills), Number(values.seed)];
  const kill = values.page ? killSaving : values.writer ? killWriting : killCommands;
  const bad = await kill(kills, seed, folder, values.job);
  process.exitCode = bad === 0 ? 0 : 1;
} finally {
  rmSync(folder, { recursive: true, force: true });
}
