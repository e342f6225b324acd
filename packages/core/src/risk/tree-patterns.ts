import type { Tree } from '../model/site.js';
import type { SpeciesMatch } from '../model/species-match.js';

/** Trees that are the same but for their id and place grow alike, and a town has a hundred of each. */
export interface TreePatterns {
  /** Number of each tree's pattern. */
  readonly of: Uint32Array;
  /** The first tree of each pattern. */
  readonly first: readonly Tree[];
}

/** A trunk of which nothing else is known stands for itself. */
function sizeKey({ stemDiameterM, canopyRadiusM, heightM, plantedYear, felledYear }: Tree): number | string {
  if (canopyRadiusM === null && heightM === null && plantedYear === null && felledYear === null)
    return stemDiameterM ?? Number.NaN;
  return `${stemDiameterM}/${canopyRadiusM}/${heightM}/${plantedYear}/${felledYear}`;
}

/** What is known of trees but their ids, places, conditions and notes, told apart. */
export function patternsOf(trees: readonly Tree[]): TreePatterns {
  // names that were understood are the same object for the same text
  const bySpecies = new Map<SpeciesMatch, Map<number | string, number>>();
  const first: Tree[] = [];
  const of = new Uint32Array(trees.length);
  trees.forEach((tree, i) => {
    let sizes = bySpecies.get(tree.species);
    if (sizes === undefined) {
      sizes = new Map();
      bySpecies.set(tree.species, sizes);
    }
    const key = sizeKey(tree);
    let number = sizes.get(key);
    if (number === undefined) {
      number = first.push(tree) - 1;
      sizes.set(key, number);
    }
    of[i] = number;
  });
  return { of, first };
}
