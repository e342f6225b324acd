import { type Metres, metres } from '../units/quantity.js';

/**
 * One diameter for a tree with several stems.
 *
 * BS 5837:2012, 4.6.1: two to five stems, the square root of the sum of squares; more than five, the square
 * root of (mean diameter squared x number of stems).
 * @throws RangeError for an empty list.
 */
export function combinedStemDiameter(stemsM: readonly number[]): Metres {
  const n = stemsM.length;
  if (n === 0) throw new RangeError('combinedStemDiameter needs at least one stem, got none');
  if (n <= 5) return metres(Math.sqrt(stemsM.reduce((sum, d) => sum + d * d, 0)));
  const mean = stemsM.reduce((sum, d) => sum + d, 0) / n;
  return metres(Math.sqrt(n * mean * mean));
}
