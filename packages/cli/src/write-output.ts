import { renameSync } from 'node:fs';
import { open, stat } from 'node:fs/promises';
import { resolve } from 'node:path';
import type { Args } from './args.js';
import { CannotDo } from './cannot-do.js';
import type { Io } from './io.js';
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
};

/** What the system says of a file that cannot be written, in plain words. */
export function cannotWrite(path: string, error: unknown): CannotDo {
  if (error instanceof CannotDo) return error;
  const { code, message } = error as NodeJS.ErrnoException;
  return new CannotDo(`cannot write ${path}: ${REASONS[code ?? ''] ?? message}`);
}

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

/** What is written: the text, or pieces of it that are written as they come. */
interface Output {
  readonly path: string;
  readonly parts: string | Iterable<string>;
}

async function write(path: string, { parts }: Output): Promise<void> {
  const file = await open(path, 'wx');
  try {
    // a single write may take in less than it is given, as it does on a disk that is nearly full
    for (const part of gathered(parts)) await file.writeFile(part);
    await file.sync();
  } finally {
    await file.close();
  }
}

/**
 * Writes beside the targets and renames when all are whole: whoever reads sees the old files or the new ones, and
 * never half of one, be the disk full or the command stopped.
 */
export async function writeAllWhole(outputs: readonly Output[]): Promise<void> {
  const unfinished = new Unfinished();
  let path = '';
  try {
    for (const output of outputs) {
      ({ path } = output);
      if (await isFolder(path)) throw new CannotDo(`cannot write ${path}: that is a folder`);
      await write(unfinished.beside(path), output);
    }
    // at once: a signal between two of them would leave old files beside new ones
    for (const output of outputs) {
      ({ path } = output);
      renameSync(unfinished.beside(path), path);
    }
  } catch (error) {
    throw cannotWrite(path, error);
  } finally {
    unfinished.clear();
  }
}

/** Writes one file as `writeAllWhole` does. */
export const writeWhole = (path: string, parts: string | Iterable<string>): Promise<void> =>
  writeAllWhole([{ path, parts }]);

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
