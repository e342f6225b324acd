import type { Point } from '../geometry/disc-less-strip.js';
import { distanceToPath } from '../geometry/distance-to-path.js';
import { roomLacking, stepsOf, turnAt } from './bends.js';
import type { Corner } from './cheapest-chain.js';
import { cheapestPath } from './cheapest-path.js';
import type { CostField } from './cost-field.js';
import type { SceneFields } from './field-of-scene.js';
import { fitBends } from './fit-bends.js';
import { valueAt } from './grid.js';
import { highestWay } from './highest-way.js';
import { fallOf } from './route-profile.js';
import type { Weights } from './scene-weights.js';
import type { SearchFall, Target } from './search.js';
import { shallowLine } from './shallow-line.js';
import { smoothPath } from './smooth.js';

/** A metre that a bend lacks costs so many metres of pipe: it is never worth it. */
const LACKING = 1000;
/** Price of length tried where fall is short, against that of a metre laid. */
const LENGTH_PRICES = [0, 0.5, 2, 8];
/** A pinned place is passed within this, metres; while turns are fitted each metre off it costs so many of pipe. */
const PIN_M = 0.01;
const PIN_PRICE = 50;

/** What a turn costs by the pipe: fittings with their joints, or a sweep that needs room. */
function cornerOf(fields: SceneFields, weights: Weights): Corner {
  const { scene, roots } = fields;
  const { bends, costs } = scene;
  if (bends.kind === 'swept') {
    const { radiusM } = bends;
    return (a, b, c, first, last) => LACKING * costs.laidPerM * roomLacking(radiusM, a, b, c, first, last);
  }
  return (a, b, c) => {
    const steps = stepsOf(bends, turnAt(a, b, c));
    if (steps === 0) return 0;
    const fittings = Math.floor(steps / 4) + Math.floor((steps % 4) / 2) + (steps % 2);
    const trouble = 2 * costs.repairEach * valueAt(roots.grid, roots.perJoint, b[0], b[1]);
    return fittings * (weights.dig * costs.bendEach + weights.roots * trouble);
  };
}

/** One field with all that a path over it is priced by. */
export class Ways {
  readonly field: CostField;
  private readonly corner: Corner;

  constructor(
    private readonly fields: SceneFields,
    weights: Weights,
    /** Fall with a little in hand, and with nothing; none where the ground is not known. */
    private readonly falls: readonly SearchFall[],
    /** Whether ways that cost nearly the same over the lattice are left aside. */
    private readonly quick = false,
  ) {
    this.field = fields.weighted(weights);
    this.corner = cornerOf(fields, weights);
  }

  private whole(fall: SearchFall | null, target: Target): ((points: readonly Point[]) => number) | undefined {
    if (fall === null) return undefined;
    const outletM = fall.outletM(target);
    return (points) => shallowLine(fall, this.field.grid, points, outletM).cost;
  }

  /** Cost of a whole path with its turns and depth; Infinity where it may not be. */
  priceOf(points: readonly Point[], fall: SearchFall | null = this.falls.at(-1) ?? null): number {
    let sum = 0;
    for (let i = 0; i + 1 < points.length; i++) {
      const [a, b, c] = [points[i], points[i + 1], points[i + 2]] as [Point, Point, Point | undefined];
      sum += this.field.between(a[0], a[1], b[0], b[1]);
      if (sum === Infinity) return sum;
      if (c !== undefined) sum += this.corner(a, b, c, i === 0, i + 3 === points.length);
    }
    if (fall === null) return sum;
    const [x, y] = points.at(-1) as Point;
    return sum + shallowLine(fall, this.field.grid, points, fall.outletM({ x, y })).cost;
  }

