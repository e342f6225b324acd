import { randomUUID } from 'node:crypto';
import { type FileHandle, open, realpath, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import type { Args } from './args.js';
import { CannotDo } from './cannot-do.js';
import type { Io } from './io.js';
import { sameFile } from './same-file.js';

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'no such folder',
  ENOTDIR: 'no such folder',
  EACCES: 'not allowed to write there',
  EPERM: 'not allowed to write there',
  EROFS: 'not allowed to write there',
  EISDIR: 'that is a folder',
  ENOSPC: 'the disk is full',
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

/** Writes beside the target and renames: whoever looks, and whenever it ends, sees the old file or the new one whole. */
async function replaceWhole(path: string, parts: Parts, mode: number | undefined): Promise<void> {
  // a number of the process would come again: one that was ended leaves its part behind
  const beside = join(dirname(path), `.${basename(path).slice(0, 40)}.${randomUUID()}.part`);
  try {
    const file = await open(beside, 'wx', mode);
    try {
      await writeParts(file, parts);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(beside, path);
  } catch (error) {
    await rm(beside, { force: true });
    throw error;
  }
  await keepName(dirname(path));
}

/**
 * Writes a file whole or not at all. A link stays a link; what is no file, such as a pipe or a terminal, is written to.
 * @param parts The text, or pieces of it that are written as they come.
 */
export async function writeWhole(path: string, parts: Parts): Promise<void> {
  const there = await stat(path).catch(() => null);
  if (there?.isDirectory() === true) throw new CannotDo(`cannot write ${path}: that is a folder`);
  try {
    if (there === null || there.isFile()) {
      await replaceWhole(await realpath(path).catch(() => path), parts, there?.mode);
      return;
    }
    const file = await open(path, 'w');
    await writeParts(file, parts).finally(() => file.close());
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    throw new CannotDo(`cannot write ${path}: ${REASONS[code ?? ''] ?? message}`);
  }
}

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
