import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = join(dirname(fileURLToPath(import.meta.url)), '../..');

/** A text file of the project, by its path from the root. */
export interface SourceFile {
  readonly path: string;
  readonly text: string;
}

const NOT_OURS = new Set(['node_modules', 'dist', 'build', 'coverage']);

/** All files under a folder whose names end in one of these, without what is installed or built. */
export function filesUnder(folder: string, endings: readonly string[]): SourceFile[] {
  const top = join(root, folder);
  if (!existsSync(top)) return [];
  return readdirSync(top).flatMap((name): SourceFile[] => {
    const at = join(top, name);
    if (statSync(at).isDirectory()) {
      return NOT_OURS.has(name) || name.startsWith('.') ? [] : filesUnder(relative(root, at), endings);
    }
    if (!endings.some((ending) => name.endsWith(ending))) return [];
    return [{ path: relative(root, at).split(sep).join('/'), text: readFileSync(at, 'utf8') }];
  });
}

/** Code without its comments: what stands in a comment is no use of it. */
export function withoutComments(text: string): string {
  return text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|\s)\/\/.*$/gm, '$1');
}

/** One import or re-export: where from, and whether for types alone. */
export interface Import {
  readonly from: string;
  readonly typeOnly: boolean;
}

export function importsOf(text: string): Import[] {
  const code = withoutComments(text);
  const stated = [...code.matchAll(/^\s*(?:import|export)\s+(type\b)?[^'";]*?\sfrom\s+'([^']+)'/gm)].map(
    ([, type, from]) => ({ from: from ?? '', typeOnly: type !== undefined }),
  );
  const bare = [...code.matchAll(/^\s*import\s+'([^']+)'/gm)].map(([, from]) => ({
    from: from ?? '',
    typeOnly: false,
  }));
  // import('...') is a load where it is called and a type where it is not
  const called = [...code.matchAll(/(\bawait\s+|=>\s*)?\bimport\(\s*'([^']+)'/g)].map(([, load, from]) => ({
    from: from ?? '',
    typeOnly: load === undefined,
  }));
  return [...stated, ...bare, ...called];
}
