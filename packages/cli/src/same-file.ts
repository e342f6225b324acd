import { type Stats, statSync } from 'node:fs';
import { resolve } from 'node:path';

function statOf(path: string): Stats | null {
  try {
    return statSync(path);
  } catch {
    return null;
  }
}

/** Whether two paths lead to one file, by their names or, where both are there, by links. */
export function sameFile(a: string, b: string): boolean {
  if (resolve(a) === resolve(b)) return true;
  const [one, other] = [statOf(a), statOf(b)];
  return one !== null && other !== null && one.ino === other.ino && one.dev === other.dev;
}
