import type { Point } from '../geometry/disc-less-strip.js';
import type { CostField } from './cost-field.js';
import { type Guides, guided, guidesOf } from './guides.js';

/**
 * What a turn costs at b, coming from a and going on to c. `first` and `last` say whether a or c are ends of the
 * path. Where it cannot be made at all, a price so high that any other turn is better.
 */
export type Corner = (a: Point, b: Point, c: Point, first: boolean, last: boolean) => number;

export interface SmoothOptions {
  readonly lengthPrice?: number;
  readonly whole?: (points: readonly Point[]) => number;
  readonly corner?: Corner;
}

/** Furthest a vertex is moved at once, in cells, and the least, metres. */
const FIRST_STEP_CELLS = 2;
const LAST_STEP_M = 0.004;
/** A change counts from this share of the whole cost on. */
const WORTH = 1e-7;
/** A vertex more must save this share. */
const WORTH_A_VERTEX = 2e-5;
/** No path of a lot needs more. */
const MOST_VERTICES = 60;
/** Rounds at one step before it is halved. */
const ROUNDS = 6;

const DIRECTIONS: readonly Point[] = Array.from({ length: 8 }, (_, i) => [
  Math.cos((i * Math.PI) / 4),
  Math.sin((i * Math.PI) / 4),
]);

/** A path being drawn straight, with the price of its parts. */
class Smoother {
  points: Point[];
  cost = Infinity;
  private readonly guides: Guides;

  constructor(
    private readonly field: CostField,
    points: readonly Point[],
    private readonly options: SmoothOptions,
  ) {
    this.points = [...points];
    this.guides = guidesOf(field);
    this.cost = this.priceOf(this.points);
  }

  private straight(a: Point, b: Point): number {
    const cost = this.field.between(a[0], a[1], b[0], b[1]);
    const { lengthPrice } = this.options;
    return lengthPrice ? cost + lengthPrice * Math.hypot(b[0] - a[0], b[1] - a[1]) : cost;
  }

  private turn(points: readonly Point[], i: number): number {
    const { corner } = this.options;
    if (corner === undefined || i <= 0 || i >= points.length - 1) return 0;
    const [a, b, c] = [points[i - 1], points[i], points[i + 1]] as [Point, Point, Point];
    return corner(a, b, c, i === 1, i === points.length - 2);
  }

  /** Straights from point `from` to point `to` and the turns that hang on them. */
  private partOf(points: readonly Point[], from: number, to: number): number {
    let sum = 0;
    for (let i = from; i < to; i++) {
      sum += this.straight(points[i] as Point, points[i + 1] as Point);
      if (sum === Infinity) return sum;
    }
    if (this.options.corner) for (let i = from; i <= to; i++) sum += this.turn(points, i);
    return sum;
  }

  private priceOf(points: readonly Point[]): number {
    const sum = this.partOf(points, 0, points.length - 1);
    return sum < Infinity ? sum + (this.options.whole?.(points) ?? 0) : sum;
  }

  /** Puts `instead` in the place of the points after `from` and before `to`, if that saves at least `least`. */
  private replace(from: number, to: number, instead: readonly Point[], least: number): boolean {
    const next = [...this.points.slice(0, from + 1), ...instead, ...this.points.slice(to)];
    const { corner, whole } = this.options;
    // turns of the neighbours change with the lengths and bearings of their straights
    const margin = corner ? 1 : 0;
    const low = Math.max(0, from - margin);
    const before = this.partOf(this.points, low, Math.min(this.points.length - 1, to + margin));
    const gone = to - from - 1 - instead.length;
    const after = this.partOf(next, low, Math.min(next.length - 1, to - gone + margin));
    if (!(after < before - least) && whole === undefined) return false;
    if (after === Infinity) return false;
    const cost = whole === undefined ? this.cost + after - before : this.priceOf(next);
    if (!(cost < this.cost - least)) return false;
    this.points = next;
    this.cost = cost;
    return true;
  }

  /** The cheapest chain through some of the points (a shortest path over them in order). */
  thin(): void {
    const { points } = this;
    const n = points.length;
    if (n < 3) return;
    const best = new Float64Array(n).fill(Infinity);
    const before = new Int32Array(n).fill(-1);
    best[0] = 0;
    for (let k = 1; k < n; k++) {
      for (let i = k - 1; i >= 0; i--) {
        const so = best[i] as number;
        if (so >= (best[k] as number)) continue;
        const cost = so + this.straight(points[i] as Point, points[k] as Point) * (1 + 1e-9 * (n - k + i));
        if (cost < (best[k] as number)) {
          best[k] = cost;
          before[k] = i;
        }
      }
    }
    if (best[n - 1] === Infinity) return;
    const kept: Point[] = [];
    for (let at = n - 1; at >= 0; at = before[at] as number) kept.push(points[at] as Point);
    kept.reverse();
    const cost = this.priceOf(kept);
    if (cost <= this.cost * (1 + WORTH)) {
      this.points = kept;
      this.cost = cost;
    }
  }

