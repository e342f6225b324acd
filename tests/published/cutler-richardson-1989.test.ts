import { describe, expect, it } from 'vitest';
import { DECAY } from '../../packages/core/src/roots/density.js';
import { genusFactor, surveyedTree } from '../../packages/core/src/roots/genus-factor.js';
import { reachBeforeGenus } from '../../packages/core/src/roots/reach.js';
import { speciesRow, speciesTable } from '../../packages/core/src/tables/species.js';
import { surveyTable } from '../../packages/core/src/tables/survey.js';
import { metres } from '../../packages/core/src/units/quantity.js';
import { residual } from './residual.js';

/**
 * Cutler, D. F., Richardson, I. B. K. (1989): Tree Roots and Buildings, 2nd edition, and later reprints of its
 * tables: distance from tree to damaged building on British clay within which 75 % and 90 % of the cases lay. The
 * 75 % figures were read in a reprint (ash, apple, pear and black locust from memory), the 90 % ones are from memory.
 *
 * It counts damage, not roots, and not the size of the trees; so it can confirm the curve's scale, no more.
 */
const SURVEY_M: Record<string, readonly [within75: number, within90: number]> = {
  Acer: [9, 12],
  Betula: [7, 8],
  Chamaecyparis: [3.5, 5],
  Crataegus: [7, 9],
  Fagus: [9, 11],
  Fraxinus: [10, 13],
  Hesperotropsis: [3.5, 5],
  Malus: [5, 8],
  Platanus: [7.5, 10],
  Populus: [15, 20],
  Prunus: [6, 8],
  Pyrus: [5, 8],
  Quercus: [13, 18],
  Robinia: [8.5, 10.5],
  Salix: [11, 18],
  Sorbus: [7, 9.5],
  Tilia: [8, 11],
  Ulmus: [12, 19],
};

/** Distance along a radius within which a share of the curve exp(-3 d / R) lies. */
const distanceWithin = (share: number, reachM: number): number => (-Math.log(1 - share) / DECAY) * reachM;

/** Stems of usual mature trees in metres; crown 24 times the stem, the median of measured city trees. */
const USUAL_STEM_M = { Acer: 0.55, Quercus: 0.84, Fraxinus: 0.63, Ulmus: 0.77 } as const;
/** What the curve gives such trees before the genus factor, metres. */
const CURVE_M = {
  Acer: [7.4, 12.3],
  Quercus: [10.7, 17.8],
  Fraxinus: [8.3, 13.7],
  Ulmus: [9.9, 16.4],
} as const;
const GENERA = ['Acer', 'Quercus', 'Fraxinus', 'Ulmus'] as const;

describe('the curve of usual mature trees before the genus factor', () => {
  it.each(GENERA)('%s: lies near the surveyed distances', (genus) => {
    const stem = USUAL_STEM_M[genus];
    const reach = reachBeforeGenus(metres(stem), metres(12 * stem));
    [0.75, 0.9].forEach((share, i) => {
      const got = distanceWithin(share, reach);
      residual({
        what: `${genus}, ${100 * share} %, worked by hand`,
        got,
        published: CURVE_M[genus][i] as number,
        // the hand values are rounded to 0.1 m, the stems to 1 cm (0.07 m of distance)
        tolerance: 0.12,
      });
      const surveyed = SURVEY_M[genus]?.[i] as number;
      const left = residual({
        what: `${genus}, ${100 * share} %, surveyed`,
        got,
        published: surveyed,
        // a quarter: neither the size of the surveyed trees nor the ground is known, and the genus factor exists to
        // take up what is left
        tolerance: 0.25 * surveyed,
      });
      console.info(
        `Cutler & Richardson 1989, ${genus}, ${100 * share} %: ${got.toFixed(1)} m, surveyed ${surveyed} m, ` +
          `residual ${left.toFixed(1)} m`,
      );
    });
  });
});

describe('the genus factor', () => {
  it('has every row of the survey, with its 75 % distance', () => {
    expect(surveyTable.map((row) => row.genus).sort()).toEqual(Object.keys(SURVEY_M).sort());
    for (const row of surveyTable) expect(row.distance75M.value).toBe(SURVEY_M[row.genus]?.[0]);
  });

  it('stays within 0.7 and 1.5 for every species, and is 1 where there is no entry', () => {
    for (const row of speciesTable.values()) {
      expect(genusFactor(row), row.key).toBeGreaterThanOrEqual(0.7);
      expect(genusFactor(row), row.key).toBeLessThanOrEqual(1.5);
    }
    expect(genusFactor(speciesRow('ginkgo-biloba'))).toBe(1);
  });

  // 9 / 7.4, 13 / 10.7, 10 / 8.3 and 12 / 9.9 with the stems above; 0.03 for their rounding
  it.each(GENERA)('is about 1.2 for %s', (genus) => {
    const survey = surveyTable.find((row) => row.genus === genus);
    const got = genusFactor(speciesRow(survey?.referenceSpecies ?? ''));
    const left = residual({ what: genus, got, published: 1.2, tolerance: 0.03 });
    console.info(`genus factor of ${genus}: ${got.toFixed(3)}, residual ${left.toFixed(3)}`);
  });

  // the factor is fitted to the 75 % distance, so the 90 % one is free: the curve's tail is longer than the
  // survey's (by nothing for willow, by almost half for birch), since roots that damage a building end
  // before roots do. Tolerance 50 % over, 15 % under where the factor is at its limit.
  it.each(surveyTable.map((row) => row.genus))(
    '%s: leaves the distance of nine cases in ten within half',
    (genus) => {
      const survey = surveyTable.find((row) => row.genus === genus);
      if (survey === undefined) throw new Error(`${genus} is not in the survey`);
      const { stemDiameter, crownRadius } = surveyedTree(survey);
      const factor = genusFactor(speciesRow(survey.referenceSpecies));
      const got = distanceWithin(0.9, factor * reachBeforeGenus(stemDiameter, crownRadius));
      const [, within90] = SURVEY_M[genus] as readonly [number, number];
      console.info(
        `Cutler & Richardson 1989, ${genus}, 90 %: ${got.toFixed(1)} m, surveyed ${within90} m, ` +
          `residual ${(got - within90).toFixed(1)} m`,
      );
      expect(got / within90, `ratio ${got / within90}`).toBeGreaterThan(0.85);
      expect(got / within90, `ratio ${got / within90}`).toBeLessThan(1.5);
    },
  );
});
