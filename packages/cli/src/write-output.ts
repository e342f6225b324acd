import { open, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import type { Args } from './args.js';
import { CannotDo } from './cannot-do.js';
import type { Io } from './io.js';

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'no such folder',
  ENOTDIR: 'no such folder',
  EACCES: 'not allowed to write there',
  EPERM: 'not allowed to write there',
  EROFS: 'not allowed to write there',
  EISDIR: 'that is a folder',
  ENOSPC: 'the disk is full',
};

const isFolder = async (path: string): Promise<boolean> =>
  (await stat(path).catch(() => null))?.isDirectory() ?? false;

/** Characters put together before they are written: each write waits for the disk. */
const AT_ONCE = 1 << 20;

function* gathered(parts: string | Iterable<string>): Iterable<string> {
  if (typeof parts === 'string') {
    yield parts;
    return;
  }
  let held: string[] = [];
  let length = 0;
  for (const part of parts) {
    held.push(part);
    length += part.length;
    if (length < AT_ONCE) continue;
    yield held.join('');
    held = [];
    length = 0;
  }
  yield held.join('');
}

/**
 * Writes beside the target and renames, so that a reader sees the old file or the whole new one.
 * @param parts The text, or pieces of it that are written as they come.
 */
export async function writeWhole(path: string, parts: string | Iterable<string>): Promise<void> {
  if (await isFolder(path)) throw new CannotDo(`cannot write ${path}: that is a folder`);
  const beside = join(dirname(path), `.${basename(path)}.${process.pid}.part`);
  try {
    const file = await open(beside, 'wx');
    try {
      for (const part of gathered(parts)) await file.write(part);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(beside, path);
  } catch (error) {
    await rm(beside, { force: true });
    const { code, message } = error as NodeJS.ErrnoException;
    throw new CannotDo(`cannot write ${path}: ${REASONS[code ?? ''] ?? message}`);
  }
}

/** Where a result goes, checked before the work is done. */
export function outputPath(args: Args, option = 'out'): string | undefined {
  const path = args.text(option);
  if (path === undefined) return undefined;
  const inputs = [...args.files, args.text('model') ?? '-'];
  if (inputs.some((file) => file !== '-' && resolve(file) === resolve(path))) {
    throw new CannotDo(`--${option} names an input file: ${path}`);
  }
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
