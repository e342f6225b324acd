import { expect, it } from 'vitest';
import { model as english } from '../../apps/map/src/words/en/model.js';
import { model as spanish } from '../../apps/map/src/words/es/model.js';
import { pipeTable } from '../../packages/core/src/tables/pipes.js';

it.each(pipeTable)('$key has a Spanish name of its own', (pipe) => {
  const name = spanish.material(pipe);
  expect(name.length).toBeGreaterThan(2);
  // the letters of a plastic are the same in both languages
  if (pipe.key !== 'abs') expect(name).not.toBe(english.material(pipe));
});
