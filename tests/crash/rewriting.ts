import { spawn } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Chance } from '../fuzz/chance.js';
import type { AfterKill } from './writing.js';

const WRITER = fileURLToPath(new URL('write-again.mjs', import.meta.url));
const CHARACTERS = 3_000_000;
/** Milliseconds within which a few files of that size are written. */
const WRITING_MS = 120;

const isOf = (text: string, letter: string): boolean =>
  text.length === CHARACTERS && text.replaceAll(letter, '') === '';

/** Kills a process that does nothing but write, as the command does: a moment without a write open is rare. */
export async function killWriter(folder: string, chance: Chance): Promise<AfterKill> {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const path = join(folder, 'file');
  writeFileSync(path, 'b'.repeat(CHARACTERS));
  const child = spawn(process.execPath, [WRITER, path, String(CHARACTERS)], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  child.stdout.once('data', () => setTimeout(() => child.kill('SIGKILL'), chance.below(WRITING_MS)));
  const signal = await new Promise((done) => child.once('exit', (_, by) => done(by)));
  const text = readFileSync(path, 'utf8');
  const others = readdirSync(folder).filter((name) => name !== 'file');
  const faults = [
    ...(isOf(text, 'a') || isOf(text, 'b') ? [] : [`neither text whole: ${text.length} characters`]),
    ...(signal === 'SIGKILL' ? [] : ['the writer ended by itself']),
    ...others.filter((name) => !/^\.file\..*\.part$/.test(name)).map((name) => `${name} was left`),
  ];
  return {
    old: isOf(text, 'b') ? 1 : 0,
    fresh: isOf(text, 'a') ? 1 : 0,
    parts: others.length,
    killed: signal === 'SIGKILL',
    faults,
  };
}
