import type { Point } from '../geometry/disc-less-strip.js';
import { type Corner, cheapestChain, withoutStraights } from './cheapest-chain.js';
import type { CostField } from './cost-field.js';
import { type Guides, guided, guidesOf } from './guides.js';

export interface SmoothOptions {
  readonly lengthPrice?: number;
  readonly whole?: (points: readonly Point[]) => number;
  readonly corner?: Corner;
}

/** Furthest a vertex is moved at once, in cells, and the least, metres. */
const FIRST_STEP_CELLS = 2;
const LAST_STEP_M = 0.015;
/** A change counts from this share of the whole cost on. */
const WORTH = 1e-7;
/** A vertex more must save this share. */
const WORTH_A_VERTEX = 1e-4;
/** No path of a lot needs more. */
const MOST_VERTICES = 60;
/** Steps by which neighbours of a vertex that was taken out are moved, metres. */
const FIRST_MEND_M = 2;
const LAST_MEND_M = 0.05;
/** Vertices are taken out to mend the path as long as it is moved by more than this at once, metres. */
const MEND_FROM_M = 0.2;
/** Rounds at one step before it is halved. */
const ROUNDS = 6;

const DIRECTIONS: readonly Point[] = Array.from({ length: 8 }, (_, i) => [
  Math.cos((i * Math.PI) / 4),
  Math.sin((i * Math.PI) / 4),
]);

/** Values of the places `from` to `to` that lie within a path. */
function turnsBy(count: number, from: number, to: number, value: (i: number) => number): number[] {
  const values: number[] = [];
  for (let i = Math.max(0, from); i <= Math.min(count - 1, to); i++) values.push(value(i));
  return values;
}

/** A path being drawn straight, with the price of its parts. */
class Smoother {
  points: Point[];
  cost = Infinity;
  private readonly guides: Guides;
  /** Price of the straight from each point to the next, of the turn at each, and of the whole besides. */
  private straights: number[] = [];
  private turns: number[] = [];
  private besides = 0;

  constructor(
    private readonly field: CostField,
    points: readonly Point[],
    private readonly options: SmoothOptions,
  ) {
    this.points = [...points];
    this.guides = guidesOf(field);
    this.priceAll();
  }

  private straight(a: Point, b: Point): number {
    const cost = this.field.between(a[0], a[1], b[0], b[1]);
    const { lengthPrice } = this.options;
    return lengthPrice ? cost + lengthPrice * Math.hypot(b[0] - a[0], b[1] - a[1]) : cost;
  }

  /** Price of the turn at `i`, of points that may be others than the path's. */
  private turn(points: readonly Point[], i: number): number {
    const { corner } = this.options;
    if (corner === undefined || i <= 0 || i >= points.length - 1) return 0;
    const [a, b, c] = [points[i - 1], points[i], points[i + 1]] as [Point, Point, Point];
    return corner(a, b, c, i === 1, i === points.length - 2);
  }

  private priceAll(): void {
    const { points } = this;
    this.straights = points.slice(1).map((b, i) => this.straight(points[i] as Point, b));
    this.turns = points.map((_, i) => this.turn(points, i));
    const sum = this.straights.reduce((a, b) => a + b, 0);
    this.besides = sum < Infinity ? (this.options.whole?.(points) ?? 0) : 0;
    this.cost = this.turns.reduce((a, b) => a + b, sum + this.besides);
  }

  private sumOf(values: readonly number[], from: number, to: number): number {
    let sum = 0;
    for (let i = Math.max(0, from); i < Math.min(to, values.length); i++) sum += values[i] as number;
    return sum;
  }

  /** Puts `instead` in the place of the points after `from` and before `to`, if that saves at least `least`. */
  private replace(from: number, to: number, instead: readonly Point[], least: number): boolean {
    const { corner, whole } = this.options;
    const ends = [this.points[from] as Point, ...instead, this.points[to] as Point];
    // turns of the neighbours change with the lengths and bearings of their straights
    const before = this.sumOf(this.straights, from, to) + this.sumOf(this.turns, from - 1, to + 2);
    // what lies besides is never below nothing: more than all of it can't be made up for
    const most = before - least + this.besides;
    const straights: number[] = [];
    let after = 0;
    for (let i = 0; i + 1 < ends.length; i++) {
      straights.push(this.straight(ends[i] as Point, ends[i + 1] as Point));
      after += straights[i] as number;
      if (!(after < most) || after === Infinity) return false;
    }
    const next = [...this.points.slice(0, from + 1), ...instead, ...this.points.slice(to)];
    const last = from + 1 + instead.length;
    const near = corner ? turnsBy(next.length, from - 1, last + 1, (i) => this.turn(next, i)) : [];
    for (const turn of near) after += turn;
    if (!(after < most)) return false;
    const besides = whole?.(next) ?? 0;
    const saved = before + this.besides - after - besides;
    if (!(saved > least)) return false;
    this.points = next;
    this.straights.splice(from, to - from, ...straights);
    const first = Math.max(0, from - 1);
    if (corner) this.turns.splice(first, Math.min(this.turns.length, to + 2) - first, ...near);
    else this.turns = next.map(() => 0);
    this.besides = besides;
    this.cost -= saved;
    return true;
  }

  /** Takes the chain `kept` if it is no dearer. */
  private take(kept: readonly Point[]): void {
    const all = { points: this.points, cost: this.cost };
    this.points = [...kept];
    this.priceAll();
    if (this.cost <= all.cost * (1 + WORTH)) return;
    this.points = all.points;
    this.priceAll();
  }

  /** The cheapest chain through some of the points, turns and all. */
  thin(): void {
    const { corner } = this.options;
    const points = withoutStraights(this.points);
    const kept = points.length < 3 ? points : cheapestChain(points, (a, b) => this.straight(a, b), corner);
    if (kept !== null) this.take(kept);
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

  /** Moves a straight aside as a whole. */
  private slide(i: number, step: number): boolean {
    const [a, b] = [this.points[i], this.points[i + 1]] as [Point, Point];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (length === 0) return false;
    const [nx, ny] = [(-(b[1] - a[1]) * step) / length, ((b[0] - a[0]) * step) / length];
    return [1, -1].some((side) =>
      this.replace(
        i - 1,
        i + 2,
        [
          [a[0] + side * nx, a[1] + side * ny],
          [b[0] + side * nx, b[1] + side * ny],
        ],
        WORTH * this.cost,
      ),
    );
  }

  /** Takes a vertex out and lets its neighbours find new places: kept where the path is the better for it. */
  private mend(): void {
    for (let i = this.points.length - 2; i > 0; i--) {
      if (i > this.points.length - 2) continue;
      const all = { points: this.points, cost: this.cost };
      if (!this.replace(i - 1, i + 1, [], -Infinity)) continue;
      for (let step = FIRST_MEND_M; step >= LAST_MEND_M; step /= 2) {
        for (const k of [i - 1, i]) if (k > 0 && k < this.points.length - 1) this.move(k, step);
      }
      if (this.cost < all.cost * (1 - WORTH)) continue;
      this.points = all.points;
      this.priceAll();
    }
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
        for (let i = 1; i < this.points.length - 2; i++) changed = this.slide(i, step) || changed;
        changed = this.drop() || changed;
        if (!changed) break;
      }
      if (step <= LAST_MEND_M) continue;
      if (this.options.corner && step > MEND_FROM_M) this.mend();
      this.cut();
      this.bend(step);
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
