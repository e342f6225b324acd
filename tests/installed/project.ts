import { execFileSync } from 'node:child_process';
import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  symlinkSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** What is published, by the folder that it is packed from. */
const FOLDERS = {
  core: 'packages/core',
  intake: 'packages/intake',
  report: 'packages/report',
  cli: 'packages/cli',
  map: 'apps/map',
} as const;
export type Packed = keyof typeof FOLDERS;
export const packed = Object.keys(FOLDERS) as Packed[];

/** A project outside the workspace: it finds nothing but what the packed packages say that they need. */
export interface Project {
  readonly folder: string;
  /** Where a packed package was unpacked to. */
  readonly packageFolder: (name: Packed) => string;
  readonly remove: () => void;
}

function unpack(archive: string, folder: string): void {
  mkdirSync(folder, { recursive: true });
  execFileSync('tar', ['-xzf', archive, '-C', folder, '--strip-components=1']);
}

/** Packages that another needs to run, as its own description says. */
function neededBy(folder: string): string[] {
  const { dependencies = {} } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  return Object.keys(dependencies).filter((name) => !name.startsWith('@rootreach/'));
}

/** Packs every package and unpacks it as an installer would; what it needs is linked to what is installed here. */
export function newProject(): Project {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'rootreach-project-')));
  const modules = join(folder, 'node_modules');
  const packageFolder = (name: Packed): string => join(modules, '@rootreach', name);
  const workspaces = packed.flatMap((name) => ['-w', FOLDERS[name]]);
  execFileSync('npm', ['pack', '--silent', '--pack-destination', folder, ...workspaces], { cwd: root });
  for (const name of packed) {
    const archive = readdirSync(folder).find((file) => file.startsWith(`rootreach-${name}-`));
    unpack(join(folder, archive ?? ''), packageFolder(name));
  }
  for (const need of new Set(packed.map(packageFolder).flatMap(neededBy))) {
    mkdirSync(dirname(join(modules, need)), { recursive: true });
    symlinkSync(join(root, 'node_modules', need), join(modules, need), 'junction');
  }
  return { folder, packageFolder, remove: () => rmSync(folder, { recursive: true, force: true }) };
}
