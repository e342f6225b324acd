import { toInches, toMillimetres } from '../units/length.js';

const SOLD_INCHES: readonly number[] = [2, 3, 4, 5, 6, 8, 10, 12];
/** 100 mm pipe is 4 in pipe, 110 mm is not. */
const SAME_SIZE = 0.04;

/** A pipe size as it stands in codes: `4in`, or `110mm` where it is no size in inches. */
export function sizeWord(sizeM: number): string {
  const inches = toInches(sizeM);
  const sold = SOLD_INCHES.find((nominal) => Math.abs(inches / nominal - 1) <= SAME_SIZE);
  return sold === undefined ? `${Math.round(toMillimetres(sizeM))}mm` : `${sold}in`;
}
