import type { Choice, DecideResult } from '@rootreach/core';
import { CannotDo } from './cannot-do.js';

/** The choice of that name. @throws CannotDo where there is none, or where it is not possible here. */
export function namedChoice({ choices }: DecideResult, id: string): Choice {
  const choice = choices.find((other) => other.id === id);
  if (choice === undefined) {
    throw new CannotDo(`there is no choice '${id}': ${choices.map((other) => other.id).join(', ')}`);
  }
  if (!choice.possible) throw new CannotDo(`${id} is not possible here: ${choice.why}`);
  return choice;
}
