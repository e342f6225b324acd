import type { Point } from '../geometry/disc-less-strip.js';
import { distanceToPath } from '../geometry/distance-to-path.js';

/** A path in which every turn is a whole number of fitting steps: a heading, steps from it, and lengths. */
interface Chain {
  readonly heading: number;
  /** Steps from the heading of each straight. */
  readonly steps: readonly number[];
  readonly lengths: readonly number[];
}

/** No straight between two fittings is shorter, metres: their sockets. */
const LEAST_M = 0.15;
/** Headings tried within one step. */
const HEADINGS = 9;
/** Of all those gathered near the path, so many are followed up. */
const FOLLOWED = 2;
/** Turns, radians, and moves tried at first; turns in the last rounds of gathering and of pricing. */
const FIRST_TURN = 0.1;
const FIRST_MOVE_M = 1;
const GATHERED = 2e-3;
const PRICED = 2e-4;
/** Turns at first and at last while the path is led through its pin. */
const PINNED = [0.02, 1e-6] as const;
/** A change counts from this share of the price on. */
const WORTH = 1e-5;

/** Straights of the chain with their last two lengths set so that it ends where it must; null where none do. */
function closed(from: Point, to: Point, stepRadians: number, chain: Chain): Point[] | null {
  const { heading, steps, lengths } = chain;
  const n = steps.length;
  const unit = (i: number): Point => {
    const angle = heading + (steps[i] as number) * stepRadians;
    return [Math.cos(angle), Math.sin(angle)];
  };
  const points: Point[] = [from];
  let [x, y] = from;
  for (let i = 0; i < n - 2; i++) {
    const [ux, uy] = unit(i);
    const length = lengths[i] as number;
    if (length < LEAST_M) return null;
    x += ux * length;
    y += uy * length;
    points.push([x, y]);
  }
  const [ax, ay] = unit(n - 2);
  const [bx, by] = unit(n - 1);
  const det = ax * by - ay * bx;
  if (Math.abs(det) < 1e-9) return null;
  const a = ((to[0] - x) * by - (to[1] - y) * bx) / det;
  const b = (ax * (to[1] - y) - ay * (to[0] - x)) / det;
  if (a < LEAST_M || b < LEAST_M) return null;
  points.push([x + ax * a, y + ay * a], to);
  return points;
}

interface Priced {
  readonly chain: Chain;
  readonly price: number;
}

const headingOf = (a: Point, b: Point): number => Math.atan2(b[1] - a[1], b[0] - a[0]);

/** Headings along a path without jumps by a whole turn. */
function headingsOf(points: readonly Point[]): number[] {
  const headings: number[] = [];
  for (let i = 0; i + 1 < points.length; i++) {
    let h = headingOf(points[i] as Point, points[i + 1] as Point);
    const last = headings.at(-1);
    if (last !== undefined) h -= 2 * Math.PI * Math.round((h - last) / (2 * Math.PI));
    headings.push(h);
  }
  return headings;
}

/** The chain nearest to a path with its first straight at a heading; straights that do not turn are one. */
function chainNear(points: readonly Point[], heading: number, stepRadians: number): Chain {
  const steps: number[] = [];
  const lengths: number[] = [];
  headingsOf(points).forEach((h, i) => {
    const [a, b] = [points[i], points[i + 1]] as [Point, Point];
    const step = Math.round((h - heading) / stepRadians);
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (steps.at(-1) === step) lengths[lengths.length - 1] = (lengths.at(-1) as number) + length;
    else {
      steps.push(step);
      lengths.push(length);
    }
  });
  return { heading, steps, lengths };
}

/** Moves heading and lengths by ever smaller steps as long as that lowers the price. */
function tuned(
  chain: Chain,
  price: (chain: Chain) => number,
  finest: number,
  first: number = FIRST_TURN,
): Priced {
  let best = { chain, price: price(chain) };
  const free = chain.steps.length - 2;
  let [turn, move] = [first, (FIRST_MOVE_M * first) / FIRST_TURN];
  while (turn > finest) {
    let changed = false;
    const attempt = (next: Chain): void => {
      const at = price(next);
      if (at >= best.price) return;
      // what saves next to nothing is not gone after
      changed ||= at < best.price * (1 - WORTH) || best.price === Infinity;
      best = { chain: next, price: at };
    };
    for (const sign of [1, -1]) {
      attempt({ ...best.chain, heading: best.chain.heading + sign * turn });
      for (let i = 0; i < free; i++) {
        const lengths = best.chain.lengths.map((length, k) => (k === i ? length + sign * move : length));
        attempt({ ...best.chain, lengths });
        attempt({ ...best.chain, lengths, heading: best.chain.heading - sign * turn });
      }
    }
    if (!changed) {
      turn /= 2;
      move /= 2;
    }
  }
  return best;
}

/** How far the vertices of one path lie from those of another, the nearest taken, squared and added up. */
function awayFrom(points: readonly Point[], other: readonly Point[]): number {
  let sum = 0;
  for (const [x, y] of points) {
    let least = Infinity;
    for (const [ox, oy] of other) least = Math.min(least, (x - ox) ** 2 + (y - oy) ** 2);
    sum += least;
  }
  return sum;
}

/**
 * The cheapest path near a given one whose every turn is made of fittings: its first straight runs anywhere, and all
 * others at whole steps from it.
 * @param price of a path; Infinity where it may not be.
 * @param pin led through at last, as near as the chain can come where its price allows it.
 * @returns null where none was found near it.
 */
export function fitBends(
  points: readonly Point[],
  stepRadians: number,
  price: (points: readonly Point[]) => number,
  pin: Point | null = null,
): Point[] | null {
  if (points.length < 3) return [...points];
  const [from, to] = [points[0], points.at(-1)] as [Point, Point];
  const heading = headingOf(from, points[1] as Point);
  const place = (chain: Chain): Point[] | null => closed(from, to, stepRadians, chain);
  const priceOf = (chain: Chain): number => {
    const path = place(chain);
    return path === null ? Infinity : price(path);
  };
  const gathered: Priced[] = [];
  for (let i = 0; i < HEADINGS; i++) {
    const near = chainNear(points, heading + (i / HEADINGS - 0.5) * stepRadians, stepRadians);
    if (near.steps.length < 2) continue;
    const away = (chain: Chain): number => {
      const path = place(chain);
      return path === null ? Infinity : awayFrom(path, points);
    };
    const { chain } = tuned(near, away, GATHERED);
    gathered.push({ chain, price: priceOf(chain) });
  }
  let best: Priced | null = null;
  for (const { chain } of gathered.sort((a, b) => a.price - b.price).slice(0, FOLLOWED)) {
    const found = tuned(chain, priceOf, PRICED);
    if (found.price < (best?.price ?? Infinity)) best = found;
  }
  if (best === null || pin === null) return best && place(best.chain);
  const off = (chain: Chain): number => {
    const path = place(chain);
    return path === null || price(path) === Infinity ? Infinity : distanceToPath(path, ...pin);
  };
  const [first, finest] = PINNED;
  return place(tuned(best.chain, off, finest, first).chain);
}
