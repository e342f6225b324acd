import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { licences } from './build/licences.ts';

const { page, worker } = licences();

/** Kept as a file of its own: its licence asks that users can replace it. */
const chunks = {
  codeSplitting: { groups: [{ name: 'geojson-validation', test: /node_modules\/geojson-validation\// }] },
};

export default defineConfig({
  base: './',
  resolve: {
    alias: { '@rootreach/core': fileURLToPath(new URL('../../packages/core/src/index.ts', import.meta.url)) },
  },
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  plugins: [page()],
  worker: { format: 'es', plugins: () => [worker()], rolldownOptions: { output: chunks } },
  build: {
    target: 'es2022',
    // Data addresses are not allowed to be fetched, so every file stays a file.
    assetsInlineLimit: 0,
    rolldownOptions: {
      output: {
        ...chunks,
        assetFileNames: (file) =>
          file.names[0]?.endsWith('.geojson') ? 'sites/[name][extname]' : 'assets/[name]-[hash][extname]',
      },
    },
  },
});
