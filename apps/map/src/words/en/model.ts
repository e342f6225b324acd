import {
  adviceFor,
  type Caution,
  type Driver,
  type PipeRow,
  reasonFor,
  wordChance,
  wordIssue,
} from '@rootreach/core';

/** What the model says, in words: English comes from the core, which speaks it. */
export const model = {
  chance: wordChance,
  advice: adviceFor,
  reason: reasonFor,
  issue: wordIssue,
  /** A tree by its usual name. */
  tree: (name: string): string => name,
  /** A pipe by the material's usual name. */
  material: (pipe: Pick<PipeRow, 'key' | 'name'>): string => pipe.name,
  change: (driver: Driver): string => driver.change,
  caution: (caution: Caution): string => caution.text,
};
