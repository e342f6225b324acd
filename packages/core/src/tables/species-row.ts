import type { Cited } from '../sources/cited.js';

/** How readily roots of a genus get into pipes, from least (1) to most (5). */
export type VigourClass = 1 | 2 | 3 | 4 | 5;
/** What a tree looks like from afar: relations differ by it. */
export type TreeForm = 'broadleaf' | 'conifer' | 'palm';
/** How much water a tree draws from the ground. */
export type WaterDemand = 'high' | 'moderate' | 'low';

/**
 * Crown diameter in metres from stem diameter in centimetres, in the forms of the Urban Tree Database.
 * `c` is the mean squared error in the `loglogw1` and `expow1` forms, the quadratic coefficient in `quad`.
 */
export interface CrownEquation {
  readonly form: 'lin' | 'quad' | 'loglogw1' | 'loglogw2' | 'loglogw3' | 'expow1';
  readonly a: number;
  readonly b: number;
  readonly c: number;
  /** Region of the measured trees in the database. */
  readonly region: string;
  /** Trees measured. */
  readonly n: number;
  /** Crown diameters between which the fit may be used, in metres. */
  readonly fittedMinM: number;
  readonly fittedMaxM: number;
}

/** One species (or a genus, or an unknown tree of some form) and what we take for it. */
export interface SpeciesRow {
  /** Stable key: lower-case botanical name with dashes, such as `acer-rubrum` or `abies`. */
  readonly key: string;
  /** Botanical name as displayed: `Acer rubrum`, `Abies`. Empty for rows of unknown trees. */
  readonly botanical: string;
  /** Common names, the usual one first. */
  readonly common: readonly [string, ...string[]];
  /** Other botanical names in use. */
  readonly synonyms: readonly string[];
  readonly rank: 'species' | 'genus' | 'unknown';
  readonly form: TreeForm;
  /** 1 (mild) to 5 (vigorous): how readily its roots find drains. */
  readonly vigour: Cited<VigourClass>;
  readonly waterDemand: Cited<WaterDemand>;
  readonly matureHeightM: Cited<number>;
  /** Diameter of a mature crown; growth stops there. */
  readonly matureCrownM: Cited<number>;
  /** Crown diameter over stem diameter of measured trees, or null where none were measured. */
  readonly crownRatio: Cited<number> | null;
  /** The species' own equation, or null: then the all-species fit is used. */
  readonly crownEquation: Cited<CrownEquation> | null;
  /** Growth of stem diameter, centimetres a year. */
  readonly dbhGrowthCmPerYear: Cited<number>;
}

/** Distance within which 75 % of the cases of root damage to buildings lay, by genus. */
export interface SurveyRow {
  readonly genus: string;
  readonly distance75M: Cited<number>;
  /** Key of the species whose mature tree stands for the genus in that survey. */
  readonly referenceSpecies: string;
  /** Stem of a usual mature tree of the survey where we set it, metres; else the species' usual one. */
  readonly referenceStemM?: Cited<number>;
}
