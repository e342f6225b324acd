import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import type { Plugin } from 'vite';
import { iconPng, iconSvg } from './icon.ts';

const WORKER = 'service-worker.js';
const TEMPLATE = new URL('./service-worker.js', import.meta.url);

/** Our own icons: `any` as drawn, `maskable` with room for the corners that a system may cut off. */
const ICONS = [
  { file: 'icons/icon-192.png', size: 192, margin: 0, purpose: 'any' },
  { file: 'icons/icon-512.png', size: 512, margin: 0, purpose: 'any' },
  { file: 'icons/maskable-512.png', size: 512, margin: 0.14, purpose: 'maskable' },
  { file: 'icons/touch-180.png', size: 180, margin: 0.06, purpose: null },
] as const;

const manifest = {
  name: 'rootreach',
  short_name: 'rootreach',
  description: 'Where tree roots threaten a buried drain line, why, and where to look first.',
  start_url: './',
  scope: './',
  id: './',
  display: 'standalone',
  background_color: '#F6F3EA',
  theme_color: '#F6F3EA',
  icons: [
    { src: 'icons/icon.svg', type: 'image/svg+xml', sizes: 'any', purpose: 'any' },
    ...ICONS.flatMap(({ file, size, purpose }) =>
      purpose === null ? [] : [{ src: file, type: 'image/png', sizes: `${size}x${size}`, purpose }],
    ),
  ],
};

function filesIn(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const at = join(folder, name);
    return statSync(at).isDirectory() ? filesIn(at) : [at];
  });
}

/**
 * Makes the page installable and usable offline: icons, the web app manifest, and a service worker that knows
 * every built file by its SHA-256.
 */
export function offlineFiles(): Plugin {
  let folder = '';
  return {
    name: 'offline-files',
    apply: 'build',
    configResolved(config) {
      folder = join(config.root, config.build.outDir);
      if (config.build.outDir.startsWith(sep)) folder = config.build.outDir;
    },
    generateBundle() {
      const emit = (fileName: string, source: string | Uint8Array) =>
        this.emitFile({ type: 'asset', fileName, source });
      emit('manifest.webmanifest', `${JSON.stringify(manifest, null, 2)}\n`);
      emit('icons/icon.svg', iconSvg());
      for (const { file, size, margin } of ICONS) emit(file, iconPng(size, margin));
    },
    closeBundle() {
      const files = filesIn(folder)
        .map((file) => [relative(folder, file).split(sep).join('/'), readFileSync(file)] as const)
        .filter(([name]) => name !== WORKER && !name.endsWith('.map'))
        .map(([name, bytes]) => [name, createHash('sha256').update(bytes).digest('base64')] as const)
        .sort(([a], [b]) => (a < b ? -1 : 1));
      const list = JSON.stringify(files, null, 1);
      const template = readFileSync(TEMPLATE, 'utf8');
      const version = createHash('sha256').update(list).update(template).digest('hex').slice(0, 16);
      const code = template.replace('__FILES__', () => list).replace('__VERSION__', version);
      writeFileSync(join(folder, WORKER), code);
    },
  };
}
