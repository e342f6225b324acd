import type { NetworkOutlet, NetworkSource } from '../model/network.js';
import type { CostField } from './cost-field.js';
import { moves } from './moves.js';
import {
  type Drained,
  FROM_SOURCE,
  type Gathered,
  Gathering,
  partMet,
  stepCosts,
} from './network-gathering.js';
import { type NetworkPrices, NetworkTree, type Vertex } from './network-tree.js';

/** Follows a gathering back from its outlets and sets its vertices. */
class Tracer {
  readonly vertices: Vertex[];
  /** Steps taken that turn out to touch what is forbidden. */
  readonly touching: number[] = [];

  constructor(
    private readonly field: CostField,
    private readonly gathering: Gathering,
    private readonly sources: readonly NetworkSource[],
    outlets: readonly NetworkOutlet[],
  ) {
    this.vertices = outlets.map(({ id, x, y }) => ({
      id,
      kind: 'outlet',
      x,
      y,
      load: 0,
      basin: false,
      next: null,
    }));
  }

  trace(drained: Drained): void {
    this.back(drained.set, drained.node, this.free(drained.node, this.vertices[drained.outlet] as Vertex));
  }

  private free(node: number, next: Vertex): Vertex {
    const { x0, y0, cellM, columns } = this.field.grid;
    const k = Math.floor(node / columns);
    const vertex: Vertex = {
      id: null,
      kind: 'free',
      x: x0 + (node - k * columns) * cellM,
      y: y0 + k * cellM,
      load: 0,
      basin: false,
      next,
    };
    this.vertices.push(vertex);
    return vertex;
  }

  /** From a vertex at a node up to all sources of a set. */
  private back(set: number, node: number, vertex: Vertex): void {
    const { by } = this.gathering.sets[set] as Gathered;
    const first = by[node] as number;
    if (first === FROM_SOURCE) {
      const { id, x, y, load, basin = false } = this.sources[Math.log2(set)] as NetworkSource;
      this.vertices.push({ id, kind: 'source', x, y, load, basin, next: vertex });
      return;
    }
    if (first < FROM_SOURCE) {
      const part = partMet(first);
      this.back(part, node, vertex);
      this.back(set ^ part, node, vertex);
      return;
    }
    // a straight goes on as long as the step stays the same
    let at = node;
    while (by[at] === first) at = this.stepBack(at, first);
    this.back(set, at, this.free(at, vertex));
  }

  private stepBack(node: number, m: number): number {
    const { x0, y0, cellM, columns } = this.field.grid;
    const { dx, dy } = moves[m] as (typeof moves)[number];
    const k = Math.floor(node / columns);
    const [x, y] = [x0 + (node - k * columns) * cellM, y0 + k * cellM];
    const from = node - dy * columns - dx;
    if (!this.field.clear(x - dx * cellM, y - dy * cellM, x, y)) this.touching.push(from * moves.length + m);
    return from;
  }
}

/** A step that the mask let pass may still touch a corner: so often it is tried anew without such steps. */
const TRIES = 8;

/**
 * Cheapest network over the lattice, by subsets of the sources (Dreyfus & Wagner 1971): for each set, what it costs to
 * bring all its water to each node, from the sets that it is made of and over the lattice with the pipe that the set
 * needs. Exact on the lattice; three times the work for each source more.
 * @returns null where a source has no way to an outlet.
 */
export function latticeNetwork(
  field: CostField,
  prices: NetworkPrices,
  sources: readonly NetworkSource[],
  outlets: readonly NetworkOutlet[],
): NetworkTree | null {
  const barred = new Set<number>();
  for (let attempt = 0; attempt < TRIES; attempt++) {
    const gathering = new Gathering(field, prices, sources, stepCosts(field, barred));
    const drained = gathering.share(outlets);
    if (drained === null) return null;
    const tracer = new Tracer(field, gathering, sources, outlets);
    for (const each of drained) tracer.trace(each);
    if (tracer.touching.length === 0) return new NetworkTree(field, prices, tracer.vertices);
    for (const step of tracer.touching) barred.add(step);
  }
  return null;
}
