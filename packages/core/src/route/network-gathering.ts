import FlatQueue from 'flatqueue';
import type { NetworkOutlet, NetworkSource } from '../model/network.js';
import type { CostField } from './cost-field.js';
import { moves } from './moves.js';
import type { NetworkPrices } from './network-tree.js';

/** Ends off the lattice are joined to nodes within so many cells. */
const JOIN_CELLS = 2;
/** How a node was come to: from a source, by the step of this number (0 and over), or where two parts met (below -1). */
export const FROM_SOURCE = -1;
const metAs = (part: number): number => -2 - part;
export const partMet = (by: number): number => -2 - by;

/** Steps of the lattice with what they cost; Infinity where one is barred. */
export function stepCosts(field: CostField, barred: ReadonlySet<number>): Float64Array {
  const { grid, perM, blocked } = field;
  const { columns, rows, cellM } = grid;
  const wide = 2 * columns - 1;
  const costs = new Float64Array(columns * rows * moves.length).fill(Number.POSITIVE_INFINITY);
  for (let node = 0; node < columns * rows; node++) {
    const k = Math.floor(node / columns);
    const i = node - k * columns;
    const half = 2 * k * wide + 2 * i;
    if (blocked[half] === 1) continue;
    moves.forEach(({ dx, dy, length, nodeX, nodeY, share, halfX, halfY }, m) => {
      if (i + dx < 0 || i + dx >= columns || k + dy < 0 || k + dy >= rows) return;
      if (barred.has(node * moves.length + m)) return;
      for (let h = 0; h < halfX.length; h++) {
        if (blocked[half + (halfY[h] as number) * wide + (halfX[h] as number)] === 1) return;
      }
      let perMetre = 0;
      for (let n = 0; n < share.length; n++) {
        const at = node + (nodeY[n] as number) * columns + (nodeX[n] as number);
        perMetre += (share[n] as number) * (perM[at] as number);
      }
      costs[node * moves.length + m] = perMetre * length * cellM;
    });
  }
  return costs;
}

/** Nodes that can be reached in a straight from a place, with what that costs. */
function joinsOf(field: CostField, x: number, y: number, more: number): { node: number; cost: number }[] {
  const { x0, y0, cellM, columns, rows } = field.grid;
  const u = Math.round((x - x0) / cellM);
  const v = Math.round((y - y0) / cellM);
  const joins: { node: number; cost: number }[] = [];
  for (let k = Math.max(0, v - JOIN_CELLS); k <= Math.min(rows - 1, v + JOIN_CELLS); k++) {
    for (let i = Math.max(0, u - JOIN_CELLS); i <= Math.min(columns - 1, u + JOIN_CELLS); i++) {
      const [nx, ny] = [x0 + i * cellM, y0 + k * cellM];
      const cost = field.between(x, y, nx, ny) + more * Math.hypot(nx - x, ny - y);
      if (cost < Number.POSITIVE_INFINITY) joins.push({ node: k * columns + i, cost });
    }
  }
  return joins;
}

/** For one set of sources: what it costs to bring all their water to each node, and how it came there. */
export interface Gathered {
  readonly cost: Float64Array;
  readonly by: Int32Array;
}

/** A set of sources that drains to one outlet, by the node before it. */
export interface Drained {
  readonly set: number;
  readonly outlet: number;
  readonly node: number;
  readonly cost: number;
}

/** What it costs to bring the water of any set of sources to any node. */
export class Gathering {
  readonly sets: Gathered[] = [];
  private readonly count: number;

  constructor(
    private readonly field: CostField,
    private readonly prices: NetworkPrices,
    private readonly sources: readonly NetworkSource[],
    private readonly steps: Float64Array,
  ) {
    this.count = field.perM.length;
    for (let set = 1; set < 1 << sources.length; set++) this.sets[set] = this.gather(set);
  }

