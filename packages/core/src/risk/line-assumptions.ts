import type { Assumption } from '../model/issue.js';
import type { PreparedLine } from './context.js';

/** What had to be taken as given about a line. */
export function lineAssumptions({ line, clock }: PreparedLine): Assumption[] {
  const { drain, pipe } = line;
  const assumed: Assumption[] = [];
  const assume = (field: string, value: number | string, why: string): void => {
    assumed.push({ path: `drains/${drain.id}/${field}`, value, why });
  };
  if (!drain.materialKnown) assume('material', drain.material, 'material not known: a middling pipe');
  if (!clock.ageKnown)
    assume('installed', clock.ageYears, 'year of laying not known: age in years taken from the pipe');
  if (!line.depthKnown) assume('depthM', line.depthOutletM, 'depth not given: usual cover of a yard drain');
  if (drain.joint === null) assume('joint', line.joint, `joint not given: the usual one of ${pipe.name}`);
  if (drain.pieceM === null && line.pieceM !== null) {
    assume('pieceM', line.pieceM, `piece length not given: the usual one of ${pipe.name}`);
  }
  if (line.flowBasis === 'as-drawn') assume('flow', 'as drawn', 'nothing tells which end is the lower one');
  return assumed;
}
