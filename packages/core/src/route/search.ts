import FlatQueue from 'flatqueue';
import type { Point } from '../geometry/disc-less-strip.js';
import type { CostField } from './cost-field.js';
import { moves } from './moves.js';

/** A place that a route may end at, and what ending there costs. */
export interface Target {
  readonly x: number;
  readonly y: number;
  /** Currency; 0 where not given. */
  readonly cost?: number;
}

/** Fall as the search sees it: the shallowest pipe that keeps to the limits. Elevations in metres. */
export interface SearchFall {
  /** Ground at each node; NaN where not known: then nothing is asked there. */
  readonly groundM: Float64Array;
  /** Highest and lowest invert at each node. */
  readonly capM: Float64Array;
  readonly floorM: Float64Array;
  readonly minFall: number;
  /** Highest invert at the upper end. */
  readonly startM: number;
  /** Lowest invert at a target; -Infinity where it may be any. */
  readonly outletM: (target: Target) => number;
  /** From the ground to the invert where the pipe has just its cover. */
  readonly leastDepthM: number;
  /** Currency for each metre of length and metre of depth past the least. */
  readonly deeperPerM: number;
}

export interface SearchOptions {
  /** Currency added to every metre. */
  readonly lengthPrice?: number;
  readonly fall?: SearchFall;
  readonly shouldStop?: () => boolean;
  /** Steps that turned out to be barred: `node * 32 + move`. */
  readonly barred?: ReadonlySet<number>;
}

/** How the search came to its end. */
export interface Found {
  readonly points: readonly Point[];
  readonly target: Target;
  readonly cost: number;
  /** Steps taken, as `node * 32 + move`, each with its place among the points. */
  readonly steps: readonly number[];
}

/** An end off the lattice is joined to nodes within so many cells. */
const JOIN_CELLS = 2;
/** Asked to stop once in so many nodes. */
const ASK_EVERY = 1024;

/** Nodes that can be reached in a straight from a place, with the cost of that. */
function joinsOf(field: CostField, x: number, y: number): { node: number; cost: number; lengthM: number }[] {
  const { x0, y0, cellM, columns, rows } = field.grid;
  const u = Math.round((x - x0) / cellM);
  const v = Math.round((y - y0) / cellM);
  const joins: { node: number; cost: number; lengthM: number }[] = [];
  for (let k = Math.max(0, v - JOIN_CELLS); k <= Math.min(rows - 1, v + JOIN_CELLS); k++) {
    for (let i = Math.max(0, u - JOIN_CELLS); i <= Math.min(columns - 1, u + JOIN_CELLS); i++) {
      const nx = x0 + i * cellM;
      const ny = y0 + k * cellM;
      const cost = field.between(x, y, nx, ny);
      if (cost < Infinity) joins.push({ node: k * columns + i, cost, lengthM: Math.hypot(nx - x, ny - y) });
    }
  }
  return joins;
}

/** Exits of the lattice by node: to which target, at what cost. */
type Exits = Map<number, { target: Target; cost: number; lengthM: number }[]>;

function exitsOf(field: CostField, targets: readonly Target[]): Exits {
  const exits: Exits = new Map();
  for (const target of targets) {
    for (const { node, cost, lengthM } of joinsOf(field, target.x, target.y)) {
      const list = exits.get(node) ?? [];
      list.push({ target, cost: cost + (target.cost ?? 0), lengthM });
      exits.set(node, list);
    }
  }
  return exits;
}

/** Up to so many targets the way to the nearest is worked out for each node; beyond, to the box of them all. */
const FEW_TARGETS = 6;

/** Metres from a place to the nearest target, or less. */
function leastWay(targets: readonly Target[]): (x: number, y: number) => number {
  if (targets.length <= FEW_TARGETS) {
    return (x, y) => {
      let best = Infinity;
      for (const t of targets) best = Math.min(best, (t.x - x) ** 2 + (t.y - y) ** 2);
      return Math.sqrt(best);
    };
  }
  const west = Math.min(...targets.map((t) => t.x));
  const east = Math.max(...targets.map((t) => t.x));
  const south = Math.min(...targets.map((t) => t.y));
  const north = Math.max(...targets.map((t) => t.y));
  return (x, y) => Math.hypot(Math.max(0, west - x, x - east), Math.max(0, south - y, y - north));
}

