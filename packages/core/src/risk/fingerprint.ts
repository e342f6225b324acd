import { jointTable } from '../tables/joints.js';
import { judgement } from '../tables/judgement.js';
import { modelConstants } from '../tables/model-constants.js';
import { pipeTable } from '../tables/pipes.js';
import { speciesTable } from '../tables/species.js';
import { surveyTable } from '../tables/survey.js';
import { seedFrom } from './draws.js';

/** Version of the relations; a change of any coefficient or relation raises it. */
export const MODEL_VERSION = '1';

let known: string | undefined;

/** The numbers of every species, without names and citations. */
const speciesNumbers = (): unknown[] =>
  [...speciesTable.values()].map((row) => [
    row.key,
    row.form,
    row.vigour.value,
    row.matureCrownM.value,
    row.matureCrownM.known,
    row.crownRatio?.value,
    row.crownEquation?.value,
    row.dbhGrowthCmPerYear.value,
  ]);

/** Eight hex digits over every table and judgement value: two results compare only where these agree. */
export function modelFingerprint(): string {
  known ??= (
    seedFrom(
      JSON.stringify([judgement, modelConstants, jointTable, pipeTable, surveyTable, speciesNumbers()]),
      0,
    ) >>> 0
  )
    .toString(16)
    .padStart(8, '0');
  return known;
}
