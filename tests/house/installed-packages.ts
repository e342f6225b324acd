import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './source-files.js';

/** What the lockfile says of one installed package. */
interface Locked {
  readonly license?: string;
  readonly integrity?: string;
  readonly link?: boolean;
  readonly hasInstallScript?: boolean;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly devDependencies?: Readonly<Record<string, string>>;
  readonly optionalDependencies?: Readonly<Record<string, string>>;
}

const json = (path: string) => JSON.parse(readFileSync(join(root, path), 'utf8'));

/** Every package of the lockfile by the folder it is installed in; the workspaces by theirs. */
export const locked: Readonly<Record<string, Locked>> = json('package-lock.json').packages;

const OURS = '@rootreach/';
const PAGE = 'apps/map';
export const workspaces: readonly string[] = ['', ...json('package.json').workspaces];

/** Packages that our own need to run; those of the page are built into it. */
export function neededToRun(workspace: string): string[] {
  const { dependencies = {}, devDependencies = {} } = locked[workspace] as Locked;
  const built = workspace === PAGE ? Object.keys(devDependencies) : [];
  return [...Object.keys(dependencies), ...built].filter(
    (name) => !name.startsWith(OURS) && !(workspace === PAGE && name.startsWith('@types/')),
  );
}

/** Packages that a workspace names, for running, building or testing. */
export function named(workspace: string): string[] {
  const { dependencies = {}, devDependencies = {} } = locked[workspace] as Locked;
  return [...Object.keys(dependencies), ...Object.keys(devDependencies)].filter(
    (name) => !name.startsWith(OURS),
  );
}

/** Folder that a package finds another one in, walking up as Node does. */
export function folderOf(name: string, from: string): string {
  const inside = `${from}/node_modules/${name}`;
  if (inside in locked) return inside;
  const up = from.lastIndexOf('/node_modules/');
  if (up >= 0) return folderOf(name, from.slice(0, up));
  const top = `node_modules/${name}`;
  if (top in locked) return top;
  throw new Error(`${name}, needed by ${from}, is not in the lockfile`);
}

/** Folders of packages with all that they need in turn. */
export function withTheirNeeds(folders: readonly string[]): string[] {
  const found = new Set<string>();
  const add = (folder: string): void => {
    if (found.has(folder)) return;
    found.add(folder);
    for (const name of Object.keys(locked[folder]?.dependencies ?? {})) add(folderOf(name, folder));
  };
  folders.forEach(add);
  return [...found].sort();
}

/** Licence by the package's own description, else by the first line of its licence text. */
export function licenceOf(folder: string): string {
  const stated = locked[folder]?.license;
  if (stated !== undefined) return stated;
  const text = ['LICENSE', 'LICENSE.md', 'LICENSE.txt'].find((file) => existsSync(join(root, folder, file)));
  if (text === undefined) return 'none';
  const words = readFileSync(join(root, folder, text), 'utf8');
  if (/\bMIT\b/.test(words)) return 'MIT';
  return /^\s*Copyright[^\n]*\s+Redistribution and use in source and binary forms/.test(words)
    ? 'BSD-2-Clause'
    : 'unknown';
}
