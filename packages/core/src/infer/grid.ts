/** Part of the axis of ln m. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** Where looking begins: any multiplier that a double can still hold. */
export const WIDEST: Span = { from: -120, to: 60 };

/** Heights below the top by more than this in the logarithm (4e-18) are not looked at. */
const DEPTH = 40;
/** A grid fits where the next one would not be narrower than this share of it. */
const FITS = 0.6;

export function evenGrid({ from, to }: Span, points: number): Float64Array {
  return Float64Array.from({ length: points }, (_, i) => from + ((to - from) * i) / (points - 1));
}

/**
 * Stretch of a grid that holds a density with one summit, a step wider on either side: however narrow the density is
 * against the step, its summit lies within a step of the highest point.
 */
export function spanHolding(lnM: Float64Array, logHeight: Float64Array): Span {
  const top = logHeight.reduce((a, b) => Math.max(a, b), -Infinity);
  const first = logHeight.findIndex((h) => h >= top - DEPTH);
  const last = logHeight.findLastIndex((h) => h >= top - DEPTH);
  return {
    from: lnM[Math.max(0, first - 1)] as number,
    to: lnM[Math.min(lnM.length - 1, last + 1)] as number,
  };
}

export const fits = (now: Span, next: Span): boolean => next.to - next.from >= FITS * (now.to - now.from);
