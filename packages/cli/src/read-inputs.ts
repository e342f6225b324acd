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

async function textOf(path: string, io: Io): Promise<string> {
  try {
    return path === '-' ? await io.stdin() : await readFile(path, 'utf8');
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    throw new CannotDo(`cannot read ${path}: ${REASONS[code ?? ''] ?? message}`);
  }
}

/** Texts of the named files; `-` is standard input. */
export async function readInputs(paths: readonly string[], io: Io): Promise<TextInput[]> {
  if (paths.filter((path) => path === '-').length > 1) {
    throw new CannotDo("'-' (standard input) can be read only once");
  }
  const inputs: TextInput[] = [];
  for (const path of paths) {
    inputs.push({ name: path === '-' ? 'standard input' : path, text: await textOf(path, io) });
  }
  return inputs;
}
