import type { NetworkOutlet, NetworkPipe, NetworkSource, PlannedNetwork } from '../model/network.js';
import type { CostField } from './cost-field.js';
import { outletVertices, sourceVertex } from './network-ends.js';
import { insertSource, removeSource } from './network-insert.js';
import { latticeNetwork } from './network-lattice.js';
import { linesOf } from './network-lines.js';
import { polish } from './network-polish.js';
import { separateLines, together } from './network-separate.js';
import { type NetworkPrices, NetworkTree, type Vertex } from './network-tree.js';

export interface NetworkOptions {
  /** The pipe for a load; dearer, never cheaper, as the load grows. */
  readonly pipeFor: (load: number) => NetworkPipe;
  readonly wyeEach: number;
  readonly bendEach: number;
  /** Told how much is done, 0 to 1. */
  readonly onProgress?: (share: number) => void;
  readonly shouldStop?: () => boolean;
}

/** A saving counts from this share of the whole on. */
const WORTH = 1e-6;
/** Rounds in which every source is taken out and joined anew. */
const ROUNDS = 3;

/** Up to so many node settlings the best network over the lattice is worked out: a second or two. */
const MOST_SETTLINGS = 500_000;

/** The best network over the lattice, drawn straight; null where that is too much work or there is no way. */
function exact(
  field: CostField,
  prices: NetworkPrices,
  sources: readonly NetworkSource[],
  outlets: readonly NetworkOutlet[],
): NetworkTree | null {
  if (2 ** sources.length * field.perM.length > MOST_SETTLINGS) return null;
  const tree = latticeNetwork(field, prices, sources, outlets);
  if (tree !== null) polish(tree);
  return tree;
}

/** Source by source in the given order, each joined to what is there. */
function grown(
  field: CostField,
  prices: NetworkPrices,
  sources: readonly NetworkSource[],
  outlets: readonly NetworkOutlet[],
): NetworkTree | null {
  const tree = new NetworkTree(field, prices, outletVertices(outlets));
  for (const source of sources) if (!insertSource(tree, sourceVertex(source))) return null;
  polish(tree);
  return tree;
}

/** Each source taken out and joined anew, as long as the whole gets cheaper. */
function rejoined(start: NetworkTree, shouldStop: () => boolean): NetworkTree {
  let best = start;
  let cost = best.cost();
  for (let i = 0; i < ROUNDS; i++) {
    const before = cost;
    for (const id of best.vertices.filter(({ kind }) => kind === 'source').map((vertex) => vertex.id)) {
      if (shouldStop()) return best;
      const tree = best.copy();
      const source = tree.vertices.find((vertex) => vertex.id === id && vertex.kind === 'source') as Vertex;
      if (tree.into(source).length > 0) continue;
      removeSource(tree, source);
      if (!insertSource(tree, { ...source, next: null })) continue;
      polish(tree);
      const now = tree.cost();
      if (now >= cost * (1 - WORTH)) continue;
      best = tree;
      cost = now;
    }
    if (cost >= before * (1 - WORTH)) break;
  }
  return best;
}

/** Networks that share trenches, to choose from. */
function* sharedTrees(
  field: CostField,
  prices: NetworkPrices,
  nearestFirst: readonly NetworkSource[],
  outlets: readonly NetworkOutlet[],
): Generator<NetworkTree> {
  if (nearestFirst.length < 2) return;
  const best = exact(field, prices, nearestFirst, outlets);
  if (best !== null) {
    yield best;
    return;
  }
  for (const order of [nearestFirst, [...nearestFirst].reverse()]) {
    const tree = grown(field, prices, order, outlets);
    if (tree !== null) yield tree;
  }
}

const lengthOf = (tree: NetworkTree): number =>
  tree.vertices.reduce(
    (sum, { x, y, next }) => sum + (next === null ? 0 : Math.hypot(next.x - x, next.y - y)),
    0,
  );

function checkInputs(sources: readonly NetworkSource[], outlets: readonly NetworkOutlet[]): void {
  if (sources.length === 0 || outlets.length === 0) {
    throw new RangeError(
      `a network needs a source and an outlet, got ${sources.length} and ${outlets.length}`,
    );
  }
  const ids = [...sources, ...outlets].map(({ id }) => id);
  const twice = ids.find((id, i) => ids.indexOf(id) !== i);
  if (twice !== undefined) throw new RangeError(`ids must differ, got '${twice}' twice`);
  const odd = sources.find(({ load }) => !(load >= 0));
  if (odd) throw new RangeError(`load must be 0 or more, got ${odd.load} at '${odd.id}'`);
}

/**
 * Lines from several sources to one or more outlets that share trenches where that is cheaper, the shared pipe sized for
 * what runs into it.
 *
 * Few sources: the best network over the lattice. Many: a source at a time is joined to the growing network by its
 * cheapest path, the nearest first and the furthest first (Takahashi & Matsuyama 1980: on one cost a metre that is at
 * most twice the best). Then junctions and bends move, lines join earlier, and every source is joined anew, as long as
 * the whole gets cheaper. Separate lines are worked out beside it and taken where nothing shared is cheaper, so that
 * the result never costs more than they do.
 *
 * @returns null where a source has no way to any outlet.
 * @throws RangeError where there is no source or outlet, or ids are used twice.
 */
export function planNetwork(
  field: CostField,
  sources: readonly NetworkSource[],
  outlets: readonly NetworkOutlet[],
  options: NetworkOptions,
): PlannedNetwork | null {
  checkInputs(sources, outlets);
  const { pipeFor, wyeEach, bendEach, onProgress, shouldStop = () => false } = options;
  const prices = { morePerM: (load: number) => pipeFor(load).morePerM, wyeEach, bendEach };
  const lines = separateLines(field, prices, sources, outlets);
  if (lines === null) return null;
  onProgress?.(0.2);
  const apart = together(field, prices, lines, outlets);
  const separate = { lines: linesOf(apart, pipeFor).lines, lengthM: lengthOf(apart), cost: apart.cost() };
  let best = apart;
  for (const tree of sharedTrees(
    field,
    prices,
    lines.map(({ source }) => source),
    outlets,
  )) {
    if (tree.cost() < best.cost() * (1 - WORTH)) best = tree;
    if (shouldStop()) break;
  }
  onProgress?.(0.6);
  if (best !== apart) best = rejoined(best, shouldStop);
  onProgress?.(1);
  return {
    shape: best === apart ? 'separate' : 'shared',
    ...linesOf(best, pipeFor),
    lengthM: lengthOf(best),
    cost: best.cost(),
    separate,
  };
}