  /** Raw way with fall: the cheapest, dearer length by dearer length, and at last the highest. */
  private leg(
    from: Point,
    to: readonly Target[],
    fall: SearchFall | null,
    stop?: () => boolean,
  ): Point[] | null {
    const { laidPerM } = this.fields.scene.costs;
    const common = { corner: this.corner, quick: this.quick, ...(stop ? { shouldStop: stop } : {}) };
    if (fall === null) return [...(cheapestPath(this.field, from, to, common)?.points ?? [])];
    for (const price of LENGTH_PRICES) {
      if (stop?.() === true) return null;
      const found = cheapestPath(this.field, from, to, {
        ...common,
        fall,
        lengthPrice: price * laidPerM,
        whole: (points) => {
          const [x, y] = points.at(-1) as Point;
          return shallowLine(fall, this.field.grid, points, fall.outletM({ x, y })).cost;
        },
      });
      if (found !== null && found.cost < Infinity) return [...found.points];
    }
    const highest = highestWay(this.field, fall, from, to);
    if (highest === null || highest.spareM < -1e-9) return null;
    const whole = this.whole(fall, highest.target);
    const { points } = smoothPath(this.field, highest.points, {
      corner: this.corner,
      ...(whole === undefined ? {} : { whole }),
    });
    return [...points];
  }

  /** Turns made of fittings where the pipe needs them; as given where that can't be done near by. */
  private fitted(points: readonly Point[], pin: Point | null): readonly Point[] {
    const { bends, costs } = this.fields.scene;
    if (bends.kind !== 'fittings' || points.length < 3) return points;
    const off = (path: readonly Point[]): number => (pin === null ? 0 : distanceToPath(path, ...pin));
    const price = (path: readonly Point[]): number =>
      this.priceOf(path) + PIN_PRICE * costs.laidPerM * off(path);
    const found = fitBends(points, bends.stepRadians, price, pin);
    // a way that the user pinned goes there, with turns as they come, rather than past it
    return found === null || off(found) > PIN_M ? points : found;
  }

  /** Paths between two places that stay, without a thought to fall: the cheapest, and one near a given path. */
  between(given: readonly Point[], lengthPrice: number): (readonly Point[])[] {
    const [from, [x, y]] = [given[0], given.at(-1)] as [Point, Point];
    const found = cheapestPath(this.field, from, [{ x, y }], { corner: this.corner, lengthPrice });
    const drawn = found === null ? [given] : [found.points, given];
    return drawn.map((points) => this.fitted(points, null));
  }

  /** The cheapest route; through `via` where that is given. Null where there is none, or it was stopped. */
  find(via: Point | null, stop?: () => boolean): readonly Point[] | null {
    for (const fall of this.falls.length === 0 ? [null] : this.falls) {
      const points = via === null ? this.direct(fall, stop) : this.through(via, fall, stop);
      if (points !== null || stop?.() === true) return points;
    }
    return null;
  }

  private direct(fall: SearchFall | null, stop?: () => boolean): readonly Point[] | null {
    const { from, to } = this.fields.scene;
    const points = this.leg(from, to, fall, stop);
    return points === null || points.length < 2 ? null : this.best(points, null);
  }

  private through(via: Point, fall: SearchFall | null, stop?: () => boolean): readonly Point[] | null {
    const { from, to } = this.fields.scene;
    const pin = { x: via[0], y: via[1] };
    const free = fall === null ? null : { ...fall, outletM: () => -Infinity };
    const upper = this.leg(from, [pin], free, stop);
    if (upper === null || upper.length < 2) return null;
    const startM = free === null ? 0 : shallowLine(free, this.field.grid, upper, -Infinity).endM;
    const lower = this.leg(via, to, fall === null ? null : { ...fall, startM }, stop);
    if (lower === null || lower.length < 2) return null;
    return this.best([...upper, ...lower.slice(1)], via);
  }

  /** With its turns fitted where that keeps its fall; held against the fall as it is laid, which looks closer. */
  private best(points: readonly Point[], pin: Point | null): readonly Point[] | null {
    const falls = (path: readonly Point[]): boolean => fallOf(this.fields.scene, path)?.kind !== 'impossible';
    const fitted = this.fitted(points, pin);
    if (falls(fitted)) return fitted;
    return falls(points) ? points : null;
  }
}
