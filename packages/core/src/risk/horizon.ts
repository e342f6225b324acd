/**
 * Where in the horizon the model looks: the four-point Gauss-Legendre rule on [0, H]
 * (Abramowitz & Stegun 1964, table 25.4). Weights are in years and sum to H.
 */
export interface Horizon {
  readonly yearsAhead: readonly number[];
  readonly weights: readonly number[];
  readonly years: number;
}

const NODES = [-0.861136311594053, -0.339981043584856, 0.339981043584856, 0.861136311594053];
const WEIGHTS = [0.347854845137454, 0.652145154862546, 0.652145154862546, 0.347854845137454];

/** Longest span that one rule is trusted with when looking back over decades, years. */
const SPAN_YEARS = 10;

/**
 * The same rule laid end to end over a span of the past or future, in years from now (negative: ago).
 * @throws RangeError unless `from` lies before `to`.
 */
export function spanOf(from: number, to: number): Horizon {
  if (!(from < to)) throw new RangeError(`a span must run forward, got ${from} to ${to}`);
  const parts = Math.ceil((to - from) / SPAN_YEARS);
  const part = (to - from) / parts;
  const one = horizonOf(part);
  const starts = Array.from({ length: parts }, (_, i) => from + i * part);
  return {
    years: to - from,
    yearsAhead: starts.flatMap((start) => one.yearsAhead.map((ahead) => start + ahead)),
    weights: starts.flatMap(() => one.weights),
  };
}

/** @throws RangeError unless `years` is positive and finite. */
export function horizonOf(years: number): Horizon {
  if (!(years > 0 && Number.isFinite(years))) {
    throw new RangeError(`horizonYears must be a positive number, got ${years}`);
  }
  return {
    years,
    yearsAhead: NODES.map((x) => ((x + 1) / 2) * years),
    weights: WEIGHTS.map((w) => (w / 2) * years),
  };
}
