import type { NetworkTree, Vertex } from './network-tree.js';

/** Furthest a vertex is moved at once, in cells, and the least, metres. */
const FIRST_STEP_CELLS = 2;
const LAST_STEP_M = 0.01;
/** Rounds at one step before it is halved. */
const ROUNDS = 8;
/** Less than this of a currency is no gain. */
const GAIN = 1e-9;

const DIRECTIONS = Array.from(
  { length: 8 },
  (_, i) => [Math.cos((i * Math.PI) / 4), Math.sin((i * Math.PI) / 4)] as const,
);

type Loads = ReadonlyMap<Vertex, number>;
type Place = { readonly x: number; readonly y: number };

/** Cost of the straights into and out of a vertex if it stood elsewhere. */
function around(tree: NetworkTree, loads: Loads, vertex: Vertex, into: readonly Vertex[], at: Place): number {
  let sum = vertex.next === null ? 0 : tree.straight(at, vertex.next, loads.get(vertex) ?? 0);
  for (const each of into) sum += tree.straight(each, at, loads.get(each) ?? 0);
  return sum;
}

/** Moves a vertex to the best place a step away; true where one is better. */
function move(tree: NetworkTree, loads: Loads, vertex: Vertex, step: number): boolean {
  const into = tree.into(vertex);
  let best = around(tree, loads, vertex, into, vertex) - GAIN;
  let to: Place | null = null;
  for (const [dx, dy] of DIRECTIONS) {
    const at = { x: vertex.x + step * dx, y: vertex.y + step * dy };
    const cost = around(tree, loads, vertex, into, at);
    if (cost < best) {
      best = cost;
      to = at;
    }
  }
  if (to === null) return false;
  vertex.x = to.x;
  vertex.y = to.y;
  return true;
}

/** Leaves a vertex out where what runs into it does better to go straight on. */
function drop(tree: NetworkTree, loads: Loads, vertex: Vertex): boolean {
  const { next } = vertex;
  if (vertex.kind !== 'free' || next === null) return false;
  const into = tree.into(vertex);
  const beside = tree.into(next).length;
  const now =
    around(tree, loads, vertex, into, vertex) +
    tree.fitting(vertex, into.length) +
    tree.fitting(next, beside);
  let then = tree.fitting(next, beside - 1 + into.length);
  for (const each of into) then += tree.straight(each, next, loads.get(each) ?? 0);
  if (!(then <= now + GAIN)) return false;
  for (const each of into) each.next = next;
  tree.remove(vertex);
  return true;
}

/** Lets a source take a junction's place where the rest of what meets there does as well to run through the source. */
function absorb(tree: NetworkTree, loads: Loads, vertex: Vertex): boolean {
  const { next } = vertex;
  if (vertex.kind !== 'free' || next === null) return false;
  const into = tree.into(vertex);
  const source = into.find(({ kind }) => kind === 'source');
  if (source === undefined || into.length < 2) return false;
  const others = into.filter((each) => each !== source);
  const now = around(tree, loads, vertex, into, vertex) + tree.fitting(vertex, into.length);
  let then = tree.straight(source, next, loads.get(vertex) ?? 0) + tree.fitting(source, others.length);
  for (const each of others) then += tree.straight(each, source, loads.get(each) ?? 0);
  if (!(then <= now + GAIN)) return false;
  for (const each of others) each.next = source;
  source.next = next;
  tree.remove(vertex);
  return true;
}

/** Two ways that meet at a vertex: both run into it, or one does and the other is its own way on. */
interface Pair {
  readonly ends: readonly [Vertex, Vertex];
  /** Where the joined way goes. */
  readonly on: Vertex;
  /** Places that the two ways leave the vertex for. */
  readonly toward: readonly [Vertex, Vertex];
}

function pairsAt(tree: NetworkTree, vertex: Vertex): Pair[] {
  const into = tree.into(vertex);
  const pairs: Pair[] = [];
  into.forEach((a, i) => {
    for (const b of into.slice(i + 1)) pairs.push({ ends: [a, b], on: vertex, toward: [a, b] });
    if (vertex.kind === 'source' && vertex.next !== null) {
      pairs.push({ ends: [a, vertex], on: vertex.next, toward: [a, vertex.next] });
    }
  });
  return pairs;
}

/** Joins two ways before the vertex at which they meet, where that is cheaper; true where it is. */
function joinEarlier(tree: NetworkTree, loads: Loads, vertex: Vertex, reachM: number): boolean {
  for (const { ends, on, toward } of pairsAt(tree, vertex)) {
    const [a, b] = ends;
    const directions = toward.map((each) => {
      const length = Math.hypot(each.x - vertex.x, each.y - vertex.y) || 1;
      return [(each.x - vertex.x) / length, (each.y - vertex.y) / length] as const;
    });
    const dx = directions.reduce((sum, [x]) => sum + x, 0) / 2;
    const dy = directions.reduce((sum, [, y]) => sum + y, 0) / 2;
    const at: Vertex = {
      id: null,
      kind: 'free',
      x: vertex.x + reachM * dx,
      y: vertex.y + reachM * dy,
      load: 0,
      basin: false,
      next: on,
    };
    const so = loads.get(b) ?? 0;
    const la = loads.get(a) ?? 0;
    // what a source sends on holds what runs into it
    const lb = b === vertex ? so - la : so;
    const before = tree.into(vertex).length;
    const now = tree.straight(a, vertex, la) + tree.straight(b, b.next as Vertex, so);
    const then = tree.straight(a, at, la) + tree.straight(b, at, lb) + tree.straight(at, on, la + lb);
    const fittings = tree.fitting(vertex, before - 1) + tree.prices.wyeEach - tree.fitting(vertex, before);
    if (!(then + fittings < now - GAIN)) continue;
    a.next = at;
    b.next = at;
    tree.vertices.push(at);
    return true;
  }
  return false;
}

/** One round over all vertices; true where anything became better. */
function round(tree: NetworkTree, step: number): boolean {
  let better = false;
  for (const vertex of [...tree.vertices]) {
    if (!tree.vertices.includes(vertex)) continue;
    if (drop(tree, tree.loads(), vertex) || absorb(tree, tree.loads(), vertex)) {
      better = true;
      continue;
    }
    if (joinEarlier(tree, tree.loads(), vertex, step)) better = true;
    if (vertex.kind === 'free' && move(tree, tree.loads(), vertex, step)) better = true;
  }
  return better;
}

/**
 * Draws a network straight: bends and junctions move, drop out, and lines join earlier, as long as the whole gets
 * cheaper by its true cost.
 */
export function polish(tree: NetworkTree): void {
  for (let step = FIRST_STEP_CELLS * tree.field.grid.cellM; step >= LAST_STEP_M; step /= 2) {
    for (let i = 0; i < ROUNDS; i++) if (!round(tree, step)) break;
  }
}
