import { speciesRow } from '../tables/species.js';
import type { SpeciesRow, SurveyRow } from '../tables/species-row.js';
import { surveyTable } from '../tables/survey.js';
import { metres } from '../units/quantity.js';
import { DECAY } from './density.js';
import { MEDIAN_CROWN_RATIO, type UsualSize, usualMatureSize } from './mature-size.js';
import { reachBeforeGenus } from './reach.js';

const LEAST = 0.7;
const MOST = 1.5;
/** Share of the curve, taken along a radius, that lies within x: 1 - exp(-3 x / R) = 0.75. */
const REACH_SHARE_75 = Math.log(4) / DECAY;

/** `Acer` of `Acer rubrum`, `Hesperotropsis` of `x Hesperotropsis leylandii`. */
export function genusOf(row: SpeciesRow): string {
  return row.botanical.replace(/^[x×]\s*/u, '').split(' ')[0] ?? '';
}

/** A usual mature tree of a surveyed genus. */
export function surveyedTree(survey: SurveyRow): UsualSize {
  const stem = survey.referenceStemM?.value;
  if (stem === undefined) return usualMatureSize(speciesRow(survey.referenceSpecies));
  return { stemDiameter: metres(stem), crownRadius: metres((MEDIAN_CROWN_RATIO * stem) / 2) };
}

function factors(): ReadonlyMap<string, number> {
  const found = new Map<string, number>();
  for (const survey of surveyTable) {
    const { stemDiameter, crownRadius } = surveyedTree(survey);
    const predicted = REACH_SHARE_75 * reachBeforeGenus(stemDiameter, crownRadius);
    found.set(survey.genus, Math.min(MOST, Math.max(LEAST, survey.distance75M.value / predicted)));
  }
  return found;
}

let table: ReadonlyMap<string, number> | undefined;
const ofRow = new WeakMap<SpeciesRow, number>();

/**
 * How much further (or less far) a genus roots than the curve says: the distance within which 75 % of the
 * surveyed cases of damage lay, over the same distance on the curve of a usual mature tree; kept within
 * 0.7-1.5, and 1 for a genus not in the survey (Cutler & Richardson 1989 and later reprints).
 */
export function genusFactor(row: SpeciesRow): number {
  let factor = ofRow.get(row);
  if (factor === undefined) {
    table ??= factors();
    factor = table.get(genusOf(row)) ?? 1;
    ofRow.set(row, factor);
  }
  return factor;
}
