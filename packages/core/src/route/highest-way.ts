import FlatQueue from 'flatqueue';
import type { Point } from '../geometry/disc-less-strip.js';
import type { CostField } from './cost-field.js';
import { moves } from './moves.js';
import type { SearchFall, Target } from './search.js';

/** A place off the lattice is joined to nodes within so many cells. */
const JOIN_CELLS = 2;

/** The way on which a pipe comes out highest. */
export interface HighestWay {
  readonly points: readonly Point[];
  readonly target: Target;
  /** How much the invert at the outlet is above what it must be; below 0 it does not run out. */
  readonly spareM: number;
}

interface Reached {
  readonly node: number;
  readonly target: Target;
  readonly spareM: number;
}

/** Nodes that can be reached in a straight. */
function joins(field: CostField, x: number, y: number): { node: number; lengthM: number }[] {
  const { x0, y0, cellM, columns, rows } = field.grid;
  const u = Math.round((x - x0) / cellM);
  const v = Math.round((y - y0) / cellM);
  const found: { node: number; lengthM: number }[] = [];
  for (let k = Math.max(0, v - JOIN_CELLS); k <= Math.min(rows - 1, v + JOIN_CELLS); k++) {
    for (let i = Math.max(0, u - JOIN_CELLS); i <= Math.min(columns - 1, u + JOIN_CELLS); i++) {
      const [nx, ny] = [x0 + i * cellM, y0 + k * cellM];
      if (field.clear(x, y, nx, ny))
        found.push({ node: k * columns + i, lengthM: Math.hypot(nx - x, ny - y) });
    }
  }
  return found;
}

/** Highest invert at every node, by a search that settles the highest first (Dijkstra 1959). */
class Highest {
  readonly invertM: Float64Array;
  readonly by: Int16Array;
  private readonly queue = new FlatQueue<number>();

  constructor(
    private readonly field: CostField,
    private readonly fall: SearchFall,
  ) {
    this.invertM = new Float64Array(field.perM.length).fill(-Infinity);
    this.by = new Int16Array(field.perM.length).fill(-1);
  }

  private open(node: number, invertM: number, by: number): void {
    const known = !Number.isNaN(this.fall.groundM[node] as number);
    const at = known ? Math.min(invertM, this.fall.capM[node] as number) : invertM;
    if (at <= (this.invertM[node] as number)) return;
    if (known && at < (this.fall.floorM[node] as number) - 1e-9) return;
    this.invertM[node] = at;
    this.by[node] = by;
    this.queue.push(node, -at);
  }

  run(from: Point): void {
    const { grid, blocked } = this.field;
    const { columns, rows, cellM } = grid;
    const wide = 2 * columns - 1;
    for (const { node, lengthM } of joins(this.field, from[0], from[1])) {
      this.open(node, this.fall.startM - this.fall.minFall * lengthM, -1);
    }
    while (this.queue.length > 0) {
      const at = -(this.queue.peekValue() as number);
      const node = this.queue.pop() as number;
      if (at < (this.invertM[node] as number)) continue;
      const k = Math.floor(node / columns);
      const i = node - k * columns;
      for (let m = 0; m < moves.length; m++) {
        const { dx, dy, length, halfX, halfY } = moves[m] as (typeof moves)[number];
        if (i + dx < 0 || k + dy < 0 || i + dx >= columns || k + dy >= rows) continue;
        const half = 2 * k * wide + 2 * i;
        let free = true;
        for (let h = 0; h < halfX.length && free; h++) {
          free = blocked[half + (halfY[h] as number) * wide + (halfX[h] as number)] === 0;
        }
        if (free) this.open((k + dy) * columns + i + dx, at - this.fall.minFall * length * cellM, m);
      }
    }
  }

  trace(from: Point, { node, target }: Reached): Point[] {
    const { x0, y0, cellM, columns } = this.field.grid;
    const points: Point[] = [[target.x, target.y]];
    for (let at = node; ; ) {
      const k = Math.floor(at / columns);
      points.push([x0 + (at - k * columns) * cellM, y0 + k * cellM]);
      const m = this.by[at] as number;
      if (m < 0) break;
      const { dx, dy } = moves[m] as (typeof moves)[number];
      at -= dy * columns + dx;
    }
    points.push(from);
    return points.reverse();
  }
}

/**
 * The way from a place to one of several on which the shallowest pipe that falls comes out highest above what it
 * must: exact on the lattice, since a pipe that is higher anywhere can be as high everywhere after.
 * @returns null where no way within depth leads to any.
 */
export function highestWay(
  field: CostField,
  fall: SearchFall,
  from: Point,
  targets: readonly Target[],
): HighestWay | null {
  const search = new Highest(field, fall);
  search.run(from);
  let best: Reached | null = null;
  for (const target of targets) {
    const least = fall.outletM(target);
    for (const { node, lengthM } of joins(field, target.x, target.y)) {
      const invertM = search.invertM[node] as number;
      if (invertM === -Infinity) continue;
      const spareM = invertM - fall.minFall * lengthM - least;
      if (best === null || spareM > best.spareM) best = { node, target, spareM };
    }
  }
  return best === null
    ? null
    : { points: search.trace(from, best), target: best.target, spareM: best.spareM };
}
