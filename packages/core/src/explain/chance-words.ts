import type { Band, Chance } from '../model/result.js';

/** A chance in whole counts of ten: 0 stands for fewer than one, 10 for nearly ten. */
export function tensOf({ low, likely, high }: Chance): Chance {
  const tens = (share: number): number => (share < 0.05 ? 0 : Math.min(10, Math.round(share * 10)));
  return { low: tens(low), likely: tens(likely), high: tens(high) };
}

/** `5` of `about 5 in 10`; at the ends a word, since no stretch is certain either way. */
function inTen(tens: number): string {
  if (tens === 0) return 'fewer than 1';
  return tens === 10 ? 'nearly 10' : String(tens);
}

/** The chance in counts of ten: `about 5 in 10, could be 3 to 8`. */
export function wordChance(chance: Chance): string {
  const tens = tensOf(chance);
  const [low, likely, high] = [inTen(tens.low), inTen(tens.likely), inTen(tens.high)];
  const about = likely === 'fewer than 1' || likely === 'nearly 10' ? likely : `about ${likely}`;
  if (low === high) return `${about} in 10`;
  if (low === likely) return `${about} in 10, could be up to ${high}`;
  if (high === likely) return `${about} in 10, could be down to ${low}`;
  return `${about} in 10, could be ${low} to ${high}`;
}

/** What each band means, said to a crew. */
export const bandMeaning: Readonly<Record<Band, string>> = {
  leave: 'leave it be',
  watch: 'keep it in mind, look again in time',
  inspect: 'push the camera',
  act: 'plan the work',
  'cannot-say': 'too little is known to say',
};
