import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, rmSync, watch, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Chance } from '../fuzz/chance.js';

const here = (path: string): string => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const COMMAND = here('packages/cli/dist/main.js');
const LOT = here('data/sites/corner-lot.geojson');
const CAMPUS = here('data/sites/small-campus.geojson');
const FINDINGS = ['kettle-lane', 'mill-steps'].map((name) => here(`data/findings/${name}.geojson`));

/** A call that writes files, and the words that make it write others: `@/` stands for the folder. */
export interface Job {
  readonly name: string;
  readonly argv: readonly string[];
  readonly before: readonly string[];
  readonly after: readonly string[];
}

const LATER = { before: ['--as-of=2026'], after: ['--as-of=2036'] };

/** Everything that the command writes. */
export const JOBS: readonly Job[] = [
  { name: 'rank --json', argv: ['rank', CAMPUS, '--json', '--out=@/a.json'], ...LATER },
  { name: 'rank --csv', argv: ['rank', CAMPUS, '--csv', '--out=@/a.csv'], ...LATER },
  { name: 'page', argv: ['page', LOT, '--out=@/a.html'], before: ['--lang=en'], after: ['--lang=es'] },
  {
    name: 'quote',
    argv: ['quote', LOT, '--csv', '--out=@/a.csv'],
    before: ['--margin=10'],
    after: ['--margin=20'],
  },
  {
    name: 'learn',
    argv: ['learn', '--out=@/model.json', '--picture=@/a.svg'],
    before: FINDINGS.toReversed(),
    after: [...FINDINGS, here('data/findings/thimble-row.geojson')],
  },
  {
    name: 'convert',
    argv: ['convert', '--out=@/a.geojson', '@in/trees.csv'],
    before: [],
    after: ['@in/trees.csv'],
  },
  {
    name: 'season --ics',
    argv: ['season', LOT, '--ics', '--until=2040-01', '--out=@/a.ics'],
    ...LATER,
  },
  {
    name: 'town',
    argv: ['town', CAMPUS, '--threads=0', '--segments', '--cache=@/a.cache', '--out=@/'],
    ...LATER,
  },
];

type Files = ReadonlyMap<string, Buffer>;

const isPart = (name: string): boolean => /^\..*\.part$/.test(name);

const filesIn = (folder: string): Files =>
  new Map(
    readdirSync(folder)
      .filter((name) => !isPart(name))
      .map((name) => [name, readFileSync(join(folder, name))]),
  );

/** A job tried out: what it leaves before and after, and how long it takes. */
export interface Tried {
  readonly job: Job;
  readonly folder: string;
  readonly old: Files;
  readonly fresh: Files;
  readonly milliseconds: number;
}

const wordsOf = (job: Job, words: readonly string[], folder: string): string[] =>
  [COMMAND, ...job.argv, ...words].map((word) =>
    word.replace('@in/', `${folder}-in/`).replace('@/', `${folder}/`),
  );

function toTheEnd(job: Job, words: readonly string[], folder: string): Files {
  const { status, stderr } = spawnSync(process.execPath, wordsOf(job, words, folder), { encoding: 'utf8' });
  if (status !== 0) throw new Error(`${job.name} ended with ${status}: ${stderr}`);
  return filesIn(folder);
}

function emptied(folder: string): void {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
}

/** Runs a job to its end twice, in a folder of its own that is emptied first. */
export function tried(job: Job, folder: string): Tried {
  mkdirSync(`${folder}-in`, { recursive: true });
  const rows = Array.from(
    { length: 3000 },
    (_, i) => `${i},Acer rubrum,${5 + (i % 30)},${-70 - i / 1e5},40.5`,
  );
  writeFileSync(
    join(`${folder}-in`, 'trees.csv'),
    `id,species,dbh_in,longitude,latitude\n${rows.join('\n')}\n`,
  );
  emptied(folder);
  const old = toTheEnd(job, job.before, folder);
  emptied(folder);
  const start = performance.now();
  const fresh = toTheEnd(job, job.after, folder);
  for (const [name, bytes] of old) {
    if (fresh.get(name)?.equals(bytes) === true) throw new Error(`${job.name} writes the same ${name} twice`);
  }
  return { job, folder, old, fresh, milliseconds: performance.now() - start };
}

/** What was found in the folder after a kill. */
export interface AfterKill {
  /** Files as they were, files as they were to become. */
  readonly old: number;
  readonly fresh: number;
  /** Parts left behind, which nobody could take for a file. */
  readonly parts: number;
  /** True where the command was still running when it was killed. */
  readonly killed: boolean;
  readonly faults: readonly string[];
}

/** Kills at some moment of the run, or within a few milliseconds of the first sight of a part of a file. */
function killed(tried: Tried, chance: Chance): Promise<boolean> {
  const { job, folder, milliseconds } = tried;
  return new Promise((done) => {
    const child = spawn(process.execPath, wordsOf(job, job.after, folder), { stdio: 'ignore' });
    const kill = (): void => void child.kill('SIGKILL');
    const late = chance.below(1000) / 1000;
    const eager = chance.happens(0.7);
    const timer = setTimeout(kill, milliseconds * (eager ? 10 : 0.3 + 0.9 * late));
    const parts = 1 + chance.below(4);
    let seen = 0;
    const watcher = watch(folder, (_, name) => {
      if (!eager || name === null || !isPart(name)) return;
      seen += 1;
      if (seen === parts) setTimeout(kill, chance.below(3));
    });
    child.on('exit', (_, signal) => {
      clearTimeout(timer);
      watcher.close();
      done(signal === 'SIGKILL');
    });
  });
}

/** Kills the job once over its earlier files and looks at what is left. */
export async function killOnce(tried: Tried, chance: Chance): Promise<AfterKill> {
  const { folder, old, fresh } = tried;
  emptied(folder);
  for (const [name, bytes] of old) writeFileSync(join(folder, name), bytes);
  const wasKilled = await killed(tried, chance);
  const names = readdirSync(folder);
  const faults: string[] = [];
  const found = { old: 0, fresh: 0 };
  for (const [name, bytes] of filesIn(folder)) {
    if (old.get(name)?.equals(bytes) === true) found.old += 1;
    else if (fresh.get(name)?.equals(bytes) === true) found.fresh += 1;
    else faults.push(`${name} is neither the old file nor the new one: ${bytes.length} bytes`);
  }
  for (const name of old.keys()) if (!names.includes(name)) faults.push(`${name} is gone`);
  if (!wasKilled && found.fresh === 0) faults.push('the command ended by itself and wrote nothing');
  return { ...found, parts: names.filter(isPart).length, killed: wasKilled, faults };
}

/** Whether the job still does its work over what kills have left; the fault, if any. */
export function afterwards({ job, folder, fresh }: Tried): string | null {
  const files = toTheEnd(job, job.after, folder);
  const same = [...fresh].every(([name, bytes]) => files.get(name)?.equals(bytes) === true);
  return same ? null : `${job.name} does not write the same over what a kill has left`;
}
