import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('..', import.meta.url));

// the tests run the sources, not a build of them: coverage and error lines then speak of the sources
export const alias = ['core', 'report', 'intake'].map((name) => ({
  find: `@rootreach/${name}`,
  replacement: `${root}packages/${name}/src/index.ts`,
}));

export default defineConfig({
  root,
  resolve: { alias },
  test: {
    root,
    passWithNoTests: false,
    // left alone, one core stays idle for the main process, which on two cores is half of the machine; a third
    // worker took as long as two
    maxWorkers: Math.max(2, availableParallelism() - 1),
    projects: [
      {
        resolve: { alias },
        test: {
          name: 'unit',
          root,
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**', 'tests/installed/**'],
          testTimeout: 60_000,
          hookTimeout: 60_000,
          // the core is pure: files may share its modules, which saves a minute of importing
          isolate: false,
        },
      },
      {
        resolve: { alias },
        test: {
          name: 'browser',
          root,
          include: ['tests/browser/**/*.test.ts', 'tests/installed/**/*.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
    ],
    coverage: { provider: 'v8', include: ['packages/*/src/**'], reportsDirectory: `${root}coverage` },
  },
});
