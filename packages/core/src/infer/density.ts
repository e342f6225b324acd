/** A density over ln m on an even grid, and what is read off it. */
export interface Density {
  readonly lnM: Float64Array;
  /** Weights that sum to 1. */
  readonly weight: Float64Array;
}

/** Even grid over ln m: multipliers from a four-hundredth to four hundred, in steps of one per cent. */
const LEAST = -6;
const MOST = 6;
export const STEPS = 1200;

export const lnGrid = (): Float64Array =>
  Float64Array.from({ length: STEPS + 1 }, (_, i) => LEAST + ((MOST - LEAST) * i) / STEPS);

/** Normalised density from logarithms of its height at the grid points. */
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

/** Point below which a share of the density lies, straight between grid points. */
export function quantileOf({ lnM, weight }: Density, share: number): number {
  let below = 0;
  for (let i = 0; i < weight.length; i++) {
    const w = weight[i] as number;
    if (below + w >= share) {
      const step = (lnM[1] as number) - (lnM[0] as number);
      const inside = w > 0 ? (share - below) / w : 0.5;
      // the weight of a grid point is spread half a step to either side
      return Math.exp((lnM[i] as number) + (inside - 0.5) * step);
    }
    below += w;
  }
  return Math.exp(lnM[lnM.length - 1] as number);
}

export function summaryOf(density: Density): Summary {
  let mean = 0;
  let meanLn = 0;
  let meanLn2 = 0;
  density.weight.forEach((w, i) => {
    const x = density.lnM[i] as number;
    mean += w * Math.exp(x);
    meanLn += w * x;
    meanLn2 += w * x * x;
  });
  return {
    low: quantileOf(density, 0.1),
    mean,
    high: quantileOf(density, 0.9),
    logSd: Math.sqrt(Math.max(0, meanLn2 - meanLn * meanLn)),
  };
}
