// A mutant that a property sees is mostly seen in the first few of its runs.
import type * as FastCheck from 'fast-check';
import { vi } from 'vitest';

const MOST_RUNS = 10;

vi.mock('fast-check', async (importOriginal) => {
  const { default: fc, ...named } = await importOriginal<typeof FastCheck>();
  const assert = (...[property, given]: Parameters<typeof fc.assert>) =>
    fc.assert(property, { ...given, numRuns: Math.min(MOST_RUNS, given?.numRuns ?? MOST_RUNS) });
  return { ...named, assert, default: { ...fc, assert } };
});
