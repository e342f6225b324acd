import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chanceOf } from './chance.js';
import { faultsAsProcess } from './child.js';
import { faultsOf } from './faults.js';
import { type Run, runCase } from './run-case.js';
import type { Target } from './targets.js';

/** A case that did not stand, by what it takes to make it again. */
export interface Found {
  readonly target: string;
  readonly seed: number;
  readonly number: number;
  readonly faults: readonly string[];
}

/** Text of a model learned from one invented site, as the command writes it. */
export async function modelText(run: Run, finding: string): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), 'rootreach-fuzz-'));
  try {
    const path = join(folder, 'model.json');
    await runCase(run, { argv: ['learn', finding, `--out=${path}`], files: {} }, join(folder, 'x'));
    return readFileSync(path, 'utf8');
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Which target a numbered case is for: targets take turns by their shares. */
export function targetOf(targets: readonly Target[], seed: number, number: number): Target {
  const total = targets.reduce((sum, { share }) => sum + share, 0);
  let at = chanceOf(seed, 'target', number).below(total);
  return targets.find(({ share }) => {
    at -= share;
    return at < 0;
  }) as Target;
}

/** One case in so many is also run by a process of its own. */
const CHILD_EVERY = 2000;

/** Runs one case and says what was wrong with it. */
export async function tryCase(
  run: Run,
  target: Target,
  seed: number,
  number: number,
  folder: string,
): Promise<Found> {
  const made = target.make(chanceOf(seed, target.name, number));
  const outcome = await runCase(run, made, folder);
  const child = number % CHILD_EVERY === 0 ? faultsAsProcess(made, outcome.code, folder) : [];
  return { target: target.name, seed, number, faults: [...faultsOf(outcome), ...child] };
}
