// The tests that mutants of one folder of the core are held against: quick ones, named by `npm run mutate`.
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';
import { alias } from '../vitest.config.js';

// in the copy that is mutated this is the copy's own root, so that the aliases lead to mutated sources;
// the workspace links in node_modules would lead back to the originals
const root = fileURLToPath(new URL('../..', import.meta.url));

/** The first failure ends a mutant: quick files come first, against the usual order. */
class QuickFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return (await super.sort(files)).reverse();
  }
}

export default defineConfig({
  root,
  resolve: { alias },
  test: {
    root,
    include: (process.env['ROOTREACH_MUTATE_TESTS'] ?? '').split(' '),
    setupFiles: ['tests/mutation/few-runs.ts'],
    passWithNoTests: false,
    testTimeout: 60_000,
    isolate: false,
    sequence: { sequencer: QuickFirst },
  },
});
