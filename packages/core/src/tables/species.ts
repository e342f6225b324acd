import { applesAndThorns } from './species/apples-and-thorns.js';
import { ashesAndLilacs } from './species/ashes-and-lilacs.js';
import { birchesAndBeeches } from './species/birches-and-beeches.js';
import { cherriesAndPlums } from './species/cherries-and-plums.js';
import { cypressesAndYews } from './species/cypresses-and-yews.js';
import { elmsPlanesAndLimes } from './species/elms-planes-and-limes.js';
import { eucalyptsAndFigs } from './species/eucalypts-and-figs.js';
import { generaByHand } from './species/genera-by-hand.js';
import { genusNames } from './species/genus-names.js';
import { genusRow } from './species/genus-row.js';
import { locustsAndKin } from './species/locusts-and-kin.js';
import { maples } from './species/maples.js';
import { oaks } from './species/oaks.js';
import { otherTemperate } from './species/other-temperate.js';
import { palms } from './species/palms.js';
import { pinesAndSpruces } from './species/pines-and-spruces.js';
import { smallGardenTrees } from './species/small-garden-trees.js';
import { unknownTrees } from './species/unknown.js';
import { warmClimate } from './species/warm-climate.js';
import { willowsAndPoplars } from './species/willows-and-poplars.js';
import type { SpeciesRow } from './species-row.js';

const speciesRows: readonly SpeciesRow[] = [
  ...applesAndThorns,
  ...ashesAndLilacs,
  ...birchesAndBeeches,
  ...cherriesAndPlums,
  ...cypressesAndYews,
  ...elmsPlanesAndLimes,
  ...eucalyptsAndFigs,
  ...locustsAndKin,
  ...maples,
  ...oaks,
  ...otherTemperate,
  ...palms,
  ...pinesAndSpruces,
  ...smallGardenTrees,
  ...warmClimate,
  ...willowsAndPoplars,
];

/** A genus row stands for the species under its own name and under those it took in. */
function genusRows(): SpeciesRow[] {
  return genusNames.map(([genus, common, synonyms = []]) => {
    const names = [genus, ...synonyms];
    const of = speciesRows.filter((row) => names.includes(row.botanical.split(' ')[0] ?? ''));
    return genusRow(genus, common, of, synonyms);
  });
}

/** Species, genera and unknown trees by key. */
export const speciesTable: ReadonlyMap<string, SpeciesRow> = new Map(
  [...speciesRows, ...genusRows(), ...generaByHand, ...unknownTrees].map((row) => [row.key, row]),
);

/**
 * A species, a genus, or a tree of unknown kind as the table has it, each value with its source.
 * @param key as `resolveSpecies` gives it.
 * @throws RangeError when the key is not in the table.
 */
export function speciesRow(key: string): SpeciesRow {
  const row = speciesTable.get(key);
  if (row === undefined) throw new RangeError(`no species '${key}'`);
  return row;
}
