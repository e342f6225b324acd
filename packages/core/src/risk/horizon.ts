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
