import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Plugin } from 'vite';

const LICENCE_FILE = /^(licen[cs]e|copying)(\.|$)/i;

/** Folder of the package a bundled module comes from, or null for our own modules. */
function packageFolder(moduleId: string): string | null {
  const path = moduleId.replace(/^\0/, '').split('?')[0] ?? '';
  if (!path.includes('/node_modules/')) return null;
  for (let folder = dirname(path); folder.includes('/node_modules/'); folder = dirname(folder)) {
    const description = join(folder, 'package.json');
    if (existsSync(description) && JSON.parse(readFileSync(description, 'utf8')).version) return folder;
  }
  return null;
}

function licenceOf(folder: string): string {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const texts = readdirSync(folder).filter((file) => LICENCE_FILE.test(file));
  const body = texts.map((file) => readFileSync(join(folder, file), 'utf8').trim()).join('\n\n');
  return `${name} ${version} (${license})\n\n${body || 'Its package carries no licence text of its own.'}`;
}

/**
 * Gathers the packages that go into the page and its worker, and writes their licence texts beside them.
 * @returns one plugin for the page's build and one for the worker's.
 */
export function licences(): { page: () => Plugin; worker: () => Plugin } {
  const folders = new Set<string>();
  const gather = (name: string): Plugin => ({
    name,
    apply: 'build',
    generateBundle(_options, bundle) {
      for (const file of Object.values(bundle)) {
        if (file.type !== 'chunk') continue;
        for (const id of Object.keys(file.modules)) {
          const folder = packageFolder(id);
          if (folder) folders.add(folder);
        }
      }
    },
  });
  return {
    worker: () => gather('gather-worker-licences'),
    page: () => {
      const plugin = gather('write-licences');
      const { generateBundle } = plugin;
      return {
        ...plugin,
        generateBundle(options, bundle, isWrite) {
          if (typeof generateBundle === 'function') generateBundle.call(this, options, bundle, isWrite);
          const source = [...folders]
            .sort()
            .map(licenceOf)
            .join(`\n\n${'-'.repeat(72)}\n\n`);
          this.emitFile({ type: 'asset', fileName: 'licences.txt', source: `${source}\n` });
        },
      };
    },
  };
}
