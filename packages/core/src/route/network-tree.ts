import type { CostField } from './cost-field.js';

/** A place of a network: a source or an outlet, which stay, or a bend or a junction, which may move. */
export interface Vertex {
  readonly id: string | null;
  readonly kind: 'source' | 'outlet' | 'free';
  x: number;
  y: number;
  /** What a source brings. */
  readonly load: number;
  /** True of a basin: lines end in it without a wye. */
  readonly basin: boolean;
  /** The next vertex downstream; null at an outlet. */
  next: Vertex | null;
}

/** What a network is weighed by besides its field. */
export interface NetworkPrices {
  /** More for a metre of pipe that carries this load than the field counts for its pipe; never falling. */
  readonly morePerM: (load: number) => number;
  readonly wyeEach: number;
  readonly bendEach: number;
}

/** Lines that run together: a tree for each outlet, every vertex with the one that it drains to. */
export class NetworkTree {
  constructor(
    readonly field: CostField,
    readonly prices: NetworkPrices,
    readonly vertices: Vertex[],
  ) {}

  /** The same network with vertices of its own. */
  copy(): NetworkTree {
    const copies = new Map(this.vertices.map((vertex) => [vertex, { ...vertex }]));
    for (const copy of copies.values()) copy.next = copy.next && (copies.get(copy.next) ?? null);
    return new NetworkTree(this.field, this.prices, [...copies.values()]);
  }

  into(vertex: Vertex): Vertex[] {
    return this.vertices.filter(({ next }) => next === vertex);
  }

  remove(vertex: Vertex): void {
    this.vertices.splice(this.vertices.indexOf(vertex), 1);
  }

  /** What flows out of each vertex. */
  loads(): Map<Vertex, number> {
    const loads = new Map<Vertex, number>();
    for (const source of this.vertices) {
      if (source.kind !== 'source') continue;
      for (let at: Vertex | null = source; at !== null; at = at.next) {
        loads.set(at, (loads.get(at) ?? 0) + source.load);
      }
    }
    return loads;
  }

  /** Cost of a straight from one place to another under a load. */
  straight(from: { x: number; y: number }, to: { x: number; y: number }, load: number): number {
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    if (length === 0) return 0;
    return this.field.between(from.x, from.y, to.x, to.y) + length * this.prices.morePerM(load);
  }

  /** What stands at a vertex that `count` lines run into: bends and wyes; a basin and an outlet need none. */
  fitting(vertex: Vertex, count: number): number {
    if (vertex.kind === 'outlet' || vertex.basin) return 0;
    // what comes down at a source is a line more
    if (vertex.kind === 'source') return count * this.prices.wyeEach;
    return count > 1 ? (count - 1) * this.prices.wyeEach : this.prices.bendEach;
  }

  cost(): number {
    const loads = this.loads();
    let sum = 0;
    for (const vertex of this.vertices) {
      if (vertex.next === null) continue;
      sum += this.straight(vertex, vertex.next, loads.get(vertex) ?? 0);
      sum += this.fitting(vertex, this.into(vertex).length);
    }
    return sum;
  }
}
