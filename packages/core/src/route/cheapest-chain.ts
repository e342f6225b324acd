import type { Point } from '../geometry/disc-less-strip.js';

/**
 * What a turn costs at b, coming from a and going on to c. `first` and `last` say whether a or c are ends of the
 * path. Where it cannot be made at all, a price so high that any other turn is better.
 */
export type Corner = (a: Point, b: Point, c: Point, first: boolean, last: boolean) => number;

/** Points where a path turns, with its ends. */
export function withoutStraights(points: readonly Point[]): Point[] {
  return points.filter((b, i) => {
    const [a, c] = [points[i - 1], points[i + 1]];
    if (a === undefined || c === undefined) return true;
    const cross = (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]);
    return Math.abs(cross) > 1e-9 || (b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1]) < 0;
  });
}

/** More points than this are not gone through with their turns: that takes time by the cube. */
const MOST_WITH_TURNS = 60;

type Straight = (a: Point, b: Point) => number;

/** Prices of all straights between the points, `[from * count + to]`. */
function straightsOf(points: readonly Point[], straight: Straight): Float64Array {
  const n = points.length;
  const prices = new Float64Array(n * n).fill(Infinity);
  for (let i = 0; i < n; i++) {
    for (let k = i + 1; k < n; k++) prices[i * n + k] = straight(points[i] as Point, points[k] as Point);
  }
  return prices;
}

function withoutTurns(n: number, prices: Float64Array): number[] | null {
  const best = new Float64Array(n).fill(Infinity);
  const before = new Int32Array(n).fill(-1);
  best[0] = 0;
  for (let k = 1; k < n; k++) {
    for (let i = k - 1; i >= 0; i--) {
      // a hair dearer for each vertex, so that of equals the straighter is taken
      const cost = (best[i] as number) + (prices[i * n + k] as number) * (1 + 1e-9);
      if (cost >= (best[k] as number)) continue;
      best[k] = cost;
      before[k] = i;
    }
  }
  if (best[n - 1] === Infinity) return null;
  const chain: number[] = [];
  for (let at = n - 1; at >= 0; at = before[at] as number) chain.push(at);
  return chain.reverse();
}

/** The same over pairs of points, so that the price of each turn is known. */
function withTurns(points: readonly Point[], prices: Float64Array, corner: Corner): number[] | null {
  const n = points.length;
  const best = new Float64Array(n * n).fill(Infinity);
  const before = new Int32Array(n * n).fill(-1);
  for (let k = 1; k < n; k++) best[k] = prices[k] as number;
  for (let i = 1; i < n - 1; i++) {
    for (let k = i + 1; k < n; k++) {
      const on = prices[i * n + k] as number;
      if (on === Infinity) continue;
      for (let h = 0; h < i; h++) {
        const so = (best[h * n + i] as number) + on;
        if (so >= (best[i * n + k] as number)) continue;
        const [a, b, c] = [points[h], points[i], points[k]] as [Point, Point, Point];
        const cost = so + corner(a, b, c, h === 0, k === n - 1);
        if (cost >= (best[i * n + k] as number)) continue;
        best[i * n + k] = cost;
        before[i * n + k] = h;
      }
    }
  }
  let from = 0;
  for (let i = 1; i < n - 1; i++) {
    if ((best[i * n + n - 1] as number) < (best[from * n + n - 1] as number)) from = i;
  }
  if (best[from * n + n - 1] === Infinity) return null;
  const chain = [n - 1];
  for (let [i, k] = [from, n - 1]; i >= 0; ) {
    chain.push(i);
    [i, k] = [before[i * n + k] as number, i];
  }
  return chain.reverse();
}

/** The cheapest chain through some of the points from the first to the last; null where there is none. */
export function cheapestChain(points: readonly Point[], straight: Straight, corner?: Corner): Point[] | null {
  const prices = straightsOf(points, straight);
  const chain =
    corner !== undefined && points.length <= MOST_WITH_TURNS
      ? withTurns(points, prices, corner)
      : withoutTurns(points.length, prices);
  return chain === null ? null : chain.map((i) => points[i] as Point);
}
