import type { Assumption } from '../model/issue.js';
import type { Tree } from '../model/site.js';
import { judgement } from '../tables/judgement.js';
import { modelConstants } from '../tables/model-constants.js';
import { speciesRow } from '../tables/species.js';
import type { SpeciesRow } from '../tables/species-row.js';
import { type Metres, metres } from '../units/quantity.js';
import { crownRadius, stemForCrown } from './crown.js';
import { stemAfter } from './growth.js';
import { usualMatureSize } from './mature-size.js';

/** A tree's size now, with what had to be assumed and how much that widens the answer. */
export interface TreeSize {
  readonly row: SpeciesRow;
  readonly stemDiameter: Metres;
  readonly crownRadius: Metres;
  readonly assumed: readonly Assumption[];
  /** Standard deviation of the logarithm that the missing inputs add. */
  readonly extraLogSd: number;
}

/** A planted tree starts with a stem of an inch or so (judgement). */
const PLANTED_STEM_M = 0.025;

function stemOf(tree: Tree, row: SpeciesRow, nowYear: number): { stem: Metres; why: string | null } {
  if (tree.stemDiameterM !== null) return { stem: metres(tree.stemDiameterM), why: null };
  if (tree.canopyRadiusM !== null && row.form !== 'palm') {
    return {
      stem: stemForCrown(row, metres(tree.canopyRadiusM)),
      why: 'trunk not given: taken from the canopy',
    };
  }
  if (tree.plantedYear !== null && row.form !== 'palm') {
    const age = Math.max(0, nowYear - tree.plantedYear);
    return {
      stem: stemAfter(row, metres(PLANTED_STEM_M), age),
      why: 'trunk not given: grown from the year of planting',
    };
  }
  return { stem: usualMatureSize(row).stemDiameter, why: 'trunk not given: a usual mature tree of its kind' };
}

/** Size of a tree at `nowYear`, from what was measured and the species' proportions. */
export function treeSize(tree: Tree, nowYear: number): TreeSize {
  const row = speciesRow(tree.species.key);
  const assumed: Assumption[] = [];
  let variance = 0;
  const assume = (field: string, value: number | string, why: string, logSd: number) => {
    assumed.push({ path: `trees/${tree.id}/${field}`, value, why });
    variance += logSd * logSd;
  };
  if (tree.species.level === 'unknown' || tree.species.level === 'group') {
    assume('species', row.common[0], 'species not known', judgement.speciesUnknown.logSd);
  }
  const { stem, why } = stemOf(tree, row, nowYear);
  if (why !== null) assume('stemDiameterM', Math.round(stem * 1000) / 1000, why, judgement.stemUnknown.logSd);
  let crown = tree.canopyRadiusM === null ? null : metres(tree.canopyRadiusM);
  if (crown === null) {
    crown = crownRadius(row, stem);
    const text = row.crownEquation
      ? `canopy not given: from the trunk, by measured ${row.botanical}`
      : 'canopy not given: from the trunk, by measured trees of all kinds';
    assume('canopyRadiusM', Math.round(crown * 100) / 100, text, modelConstants.crownFromStemLogSd.value);
  }
  return { row, stemDiameter: stem, crownRadius: crown, assumed, extraLogSd: Math.sqrt(variance) };
}
