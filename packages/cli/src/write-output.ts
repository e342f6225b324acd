import { renameSync } from 'node:fs';
import { type FileHandle, open, realpath, stat } from 'node:fs/promises';
import { dirname } from 'node:path';
import type { Args } from './args.js';
import { CannotDo } from './cannot-do.js';
import type { Io } from './io.js';
import { sameFile } from './same-file.js';
import { Unfinished } from './unfinished.js';

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'no such folder',
  ENOTDIR: 'no such folder',
  EACCES: 'not allowed to write there',
  EPERM: 'not allowed to write there',
  EROFS: 'not allowed to write there',
  EISDIR: 'that is a folder',
  ENOSPC: 'the disk is full',
  EDQUOT: 'there is no more room for you on that disk',
  EFBIG: 'the file may not become so large there',
  ENAMETOOLONG: 'the name is too long',
};

/** What is written: texts or bytes, as they come. */
export type Parts = string | Iterable<string | Uint8Array>;

/** Characters put together before they are written: each write waits for the disk. */
const AT_ONCE = 1 << 20;

function* gathered(parts: Parts): Iterable<string | Uint8Array> {
  let held: string[] = [];
  let length = 0;
  for (const part of typeof parts === 'string' ? [parts] : parts) {
    if (typeof part !== 'string') {
      yield held.join('');
      yield part;
      held = [];
      length = 0;
      continue;
    }
    held.push(part);
    length += part.length;
    if (length < AT_ONCE) continue;
    yield held.join('');
    held = [];
    length = 0;
  }
  yield held.join('');
}

/** A single write may take in less than it is given, as it does on a disk that is nearly full: `writeFile` goes on. */
async function writeParts(file: FileHandle, parts: Parts): Promise<void> {
  for (const part of gathered(parts)) if (part.length > 0) await file.writeFile(part);
}

/** The new name is on the disk only when its folder is; some systems open no folder, and need none of this. */
async function keepName(folder: string): Promise<void> {
  const opened = await open(folder, 'r').catch(() => null);
  if (opened === null) return;
  await opened.sync().catch(() => undefined);
  await opened.close();
}

async function writeBeside(beside: string, parts: Parts, mode: number | undefined): Promise<void> {
  const file = await open(beside, 'wx', mode);
  try {
    await writeParts(file, parts);
    await file.sync();
  } finally {
    await file.close();
  }
}

interface Output {
  readonly path: string;
  readonly parts: Parts;
}

/** Where a file is being written, and where it goes when all are whole. */
interface Beside {
  readonly beside: string;
  readonly target: string;
}

/** Writes a file beside its target; null where the target is no file, such as a pipe or a terminal: that is written to. */
async function begun({ path, parts }: Output, unfinished: Unfinished): Promise<Beside | null> {
  const there = await stat(path).catch(() => null);
  if (there?.isDirectory() === true) throw new CannotDo(`cannot write ${path}: that is a folder`);
  if (there !== null && !there.isFile()) {
    const file = await open(path, 'w');
    await writeParts(file, parts).finally(() => file.close());
    return null;
  }
  // a link stays a link
  const target = await realpath(path).catch(() => path);
  const beside = unfinished.beside(target);
  await writeBeside(beside, parts, there?.mode);
  return { beside, target };
}

/**
 * Writes files whole or not at all: beside their targets, renamed when the last is whole. Whoever looks, and whenever
 * it ends, be the disk full or the command stopped, sees the old files or the new ones.
 */
export async function writeAllWhole(outputs: readonly Output[]): Promise<void> {
  const unfinished = new Unfinished();
  const whole: Beside[] = [];
  let path = '';
  try {
    for (const output of outputs) {
      ({ path } = output);
      const one = await begun(output, unfinished);
      if (one !== null) whole.push(one);
    }
    // at once: a signal between two of them would leave old files beside new ones
    for (const { beside, target } of whole) {
      path = target;
      renameSync(beside, target);
    }
  } catch (error) {
    if (error instanceof CannotDo) throw error;
    const { code, message } = error as NodeJS.ErrnoException;
    throw new CannotDo(`cannot write ${path}: ${REASONS[code ?? ''] ?? message}`);
  } finally {
    unfinished.clear();
  }
  for (const folder of new Set(whole.map(({ target }) => dirname(target)))) await keepName(folder);
}

/**
 * Writes one file as `writeAllWhole` does.
 * @param parts The text, or pieces of it that are written as they come.
 */
export const writeWhole = (path: string, parts: Parts): Promise<void> => writeAllWhole([{ path, parts }]);

/** Options that name files which are read. */
const READ = ['model', 'prices', 'map', 'ground'];

/** @throws CannotDo where a path to be written is one of the files that are read. */
export function keepInputs(args: Args, path: string, option: string): void {
  const read = READ.filter((name) => name !== option).map((name) => args.text(name) ?? '-');
  if ([...args.files, ...read].some((file) => file !== '-' && sameFile(file, path))) {
    throw new CannotDo(`--${option} names an input file: ${path}`);
  }
}

/** Where a result goes, checked before the work is done. */
export function outputPath(args: Args, option = 'out'): string | undefined {
  const path = args.text(option);
  if (path !== undefined) keepInputs(args, path, option);
  return path;
}

/** Prints the result, or writes it to the file asked for and says so. */
export async function writeOutput(text: string, path: string | undefined, io: Io): Promise<void> {
  if (path === undefined) {
    io.stdout.write(text);
    return;
  }
  await writeWhole(path, text);
  io.stderr.write(`Wrote ${path}.\n`);
}
