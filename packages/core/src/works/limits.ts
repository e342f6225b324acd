import type { TreeHarm } from '../model/tree-harm.js';
import type { Choice, LimitCode, OwnerLimits } from '../model/works.js';

/** To replace a pipe in its old trench cuts what has grown back since: the share lost alone forbids nothing. */
export const forbidsDigging = ({ reasons }: TreeHarm): boolean => reasons.includes('inside-3-diameters');

/** Limits of the owner that a choice goes beyond. */
export function breaksOf(limits: OwnerLimits, choice: Choice, harm: readonly TreeHarm[]): LimitCode[] {
  const { mostNow, mostChance10, keepTrees = true, noTrench = false } = limits;
  const broken: LimitCode[] = [];
  if (mostNow !== undefined && (choice.now ?? 0) > mostNow) broken.push('most-now');
  if (mostChance10 !== undefined && (choice.chance?.['10'].likely ?? 1) > mostChance10)
    broken.push('most-chance-10');
  if (keepTrees && choice.tree.felled !== null) broken.push('keep-trees');
  if (keepTrees && harm.some(forbidsDigging)) broken.push('tree-must-stand');
  if (noTrench && choice.digs.some(({ bored }) => !bored)) broken.push('no-trench');
  return broken;
}
