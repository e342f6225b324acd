import type { Point } from '../geometry/disc-less-strip.js';
import { cheapestPath } from './cheapest-path.js';
import type { NetworkTree, Vertex } from './network-tree.js';
import type { Target } from './search.js';

/** A place on a network that a new line may end at. */
interface Join extends Target {
  readonly cost: number;
  /** The vertex itself where `share` is 0, else the straight from it. */
  readonly vertex: Vertex;
  readonly share: number;
}

/** Places to join are no nearer to each other than this along a line, in cells and metres. */
const APART_CELLS = 2;
const APART_M = 1;

/** What a load more costs on the way from a vertex down to its outlet. */
function morePipe(tree: NetworkTree, loads: ReadonlyMap<Vertex, number>, from: Vertex, load: number): number {
  const { morePerM } = tree.prices;
  let sum = 0;
  for (let at = from; at.next !== null; at = at.next) {
    const so = loads.get(at) ?? 0;
    sum += Math.hypot(at.next.x - at.x, at.next.y - at.y) * (morePerM(so + load) - morePerM(so));
  }
  return sum;
}

function joinsOf(tree: NetworkTree, load: number): Join[] {
  const loads = tree.loads();
  const apart = Math.max(APART_M, APART_CELLS * tree.field.grid.cellM);
  const joins: Join[] = [];
  for (const vertex of tree.vertices) {
    const below = morePipe(tree, loads, vertex, load);
    const count = tree.into(vertex).length;
    const fitting = Math.max(0, tree.fitting(vertex, count + 1) - tree.fitting(vertex, count));
    joins.push({ x: vertex.x, y: vertex.y, cost: below + fitting, vertex, share: 0 });
    const { next } = vertex;
    if (next === null) continue;
    const parts = Math.ceil(Math.hypot(next.x - vertex.x, next.y - vertex.y) / apart);
    const onward = morePipe(tree, loads, next, load);
    for (let k = 1; k < parts; k++) {
      const share = k / parts;
      const cost = share * onward + (1 - share) * below + tree.prices.wyeEach;
      const x = vertex.x + share * (next.x - vertex.x);
      const y = vertex.y + share * (next.y - vertex.y);
      joins.push({ x, y, cost, vertex, share });
    }
  }
  return joins;
}

/** The vertex at a join, set into the line where there is none yet. */
function vertexAt(tree: NetworkTree, { x, y, vertex, share }: Join): Vertex {
  if (share === 0) return vertex;
  const set: Vertex = { id: null, kind: 'free', x, y, load: 0, basin: false, next: vertex.next };
  vertex.next = set;
  tree.vertices.push(set);
  return set;
}

/** Runs a path of bends from a source to a vertex. */
export function runTo(tree: NetworkTree, source: Vertex, points: readonly Point[], end: Vertex): void {
  tree.vertices.push(source);
  let last = source;
  for (const [x, y] of points.slice(1, -1)) {
    const bend: Vertex = { id: null, kind: 'free', x, y, load: 0, basin: false, next: null };
    tree.vertices.push(bend);
    last.next = bend;
    last = bend;
  }
  last.next = end;
}

/**
 * Joins a source to a network, or to one of its outlets, by the cheapest path: its own trench and pipe, what the pipe
 * below has to grow by, and the wye.
 * @returns false where no way leads there.
 */
export function insertSource(tree: NetworkTree, source: Vertex): boolean {
  const joins = joinsOf(tree, source.load);
  const found = cheapestPath(tree.field, [source.x, source.y], joins, {
    lengthPrice: tree.prices.morePerM(source.load),
  });
  const join = found && joins.find((each) => each === found.target);
  if (!found || !join) return false;
  runTo(tree, source, found.points, vertexAt(tree, join));
  return true;
}

/** Takes a source away that nothing runs into, with the bends that served it alone. */
export function removeSource(tree: NetworkTree, source: Vertex): void {
  let at: Vertex = source;
  for (;;) {
    const { next } = at;
    tree.remove(at);
    if (next === null || next.kind !== 'free' || tree.into(next).length > 0) return;
    at = next;
  }
}