/** State of one search. */
class Search {
  private readonly cost: Float64Array;
  private readonly by: Int16Array;
  private readonly closed: Uint8Array;
  /** Invert of the shallowest pipe on the way to each node. */
  private readonly invertM: Float64Array;
  private readonly queue = new FlatQueue<number>();
  private readonly way: (x: number, y: number) => number;
  private readonly least: number;
  private readonly exits: Exits;
  private best: { cost: number; node: number; target: Target } | null = null;

  constructor(
    private readonly field: CostField,
    private readonly from: Point,
    private readonly targets: readonly Target[],
    private readonly options: SearchOptions,
  ) {
    const nodes = field.perM.length;
    this.cost = new Float64Array(nodes).fill(Infinity);
    this.by = new Int16Array(nodes).fill(-1);
    this.closed = new Uint8Array(nodes);
    this.invertM = new Float64Array(options.fall ? nodes : 0);
    this.way = leastWay(targets);
    this.least = field.leastPerM + (options.lengthPrice ?? 0);
    this.exits = exitsOf(field, targets);
  }

  private estimate(node: number): number {
    const { x0, y0, cellM, columns } = this.field.grid;
    const k = Math.floor(node / columns);
    return this.least * this.way(x0 + (node - k * columns) * cellM, y0 + k * cellM);
  }

  /** Invert at a node come to with `lengthM` more of pipe; NaN where it would lie too deep. */
  private fallTo(fall: SearchFall, invertM: number, lengthM: number, node: number): number {
    const falls = invertM - fall.minFall * lengthM;
    if (Number.isNaN(fall.groundM[node] as number)) return falls;
    const top = Math.min(falls, fall.capM[node] as number);
    return top < (fall.floorM[node] as number) - 1e-9 ? Number.NaN : top;
  }

  private depthCost(fall: SearchFall, node: number, invertM: number): number {
    const ground = fall.groundM[node] as number;
    return Number.isNaN(ground) ? 0 : fall.deeperPerM * Math.max(0, ground - invertM - fall.leastDepthM);
  }

  private open(node: number, cost: number, by: number, invertM: number): void {
    if (cost >= (this.cost[node] as number)) return;
    this.cost[node] = cost;
    this.by[node] = by;
    if (this.options.fall) this.invertM[node] = invertM;
    this.queue.push(node, cost + this.estimate(node));
  }

  private start(): void {
    const { fall, lengthPrice = 0 } = this.options;
    for (const { node, cost, lengthM } of joinsOf(this.field, this.from[0], this.from[1])) {
      const invert = fall ? this.fallTo(fall, fall.startM, lengthM, node) : 0;
      if (Number.isNaN(invert)) continue;
      const deep = fall ? lengthM * this.depthCost(fall, node, invert) : 0;
      this.open(node, cost + lengthPrice * lengthM + deep, -1, invert);
    }
    for (const target of this.targets) {
      const cost = this.field.between(this.from[0], this.from[1], target.x, target.y);
      const lengthM = Math.hypot(target.x - this.from[0], target.y - this.from[1]);
      if (lengthM > JOIN_CELLS * this.field.grid.cellM || cost === Infinity) continue;
      if (fall && fall.startM - fall.minFall * lengthM < fall.outletM(target)) continue;
      this.end(-1, cost + lengthPrice * lengthM + (target.cost ?? 0), target);
    }
  }

  private end(node: number, cost: number, target: Target): void {
    if (this.best === null || cost < this.best.cost) this.best = { cost, node, target };
  }

  private tryExits(node: number): void {
    const { fall, lengthPrice = 0 } = this.options;
    for (const { target, cost, lengthM } of this.exits.get(node) ?? []) {
      if (fall && (this.invertM[node] as number) - fall.minFall * lengthM < fall.outletM(target) - 1e-9)
        continue;
      this.end(node, (this.cost[node] as number) + cost + lengthPrice * lengthM, target);
    }
  }

