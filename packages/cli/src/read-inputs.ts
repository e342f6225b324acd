import { readFile } from 'node:fs/promises';
import type { TextInput } from '@rootreach/core';
import { CannotDo } from './cannot-do.js';
import type { Io } from './io.js';

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'no such file',
  EISDIR: 'that is a folder, not a file',
  EACCES: 'not allowed to read it',
  ENOTDIR: 'no such file',
  ENAMETOOLONG: 'no such file: the name is too long',
  ERR_STRING_TOO_LONG: 'too large to read at once',
  ERR_FS_FILE_TOO_LARGE: 'too large to read at once',
};

/** What the system says of a file that cannot be read, in plain words. */
export function cannotRead(path: string, error: unknown): CannotDo {
  const { code, message } = error as NodeJS.ErrnoException;
  return new CannotDo(`cannot read ${path}: ${REASONS[code ?? ''] ?? message}`);
}

/** Bytes of a named file; `-` is standard input. */
export async function bytesOf(path: string, io: Io): Promise<Uint8Array> {
  try {
    return path === '-' ? new TextEncoder().encode(await io.stdin()) : await readFile(path);
  } catch (error) {
    throw cannotRead(path, error);
  }
}

/** Standard input has nothing left for a second reader. */
export function checkStdinOnce(paths: readonly string[]): void {
  if (paths.filter((path) => path === '-').length > 1) {
    throw new CannotDo("'-' (standard input) can be read only once");
  }
}

/** Name under which a file is spoken of. */
export const nameOf = (path: string): string => (path === '-' ? 'standard input' : path);

/** Texts of the named files; `-` is standard input. */
export async function readInputs(paths: readonly string[], io: Io): Promise<TextInput[]> {
  checkStdinOnce(paths);
  const inputs: TextInput[] = [];
  for (const path of paths) {
    inputs.push({ name: nameOf(path), text: new TextDecoder().decode(await bytesOf(path, io)) });
  }
  return inputs;
}
