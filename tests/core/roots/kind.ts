import { speciesRow } from '../../../packages/core/src/tables/species.js';
import type { SpeciesRow } from '../../../packages/core/src/tables/species-row.js';

/** What of an invented kind of tree matters to a test. */
interface Kind {
  readonly form?: SpeciesRow['form'];
  readonly matureCrownM?: number;
  /** Whether the mature crown is the largest of measured trees or a garden book's. */
  readonly crownOf?: 'measured' | 'book';
  readonly crownRatio?: number;
  /** Growth of the trunk, centimetres a year. */
  readonly growthCm?: number;
}

const { matureCrownM, matureHeightM, dbhGrowthCmPerYear, ...oak } = speciesRow('quercus-rubra');

/** An invented kind of tree without a crown equation of its own: the fit over all species is taken. */
export const kind = (given: Kind = {}): SpeciesRow => ({
  ...oak,
  form: given.form ?? 'broadleaf',
  matureHeightM,
  matureCrownM: {
    ...matureCrownM,
    value: given.matureCrownM ?? 10,
    known: given.crownOf === 'measured' ? 'calculated' : 'memory',
  },
  crownRatio: given.crownRatio === undefined ? null : { ...matureCrownM, value: given.crownRatio },
  crownEquation: null,
  dbhGrowthCmPerYear: { ...dbhGrowthCmPerYear, value: given.growthCm ?? 1 },
});
