import { type Cited, cite } from '../sources/cited.js';
import type { SurveyRow } from './species-row.js';

/** Distances of the survey of root damage to British buildings on clay, all as 75 % of cases. */
function seen(genus: string, metres: number, referenceSpecies: string, place: string): SurveyRow {
  return { genus, distance75M: cite(metres, 'cutler-richardson-1989', 'quoted', place), referenceSpecies };
}

/** As above, from memory. */
function remembered(genus: string, metres: number, referenceSpecies: string, place: string): SurveyRow {
  return { genus, distance75M: cite(metres, 'cutler-richardson-1989', 'memory', place), referenceSpecies };
}

/** Stem of a usual mature street or garden tree of the genus, ours: its crown is 24 times as wide. */
const usualStem = (metres: number): { referenceStemM: Cited<number> } => ({
  referenceStemM: cite(metres, 'our-judgement', 'judgement', 'usual mature tree of the surveyed genus'),
});

export const surveyTable: readonly SurveyRow[] = [
  { ...seen('Acer', 9, 'acer-pseudoplatanus', 'maple and sycamore'), ...usualStem(0.55) },
  seen('Betula', 7, 'betula-pendula', 'birch'),
  seen('Chamaecyparis', 3.5, 'chamaecyparis-lawsoniana', 'cypress'),
  seen('Crataegus', 7, 'crataegus-monogyna', 'hawthorn'),
  seen('Fagus', 9, 'fagus-sylvatica', 'beech'),
  { ...remembered('Fraxinus', 10, 'fraxinus-excelsior', 'ash'), ...usualStem(0.63) },
  seen('Hesperotropsis', 3.5, 'x-hesperotropsis-leylandii', 'cypress'),
  remembered('Malus', 5, 'malus-domestica', 'apple and pear'),
  seen('Platanus', 7.5, 'platanus-x-acerifolia', 'plane'),
  seen('Populus', 15, 'populus-x-canadensis', 'poplar'),
  seen('Prunus', 6, 'prunus-avium', 'cherry, plum and damson'),
  remembered('Pyrus', 5, 'pyrus-communis', 'apple and pear'),
  { ...seen('Quercus', 13, 'quercus-robur', 'oak'), ...usualStem(0.84) },
  remembered('Robinia', 8.5, 'robinia-pseudoacacia', 'black locust'),
  seen('Salix', 11, 'salix-alba', 'willow'),
  seen('Sorbus', 7, 'sorbus-aucuparia', 'rowan and whitebeam'),
  seen('Tilia', 8, 'tilia-x-europaea', 'lime'),
  { ...seen('Ulmus', 12, 'ulmus-procera', 'elm'), ...usualStem(0.77) },
];
