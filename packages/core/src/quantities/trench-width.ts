import { trenchNumbers } from '../tables/work-judgement.js';
import { fromInches } from '../units/length.js';

/**
 * Width in which a crew can bed and tamp beside a flexible pipe: the larger of its outside diameter and 16 in, and
 * 1.25 of it and 12 in (ASTM D2321, from memory; widths in a printed table agree).
 */
export const fullTrenchWidthM = (outsideM: number): number =>
  Math.max(outsideM + fromInches(16), 1.25 * outsideM + fromInches(12));

/** Bottom width that a pipe asks for: a bucket's width while it is laid from above, deeper the full one. */
export function trenchWidthM(outsideM: number, deepestM: number): number {
  const { fullWidthFromM, narrowestM, roomBesidePipeM } = trenchNumbers;
  if (deepestM >= fullWidthFromM.value) return fullTrenchWidthM(outsideM);
  return Math.max(narrowestM.value, outsideM + roomBesidePipeM.value);
}