  loadOf(set: number): number {
    return this.sources.reduce((sum, { load }, i) => sum + ((set >> i) & 1 ? load : 0), 0);
  }

  private gather(set: number): Gathered {
    const cost = new Float64Array(this.count).fill(Number.POSITIVE_INFINITY);
    const by = new Int32Array(this.count).fill(FROM_SOURCE);
    const more = this.prices.morePerM(this.loadOf(set));
    const alone = this.sources.findIndex((_, i) => set === 1 << i);
    if (alone >= 0) {
      const { x, y } = this.sources[alone] as NetworkSource;
      for (const join of joinsOf(this.field, x, y, more)) cost[join.node] = join.cost;
    }
    for (let part = (set - 1) & set; part > set - part; part = (part - 1) & set)
      this.meet(cost, by, part, set ^ part);
    this.settle(cost, by, more);
    return { cost, by };
  }

  /** Two parts meet at a wye. */
  private meet(cost: Float64Array, by: Int32Array, part: number, rest: number): void {
    const a = (this.sets[part] as Gathered).cost;
    const b = (this.sets[rest] as Gathered).cost;
    for (let node = 0; node < this.count; node++) {
      const sum = (a[node] as number) + (b[node] as number) + this.prices.wyeEach;
      if (sum >= (cost[node] as number)) continue;
      cost[node] = sum;
      by[node] = metAs(part);
    }
  }

  /** Spreads over the lattice from all that has a cost so far (Dijkstra 1959). */
  private settle(cost: Float64Array, by: Int32Array, more: number): void {
    const { columns, cellM } = this.field.grid;
    const queue = new FlatQueue<number>();
    const closed = new Uint8Array(this.count);
    cost.forEach((so, node) => {
      if (so < Number.POSITIVE_INFINITY) queue.push(node, so);
    });
    while (queue.length > 0) {
      const node = queue.pop() as number;
      if (closed[node] === 1) continue;
      closed[node] = 1;
      for (let m = 0; m < moves.length; m++) {
        const step = this.steps[node * moves.length + m] as number;
        if (step === Number.POSITIVE_INFINITY) continue;
        const { dx, dy, length } = moves[m] as (typeof moves)[number];
        const to = node + dy * columns + dx;
        const next = (cost[node] as number) + step + more * length * cellM;
        if (next >= (cost[to] as number)) continue;
        cost[to] = next;
        by[to] = m;
        queue.push(to, next);
      }
    }
  }

  /** Cheapest way to bring a set to one outlet; null where none leads there. */
  private drain(set: number, outlets: readonly NetworkOutlet[]): Drained | null {
    const { cost } = this.sets[set] as Gathered;
    const more = this.prices.morePerM(this.loadOf(set));
    let best: Drained | null = null;
    outlets.forEach(({ x, y }, outlet) => {
      for (const join of joinsOf(this.field, x, y, more)) {
        const sum = (cost[join.node] as number) + join.cost;
        if (sum < (best?.cost ?? Number.POSITIVE_INFINITY))
          best = { set, outlet, node: join.node, cost: sum };
      }
    });
    return best;
  }

  /** Cheapest way to share all sources out over the outlets. */
  share(outlets: readonly NetworkOutlet[]): Drained[] | null {
    const best: (readonly Drained[] | null)[] = [[]];
    const costOf = (list: readonly Drained[] | null | undefined): number =>
      list?.reduce((sum, { cost }) => sum + cost, 0) ?? Number.POSITIVE_INFINITY;
    for (let set = 1; set < 1 << this.sources.length; set++) {
      const whole = this.drain(set, outlets);
      best[set] = whole && [whole];
      for (let part = (set - 1) & set; part > set - part; part = (part - 1) & set) {
        const [a, b] = [best[part], best[set ^ part]];
        if (a && b && costOf(a) + costOf(b) < costOf(best[set])) best[set] = [...a, ...b];
      }
    }
    return best[(1 << this.sources.length) - 1]?.slice() ?? null;
  }
}
