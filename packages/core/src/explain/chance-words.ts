import type { Band, Chance } from '../model/result.js';

/** `5` of `about 5 in 10`; at the ends a word, since no stretch is certain either way. */
function inTen(share: number): string {
  const tenths = Math.round(share * 10);
  if (share < 0.05) return 'fewer than 1';
  return tenths >= 10 ? 'nearly 10' : String(tenths);
}

/** The chance in counts of ten: `about 5 in 10, could be 3 to 8`. */
export function wordChance(chance: Chance): string {
  const likely = inTen(chance.likely);
  const low = inTen(chance.low);
  const high = inTen(chance.high);
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
