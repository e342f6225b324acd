import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { licences } from './build/licences.ts';
import { offlineFiles } from './build/offline-files.ts';
import { unmodifiedChunk } from './build/unmodified-chunk.ts';

const { page, worker } = licences();

/** Kept as a file of its own in the worker: its licence asks that users can replace it. */
const APART = 'geojson-validation';
const workerChunks = {
  codeSplitting: { groups: [{ name: APART, test: (id: string) => id.includes(`/node_modules/${APART}/`) }] },
};

export default defineConfig({
  base: './',
  resolve: {
    alias: Object.fromEntries(
      ['core', 'report', 'intake'].map((name) => [
        `@rootreach/${name}`,
        fileURLToPath(new URL(`../../packages/${name}/src/index.ts`, import.meta.url)),
      ]),
    ),
  },
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  plugins: [page(), offlineFiles()],
  worker: {
    format: 'es',
    plugins: () => [worker(), unmodifiedChunk(APART)],
    rolldownOptions: { output: workerChunks },
  },
  build: {
    target: 'es2022',
    // Data addresses are not allowed to be fetched, so every file stays a file.
    assetsInlineLimit: 0,
    rolldownOptions: {
      output: {
        assetFileNames: (file) =>
          file.names[0]?.endsWith('.geojson') ? 'sites/[name][extname]' : 'assets/[name]-[hash][extname]',
      },
    },
  },
});
