import { judgement } from '../tables/judgement.js';
import type { Horizon } from './horizon.js';

/** Expected events between now and `ahead` years on: the rate is straight between moments and level outside. */
function expectedBy(perYear: Float64Array, horizon: Horizon, ahead: number): number {
  const { yearsAhead } = horizon;
  let sum = 0;
  let at = 0;
  let rate = perYear[0] as number;
  for (let k = 0; k <= yearsAhead.length; k++) {
    const next = yearsAhead[k] ?? Infinity;
    const nextRate = perYear[k] ?? (perYear[perYear.length - 1] as number);
    const to = Math.min(ahead, next);
    if (to <= at) break;
    const share = Number.isFinite(next) ? (to - at) / (next - at) : 0;
    sum += (to - at) * (rate + (share * (nextRate - rate)) / 2);
    at = to;
    rate = nextRate;
  }
  return sum;
}

/**
 * Year of the next look: the first by which the chance since the segment was last seen clean passes the target
 * (one in ten), no sooner than one year from now and no later than ten.
 * @param yearsUnseen years since it was last seen clean or dug, 0 where that is not known.
 */
export function nextLookYear(
  perYear: Float64Array,
  horizon: Horizon,
  nowYear: number,
  yearsUnseen: number,
): number {
  const { targetChance, minYears, maxYears } = judgement.nextLook.value;
  const target = -Math.log1p(-targetChance);
  const before = (perYear[0] as number) * yearsUnseen;
  let ahead = minYears;
  while (ahead < maxYears && before + expectedBy(perYear, horizon, ahead) < target) ahead++;
  return Math.floor(nowYear + ahead);
}
