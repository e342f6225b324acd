import { type Chance, tensOf } from '@rootreach/core';
import type { Words } from '../words/words.js';

/** One chance in counts of ten, with the words for the ends of the scale. */
const count = (tens: number, { owner: { odds } }: Words): string =>
  tens === 0 ? odds.lowest : tens === 10 ? odds.highest : String(tens);

/** `About 5 in 10`. */
export function oddsSaid(chance: Chance, words: Words): string {
  const { odds } = words.owner;
  const { likely } = tensOf(chance);
  return likely === 0 ? odds.fewer : likely === 10 ? odds.nearly : odds.about(String(likely));
}

/** `It could be 3 to 8.` */
export function rangeSaid(chance: Chance, words: Words): string {
  const { low, high } = tensOf(chance);
  const { odds } = words.owner;
  return low === high ? odds.narrow : odds.range(count(low, words), count(high, words));
}

/** `about 5`, `less than one`, `nearly all`: of ten pipes. */
export function pipesSaid(chance: Chance, { owner: { odds } }: Words): string {
  const { likely } = tensOf(chance);
  return likely === 0 ? odds.thinkFew : likely === 10 ? odds.thinkAll : odds.thinkSome(String(likely));
}

/** `5 in 10`, `fewer than 1 in 10`: within a sentence. */
export function shareSaid(share: number, words: Words): string {
  const { likely } = tensOf({ low: share, likely: share, high: share });
  return words.owner.wait.inTen(count(likely, words));
}

/** The marks' label for those who do not see them. */
export function marksSaid(chance: Chance, words: Words): string {
  const { low, likely, high } = tensOf(chance);
  return words.owner.odds.marks(count(likely, words), count(low, words), count(high, words));
}
