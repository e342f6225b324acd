// Runs seeded cases of bad input through the built command. A thread runs them; this one watches that none hangs.
//   npm run fuzz -- --cases 20000 --seed 1 --chunk 1/4
//   npm run fuzz -- --seed 1 --case 1234 --show
import { mkdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import { runnerImport } from 'vite';

const root = fileURLToPath(new URL('../..', import.meta.url));
/** A case that has had the processor for so long hangs, seconds. */
const HANG_S = 5;
/** One that has had neither processor nor end for so long waits for what never comes, seconds. */
const STUCK_S = 600;

async function loaded() {
  const { module } = await runnerImport(join(root, 'tests/fuzz/try-case.ts'), { root, logLevel: 'error' });
  const { targetsWith } = (
    await runnerImport(join(root, 'tests/fuzz/targets.ts'), { root, logLevel: 'error' })
  ).module;
  const { run } = await import(new URL('../cli/dist/run.js', import.meta.url).href);
  const model = await module.modelText(run, join(root, 'data/findings/kettle-lane.geojson'));
  return { ...module, run, targets: targetsWith(model) };
}

async function work({ seed, numbers, clock }) {
  const { run, targets, targetOf, tryCase } = await loaded();
  const folder = join(tmpdir(), `rootreach-fuzz-${process.pid}`);
  const now = new Int32Array(clock);
  for (const number of numbers) {
    const target = targetOf(targets, seed, number);
    Atomics.store(now, 0, number);
    Atomics.add(now, 1, 1);
    const found = await tryCase(run, target, seed, number, folder).catch((error) => ({
      target: target.name,
      seed,
      number,
      faults: [`thrown past the command: ${error.stack}`],
    }));
    parentPort.postMessage(found);
  }
}

/** Runs cases in a thread until they are done, or one hangs or ends the thread: then from the next one on. */
async function watch(seed, numbers, told) {
  let left = numbers;
  while (left.length > 0) {
    const clock = new SharedArrayBuffer(8);
    const now = new Int32Array(clock);
    Atomics.store(now, 0, -1);
    const worker = new Worker(new URL(import.meta.url), {
      workerData: { seed, numbers: left, clock },
      resourceLimits: { maxOldGenerationSizeMb: 1500 },
    });
    let turn = -1;
    let since = process.cpuUsage();
    let started = performance.now();
    let hung = null;
    const timer = setInterval(() => {
      if (Atomics.load(now, 0) < 0) return;
      if (Atomics.load(now, 1) !== turn) {
        turn = Atomics.load(now, 1);
        since = process.cpuUsage();
        started = performance.now();
        return;
      }
      const { user, system } = process.cpuUsage(since);
      const waited = (performance.now() - started) / 1000;
      if ((user + system) / 1e6 < HANG_S && waited < STUCK_S) return;
      hung = `no end after ${((user + system) / 1e6).toFixed(1)} s of the processor, ${waited.toFixed(0)} s in all`;
      void worker.terminate();
    }, 250);
    worker.on('message', told);
    const failed = await new Promise((done) => {
      let fault = null;
      worker.on('error', (error) => {
        fault = `the thread ended: ${error.message}`;
      });
      worker.on('exit', () => done(hung ?? fault));
    });
    clearInterval(timer);
    const last = Atomics.load(now, 0);
    if (failed === null) return;
    if (last < 0) throw new Error(failed);
    told({ target: '?', seed, number: last, faults: [failed] });
    left = left.slice(left.indexOf(last) + 1);
  }
}

async function show(seed, number, folder) {
  const { targets, targetOf, run, tryCase } = await loaded();
  const { chanceOf } = (await runnerImport(join(root, 'tests/fuzz/chance.ts'), { root, logLevel: 'error' }))
    .module;
  const target = targetOf(targets, seed, number);
  const { argv, files } = target.make(chanceOf(seed, target.name, number));
  mkdirSync(folder, { recursive: true });
  for (const [name, content] of Object.entries(files)) writeFileSync(join(folder, name), content);
  console.log(`rootreach ${argv.map((word) => `'${word.replace('@/', `${folder}/`)}'`).join(' ')}`);
  console.log(await tryCase(run, target, seed, number, `${folder}-run`));
}

async function main() {
  const { values } = parseArgs({
    options: {
      cases: { type: 'string', default: '2000' },
      seed: { type: 'string', default: '1' },
      chunk: { type: 'string', default: '1/1' },
      case: { type: 'string' },
      show: { type: 'boolean', default: false },
    },
  });
  const seed = Number(values.seed);
  if (values.case !== undefined && values.show) {
    await show(seed, Number(values.case), join(tmpdir(), `rootreach-case-${seed}-${values.case}`));
    return;
  }
  const [part, parts] = values.chunk.split('/').map(Number);
  const all = Array.from({ length: Number(values.cases) }, (_, i) => i);
  const numbers =
    values.case === undefined ? all.filter((number) => number % parts === part - 1) : [Number(values.case)];
  const counts = {};
  let bad = 0;
  let ran = 0;
  const tell = () => console.log(JSON.stringify({ seed, chunk: values.chunk, ran, bad, counts }));
  await watch(seed, numbers, ({ target, number, faults }) => {
    counts[target] = (counts[target] ?? 0) + 1;
    ran += 1;
    if (ran % 1000 === 0) tell();
    if (faults.length === 0) return;
    bad += 1;
    console.log(JSON.stringify({ target, seed, case: number, faults: faults.slice(0, 4) }));
  });
  tell();
  process.exit(bad === 0 ? 0 : 1);
}

if (isMainThread) await main();
else await work(workerData);
