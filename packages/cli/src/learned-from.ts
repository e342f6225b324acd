import { type LearnedModel, readLearnedModel } from '@rootreach/core';
import type { Args } from './args.js';
import { CannotDo } from './cannot-do.js';
import type { OptionSpecs } from './command.js';
import type { Io } from './io.js';
import { readInputs } from './read-inputs.js';

/** Option of commands that can score with what was learned from findings. */
export const modelOption: OptionSpecs = {
  model: { value: 'MODEL.json', text: 'score with what `rootreach learn` learned from findings' },
};

/** The learned model asked for, as an option of scoring; empty where none was. */
export async function learnedFrom(args: Args, io: Io): Promise<{ readonly learned?: LearnedModel }> {
  const path = args.text('model');
  if (path === undefined) return {};
  if (path === '-' && args.files.includes('-')) {
    throw new CannotDo("'-' (standard input) can be read only once");
  }
  const [input] = await readInputs([path], io);
  const read = readLearnedModel(input?.text ?? '');
  if (!read.ok) throw new CannotDo(`cannot use ${path}: ${read.reason}`);
  return { learned: read.model };
}
