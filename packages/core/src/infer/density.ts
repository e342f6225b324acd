/** A density over ln m on an even grid, and what is read off it. */
export interface Density {
  readonly lnM: Float64Array;
  /** Weights that sum to 1. */
  readonly weight: Float64Array;
}

/** Normalised density from logarithms of its height at the points of an even grid. */
export function densityFrom(lnM: Float64Array, logHeight: Float64Array): Density {
  const top = logHeight.reduce((a, b) => Math.max(a, b), -Infinity);
  const weight = logHeight.map((h) => Math.exp(h - top));
  const sum = weight.reduce((a, b) => a + b, 0);
  return { lnM, weight: weight.map((w) => w / sum) };
}

export interface Summary {
  /** 10 % point, mean and 90 % point of the multiplier. */
  readonly low: number;
  readonly mean: number;
  readonly high: number;
  /** Standard deviation of ln m. */
  readonly logSd: number;
}

/**
 * Share of the density below each grid point: the trapezoid rule with its first Euler-Maclaurin correction, so that
 * the error falls with the fourth power of the step.
 */
function sharesBelow(weight: Float64Array): Float64Array {
  const at = (i: number): number => weight[i] ?? 0;
  let before = 0;
  return weight.map((w, i) => {
    const below = before + w / 2 - (at(i + 1) - at(i - 1)) / 24;
    before += w;
    return below;
  });
}

/** Share below a place between two grid points: the cubic with the right shares and heights at both. */
function cubicShare(
  t: number,
  [f0, f1]: readonly [number, number],
  [w0, w1]: readonly [number, number],
): number {
  const u = 1 - t;
  return f0 * (1 + 2 * t) * u * u + w0 * t * u * u + f1 * t * t * (3 - 2 * t) - w1 * t * t * u;
}

/** Halvings of a grid step: to the last digit of a double. */
const HALVINGS = 50;

/** Point below which a share of the density lies. */
export function quantileOf({ lnM, weight }: Density, share: number): number {
  const below = sharesBelow(weight);
  const above = below.findIndex((f) => f >= share);
  if (above <= 0) return Math.exp(lnM[above === 0 ? 0 : lnM.length - 1] as number);
  const i = above - 1;
  const ends = [below[i] as number, below[above] as number] as const;
  const heights = [weight[i] as number, weight[above] as number] as const;
  let [from, to] = [0, 1];
  for (let n = 0; n < HALVINGS; n++) {
    const middle = (from + to) / 2;
    if (cubicShare(middle, ends, heights) < share) from = middle;
    else to = middle;
  }
  const left = lnM[i] as number;
  return Math.exp(left + ((from + to) / 2) * ((lnM[above] as number) - left));
}

export function summaryOf(density: Density): Summary {
  const { lnM, weight } = density;
  let mean = 0;
  let meanLn = 0;
  weight.forEach((w, i) => {
    mean += w * Math.exp(lnM[i] as number);
    meanLn += w * (lnM[i] as number);
  });
  const variance = weight.reduce((sum, w, i) => sum + w * ((lnM[i] as number) - meanLn) ** 2, 0);
  return {
    low: quantileOf(density, 0.1),
    mean,
    high: quantileOf(density, 0.9),
    logSd: Math.sqrt(variance),
  };
}