  /** Tries to move one vertex about `step`. */
  private move(i: number, step: number): boolean {
    const [p, at, q] = [this.points[i - 1], this.points[i], this.points[i + 1]] as [Point, Point, Point];
    const along = Math.atan2(q[1] - p[1], q[0] - p[0]);
    const [c, s] = [Math.cos(along) * step, Math.sin(along) * step];
    let moved = false;
    const attempt = (place: Point): void => {
      if (this.replace(i - 1, i + 1, [place], WORTH * this.cost)) moved = true;
    };
    for (const [x, y] of DIRECTIONS) attempt([at[0] + x * c - y * s, at[1] + x * s + y * c]);
    for (const place of guided(this.guides, p, this.points[i] as Point, q, step)) attempt(place);
    return moved;
  }

  /** Takes out vertices that the path is no worse without. */
  drop(): boolean {
    let dropped = false;
    for (let i = this.points.length - 2; i > 0; i--) {
      if (this.replace(i - 1, i + 1, [], -WORTH * this.cost)) dropped = true;
    }
    return dropped;
  }

  /** Bends straights outward or inward by `step` at their middle, where that saves enough. */
  private bend(step: number): boolean {
    let bent = false;
    for (let i = this.points.length - 2; i >= 0 && this.points.length < MOST_VERTICES; i--) {
      const [a, b] = [this.points[i], this.points[i + 1]] as [Point, Point];
      const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
      if (length < 4 * step) continue;
      const [nx, ny] = [(-(b[1] - a[1]) * step) / length, ((b[0] - a[0]) * step) / length];
      for (const share of length > 16 * step ? [0.25, 0.5, 0.75] : [0.5]) {
        const [mx, my] = [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])];
        const least = WORTH_A_VERTEX * this.cost;
        if (
          this.replace(i, i + 1, [[mx + nx, my + ny]], least) ||
          this.replace(i, i + 1, [[mx - nx, my - ny]], least)
        ) {
          bent = true;
          break;
        }
      }
    }
    return bent;
  }

  /** Cuts corners off, as far as what is in the way lets it. */
  private cut(): boolean {
    let done = false;
    for (let i = this.points.length - 2; i > 0 && this.points.length < MOST_VERTICES; i--) {
      const [p, v, q] = [this.points[i - 1], this.points[i], this.points[i + 1]] as [Point, Point, Point];
      const [lp, lq] = [Math.hypot(p[0] - v[0], p[1] - v[1]), Math.hypot(q[0] - v[0], q[1] - v[1])];
      const at = (off: number): [Point, Point] => [
        [v[0] + ((p[0] - v[0]) * off) / lp, v[1] + ((p[1] - v[1]) * off) / lp],
        [v[0] + ((q[0] - v[0]) * off) / lq, v[1] + ((q[1] - v[1]) * off) / lq],
      ];
      let [low, high] = [0, 0.6 * Math.min(lp, lq)];
      for (let n = 0; n < 14; n++) {
        const off = (low + high) / 2;
        const [a, b] = at(off);
        if (this.field.clear(a[0], a[1], b[0], b[1])) low = off;
        else high = off;
      }
      if (low <= 0) continue;
      for (const share of [1, 0.5, 0.25]) {
        if (!this.replace(i - 1, i + 1, at(low * share), WORTH_A_VERTEX * this.cost)) continue;
        done = true;
        break;
      }
    }
    return done;
  }

  /** Moves, adds and takes out vertices with ever smaller steps. */
  settle(firstM: number): void {
    for (let step = firstM; step >= LAST_STEP_M; step /= 2) {
      for (let round = 0; round < ROUNDS; round++) {
        let changed = false;
        for (let i = 1; i < this.points.length - 1; i++) changed = this.move(i, step) || changed;
        changed = this.drop() || changed;
        if (!changed) break;
      }
      if (step > 0.02) {
        this.cut();
        this.bend(step);
      }
    }
    this.drop();
  }
}

/**
 * Draws a path straight in the plane by the true cost of its straights and turns: vertices are moved, put in, cut off
 * and taken out as long as that saves.
 */
export function smoothPath(
  field: CostField,
  points: readonly Point[],
  options: SmoothOptions = {},
): { points: readonly Point[]; cost: number } {
  const smoother = new Smoother(field, points, options);
  smoother.thin();
  smoother.settle(FIRST_STEP_CELLS * field.grid.cellM);
  return { points: smoother.points, cost: smoother.cost };
}
