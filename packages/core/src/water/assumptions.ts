import type { Assumption } from '../model/issue.js';
import { waterJudgement } from '../tables/judgement.js';
import type { WaterInputs } from './line-water.js';
import type { WorstPlace } from './seen-blockage.js';

/** What had to be taken as given about a line's water. */
export function waterAssumptions(inputs: WaterInputs, place: WorstPlace | null): Assumption[] {
  const { line, bore, slope, served, idOf } = inputs;
  const { drain } = line;
  const assumed: Assumption[] = [];
  const assume = (field: string, value: number | string, why: string): void => {
    assumed.push({ path: `drains/${drain.id}/${field}`, value, why });
  };
  if (!drain.materialKnown) assume('material', drain.material, 'material not known: a middling pipe');
  if (bore?.from === 'size') {
    assume('insideDiameterM', bore.insideDiameterM, 'no usual size of this pipe: taken as its bore');
  }
  if (bore?.from === 'outside') {
    assume('insideDiameterM', bore.insideDiameterM, 'a metric size: the outside, less a usual wall');
  }
  if (slope.from === 'given') assume('slope', slope.slope as number, 'fall not known: as asked for');
  const far = slope.levels.filter(({ distanceM }) => distanceM > waterJudgement.levelBesideM.value);
  if (far.length > 0) {
    assume(
      'slope',
      slope.slope as number,
      'a spot level stands over 3 ft (1 m) from the end that it is used for',
    );
  }
  if (line.flowBasis === 'as-drawn') assume('flow', 'as drawn', 'nothing tells which end is the lower one');
  if (served.fed && drain.servesM2 === null && drain.carries !== 'foul') {
    assume('servesM2', 0, 'no area of its own given: only what the lines above bring');
  }
  if (drain.perforated) {
    assume('groundWater', 'none', 'water that seeps in through the holes is not counted');
  }
  if (served.alsoMeets.length > 0) {
    assume('drainsInto', idOf(served.into as number), 'several lines begin where it ends: all into one');
  }
  if (place?.shareFrom === 'typical') {
    assume(
      'blockedShare',
      place.share,
      `share of the bore lost not given: usual where ${place.seen} was seen`,
    );
  }
  return assumed;
}