  private passes(wide: number, node2: number, m: number): boolean {
    const { blocked } = this.field;
    const { halfX, halfY } = moves[m] as (typeof moves)[number];
    for (let h = 0; h < halfX.length; h++) {
      if (blocked[node2 + (halfY[h] as number) * wide + (halfX[h] as number)] === 1) return false;
    }
    return true;
  }

  private expand(node: number): void {
    const { grid, perM } = this.field;
    const { columns, rows, cellM } = grid;
    const { fall, barred, lengthPrice = 0 } = this.options;
    const k = Math.floor(node / columns);
    const i = node - k * columns;
    const wide = 2 * columns - 1;
    const node2 = 2 * k * wide + 2 * i;
    const so = this.cost[node] as number;
    for (let m = 0; m < moves.length; m++) {
      const { dx, dy, length, nodeX, nodeY, share } = moves[m] as (typeof moves)[number];
      const x = i + dx;
      const y = k + dy;
      if (x < 0 || y < 0 || x >= columns || y >= rows) continue;
      const to = y * columns + x;
      if (this.closed[to] === 1 || !this.passes(wide, node2, m)) continue;
      if (barred?.has(node * moves.length + m)) continue;
      let perMetre = lengthPrice;
      for (let n = 0; n < share.length; n++) {
        perMetre +=
          (share[n] as number) *
          (perM[node + (nodeY[n] as number) * columns + (nodeX[n] as number)] as number);
      }
      const lengthM = length * cellM;
      let cost = so + perMetre * lengthM;
      if (cost >= (this.cost[to] as number)) continue;
      let invert = 0;
      if (fall) {
        invert = this.fallTo(fall, this.invertM[node] as number, lengthM, to);
        if (Number.isNaN(invert)) continue;
        cost +=
          (lengthM / 2) *
          (this.depthCost(fall, node, this.invertM[node] as number) + this.depthCost(fall, to, invert));
      }
      this.open(to, cost, m, invert);
    }
  }

  /** @returns null where there is no way, or it was stopped. */
  run(): Found | null {
    this.start();
    let count = 0;
    while (this.queue.length > 0) {
      if (this.best !== null && (this.queue.peekValue() as number) >= this.best.cost) break;
      const node = this.queue.pop() as number;
      if (this.closed[node] === 1) continue;
      this.closed[node] = 1;
      if (++count % ASK_EVERY === 0 && this.options.shouldStop?.() === true) return null;
      this.tryExits(node);
      this.expand(node);
    }
    return this.best === null ? null : this.trace(this.best);
  }

  private trace({ cost, node, target }: { cost: number; node: number; target: Target }): Found {
    const { x0, y0, cellM, columns } = this.field.grid;
    const points: Point[] = [[target.x, target.y]];
    const steps: number[] = [];
    for (let at = node; at >= 0; ) {
      const k = Math.floor(at / columns);
      points.push([x0 + (at - k * columns) * cellM, y0 + k * cellM]);
      const m = this.by[at] as number;
      if (m < 0) break;
      const { dx, dy } = moves[m] as (typeof moves)[number];
      at -= dy * columns + dx;
      steps.push(at * moves.length + m);
    }
    points.push([this.from[0], this.from[1]]);
    return { points: points.reverse(), target, cost, steps: steps.reverse() };
  }
}

/** A step that the mask let pass may still touch a corner: so often the search is tried anew without such steps. */
const TRIES = 8;

/**
 * Cheapest way over the lattice in 32 directions (A*; Hart, Nilsson & Raphael 1968) from a place to the cheapest of
 * several, with every straight of it held against the outlines themselves.
 * @returns null where there is no way, or it was stopped.
 */
export function searchGrid(
  field: CostField,
  from: Point,
  targets: readonly Target[],
  options: SearchOptions = {},
): Found | null {
  const barred = new Set<number>(options.barred);
  for (let attempt = 0; attempt < TRIES; attempt++) {
    const found = new Search(field, from, targets, { ...options, barred }).run();
    if (found === null) return null;
    const before = barred.size;
    found.steps.forEach((step, s) => {
      const [ax, ay] = found.points[s + 1] as Point;
      const [bx, by] = found.points[s + 2] as Point;
      if (!field.clear(ax, ay, bx, by)) barred.add(step);
    });
    if (barred.size === before) return found;
  }
  return null;
}
