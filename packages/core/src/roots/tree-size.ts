import type { Assumption } from '../model/issue.js';
import type { Tree } from '../model/site.js';
import { judgement } from '../tables/judgement.js';
import { modelConstants } from '../tables/model-constants.js';
import { speciesRow } from '../tables/species.js';
import type { SpeciesRow } from '../tables/species-row.js';
import { type Metres, metres } from '../units/quantity.js';
import { crownRadius, stemForCrown } from './crown.js';
import { PLANTED_STEM_M, stemAfter } from './growth.js';
import { usualMatureSize } from './mature-size.js';

/** How a size came about: measured, or taken from what else is known of the tree. */
type StemBasis = 'measured' | 'canopy' | 'planting' | 'usual';

/** A tree's size now, with what had to be assumed and how much that widens the answer. */
export interface TreeSize {
  readonly row: SpeciesRow;
  readonly stemDiameter: Metres;
  readonly crownRadius: Metres;
  readonly stemBasis: StemBasis;
  /** Standard deviation of the logarithm that the missing inputs add. */
  readonly extraLogSd: number;
}

function stemBasisOf(tree: Tree, row: SpeciesRow): StemBasis {
  if (tree.stemDiameterM !== null) return 'measured';
  if (row.form === 'palm') return 'usual';
  if (tree.canopyRadiusM !== null) return 'canopy';
  return tree.plantedYear === null ? 'usual' : 'planting';
}

function stemOf(tree: Tree, row: SpeciesRow, basis: StemBasis, nowYear: number): Metres {
  switch (basis) {
    case 'measured':
      return metres(tree.stemDiameterM as number);
    case 'canopy':
      return stemForCrown(row, metres(tree.canopyRadiusM as number));
    case 'planting':
      return stemAfter(row, metres(PLANTED_STEM_M), Math.max(0, nowYear - (tree.plantedYear as number)));
    case 'usual':
      return usualMatureSize(row).stemDiameter;
  }
}

/** True where the kind of tree is a guess. */
const kindUnknown = ({ species }: Tree): boolean => species.level === 'unknown' || species.level === 'group';

/** Size of a tree at `nowYear`, from what was measured and the species' proportions. */
export function treeSize(tree: Tree, nowYear: number): TreeSize {
  const row = speciesRow(tree.species.key);
  const stemBasis = stemBasisOf(tree, row);
  const stemDiameter = stemOf(tree, row, stemBasis, nowYear);
  let variance = 0;
  if (kindUnknown(tree)) variance += judgement.speciesUnknown.logSd ** 2;
  if (stemBasis !== 'measured') variance += judgement.stemUnknown.logSd ** 2;
  if (tree.canopyRadiusM === null) variance += modelConstants.crownFromStemLogSd.value ** 2;
  return {
    row,
    stemDiameter,
    crownRadius: tree.canopyRadiusM === null ? crownRadius(row, stemDiameter) : metres(tree.canopyRadiusM),
    stemBasis,
    extraLogSd: Math.sqrt(variance),
  };
}

const STEM_WORDS: Readonly<Record<Exclude<StemBasis, 'measured'>, string>> = {
  canopy: 'trunk not given: taken from the canopy',
  planting: 'trunk not given: grown from the year of planting',
  usual: 'trunk not given: a usual mature tree of its kind',
};

const toPlaces = (value: number, places: number): number => Math.round(value * 10 ** places) / 10 ** places;

/** What had to be taken as given about a tree. */
export function treeAssumptions(tree: Tree, size: TreeSize): Assumption[] {
  const assumed: Assumption[] = [];
  const assume = (field: string, value: number | string, why: string): void => {
    assumed.push({ path: `trees/${tree.id}/${field}`, value, why });
  };
  if (kindUnknown(tree)) assume('species', size.row.common[0], 'species not known');
  if (size.stemBasis !== 'measured') {
    assume('stemDiameterM', toPlaces(size.stemDiameter, 3), STEM_WORDS[size.stemBasis]);
  }
  if (tree.canopyRadiusM === null) {
    const by = size.row.crownEquation ? `measured ${size.row.botanical}` : 'measured trees of all kinds';
    assume('canopyRadiusM', toPlaces(size.crownRadius, 2), `canopy not given: from the trunk, by ${by}`);
  }
  return assumed;
}
