import { cite } from '../../sources/cited.js';
import type { SpeciesRow, TreeForm, VigourClass } from '../species-row.js';
import { USUAL_GROWTH } from './row.js';

interface Usual {
  readonly form: TreeForm;
  readonly vigour: VigourClass;
  readonly heightM: number;
  readonly crownM: number;
}

/** A tree whose kind is not known; all its figures are ours but the water demand. */
function unknownTree(key: string, name: string, usual: Usual): SpeciesRow {
  return {
    key,
    botanical: '',
    common: [name],
    synonyms: [],
    rank: 'unknown',
    form: usual.form,
    vigour: cite(usual.vigour, 'our-judgement', 'judgement', 'middle of the classes of its form'),
    waterDemand: cite('high', 'nhbc-4.2', 'memory', 'note: species unknown, assume high'),
    matureHeightM: cite(usual.heightM, 'our-judgement', 'judgement'),
    matureCrownM: cite(usual.crownM, 'our-judgement', 'judgement'),
    crownRatio: null,
    crownEquation: null,
    dbhGrowthCmPerYear: USUAL_GROWTH,
  };
}

const broadleaf = (vigour: VigourClass, heightM: number, crownM: number): Usual => ({
  form: 'broadleaf',
  vigour,
  heightM,
  crownM,
});

const conifer = (vigour: VigourClass, heightM: number, crownM: number): Usual => ({
  form: 'conifer',
  vigour,
  heightM,
  crownM,
});

const palm = (heightM: number, crownM: number): Usual => ({ form: 'palm', vigour: 2, heightM, crownM });

export const unknownTrees: readonly SpeciesRow[] = [
  unknownTree('unknown-tree', 'tree of unknown kind', broadleaf(3, 20, 15)),
  unknownTree('unknown-broadleaf', 'broadleaf of unknown kind', broadleaf(3, 20, 15)),
  unknownTree('unknown-broadleaf-small', 'small broadleaf of unknown kind', broadleaf(2, 8, 7)),
  unknownTree('unknown-broadleaf-medium', 'medium broadleaf of unknown kind', broadleaf(3, 14, 11)),
  unknownTree('unknown-broadleaf-large', 'large broadleaf of unknown kind', broadleaf(3, 24, 18)),
  unknownTree('unknown-conifer', 'conifer of unknown kind', conifer(3, 20, 9)),
  unknownTree('unknown-conifer-small', 'small conifer of unknown kind', conifer(2, 8, 5)),
  unknownTree('unknown-conifer-medium', 'medium conifer of unknown kind', conifer(2, 14, 7)),
  unknownTree('unknown-conifer-large', 'large conifer of unknown kind', conifer(2, 25, 11)),
  unknownTree('unknown-palm', 'palm of unknown kind', palm(15, 7)),
  unknownTree('unknown-palm-small', 'small palm of unknown kind', palm(5, 4)),
  unknownTree('unknown-palm-medium', 'medium palm of unknown kind', palm(12, 6)),
  unknownTree('unknown-palm-large', 'large palm of unknown kind', palm(20, 8)),
];
