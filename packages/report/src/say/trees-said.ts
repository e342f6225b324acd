import type { Site, TreeShare, Units } from '@rootreach/core';
import type { Words } from '../words/words.js';
import { length } from './lengths.js';

/** Key of a tree's species, for its name in another language. */
export const speciesOf = (site: Site, id: string): string =>
  site.trees.find((tree) => tree.id === id)?.species.key ?? '';

export const capital = (sentence: string): string => sentence.charAt(0).toUpperCase() + sentence.slice(1);

/** A share of the risk in words; the bounds are ours. */
function partSaid(share: number, { owner: { why } }: Words): string {
  const { parts } = why;
  if (share >= 0.9) return parts.all;
  if (share >= 0.6) return parts.most;
  if (share >= 0.42) return parts.half;
  return share >= 0.26 ? parts.third : parts.some;
}

/** Nearer than this a tree stands over the pipe, metres. */
const OVER_M = 0.6;

/** Where a tree stands and how much of the risk it brings. */
export function treeSaid(tree: TreeShare, site: Site, units: Units, words: Words): string {
  const { why } = words.owner;
  const name = capital(words.theTree(tree.name, speciesOf(site, tree.id)));
  const part = partSaid(tree.share, words);
  return tree.distanceM < OVER_M
    ? why.onTop(name, part)
    : why.tree(name, length(tree.distanceM, units), part);
}
