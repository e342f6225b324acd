import type { Point } from '../geometry/disc-less-strip.js';
import type { NetworkBranch, NetworkJunction, NetworkLine, NetworkPipe } from '../model/network.js';
import type { NetworkTree, Vertex } from './network-tree.js';

/** The usual wye; what a branch turns beyond is made with bends (common practice). */
const WYE_DEGREES = 45;
/** What comes down from a roof turns into the line. */
const DROP_DEGREES = 90;
/** Bends that are made for rigid pipe, the widest first. */
const BENDS_DEGREES = [90, 45, 22.5] as const;

type Ids = ReadonlyMap<Vertex, string>;

/** Names for sources, outlets and junctions, these from the upper end of the longest way down. */
function idsOf(tree: NetworkTree): Ids {
  const ids = new Map<Vertex, string>();
  let junctions = 0;
  for (const source of tree.vertices) {
    for (let at: Vertex | null = source.kind === 'source' ? source : null; at !== null; at = at.next) {
      if (ids.has(at)) break;
      if (at.id !== null) ids.set(at, at.id);
      else if (tree.into(at).length > 1) ids.set(at, `J${++junctions}`);
    }
  }
  return ids;
}

function linesBetween(tree: NetworkTree, ids: Ids, pipeFor: (load: number) => NetworkPipe): NetworkLine[] {
  const loads = tree.loads();
  const lines: NetworkLine[] = [];
  for (const [first, from] of ids) {
    if (first.next === null) continue;
    const load = loads.get(first) ?? 0;
    const vertices = [first];
    let lengthM = 0;
    let cost = 0;
    let at: Vertex = first;
    do {
      const next: Vertex = at.next as Vertex;
      lengthM += Math.hypot(next.x - at.x, next.y - at.y);
      cost += tree.straight(at, next, load);
      vertices.push(next);
      at = next;
      if (!ids.has(at)) cost += tree.fitting(at, 1);
    } while (!ids.has(at));
    lines.push({
      id: `${from}-${ids.get(at)}`,
      from,
      to: ids.get(at) as string,
      points: vertices.map(({ x, y }) => [x, y] as const),
      lengthM,
      load,
      sizeM: pipeFor(load).sizeM,
      cost,
    });
  }
  return lines;
}

/** Turn from one heading to another, 0 to 180 degrees. */
function turnDegrees(from: number, to: number): number {
  const turn = Math.abs(to - from) % (2 * Math.PI);
  return (Math.min(turn, 2 * Math.PI - turn) * 180) / Math.PI;
}

/** Bends that come nearest to a turn, as few as may be. */
function bendsFor(degrees: number): number[] {
  const bends: number[] = [];
  let left = Math.round(degrees / 22.5) * 22.5;
  for (const bend of BENDS_DEGREES) {
    while (left >= bend) {
      bends.push(bend);
      left -= bend;
    }
  }
  return bends;
}

const headingIn = ({ points }: Pick<NetworkLine, 'points'>, fromEnd: boolean): number => {
  const [a, b] = (fromEnd ? points.slice(-2) : points.slice(0, 2)) as [Point, Point];
  return Math.atan2(b[1] - a[1], b[0] - a[0]);
};

/** How lines turn where they meet: into the line that begins at `id`, beside what comes down there if it is a source. */
export function turnsAt(
  id: string,
  isSource: boolean,
  lines: readonly Pick<NetworkLine, 'id' | 'from' | 'to' | 'points'>[],
): Omit<NetworkJunction, 'id' | 'x' | 'y'> {
  const on = headingIn(lines.find(({ from }) => from === id) as NetworkLine, false);
  const into = lines
    .filter(({ to }) => to === id)
    .map((line) => ({ line: line.id, turnDegrees: turnDegrees(headingIn(line, true), on) }))
    .sort((a, b) => a.turnDegrees - b.turnDegrees);
  const [main, ...rest] = into as [(typeof into)[number], ...typeof into];
  const drop = isSource ? [{ line: id, turnDegrees: DROP_DEGREES }] : [];
  const branches: NetworkBranch[] = [...rest, ...drop].map((branch) => ({
    ...branch,
    bendDegrees: bendsFor(Math.max(0, branch.turnDegrees - WYE_DEGREES)),
  }));
  const { line, turnDegrees: mainTurnDegrees } = main;
  return { main: line, mainTurnDegrees, mainBendDegrees: bendsFor(mainTurnDegrees), branches };
}

/** A network cut into its lines and the wyes between them. */
export function linesOf(
  tree: NetworkTree,
  pipeFor: (load: number) => NetworkPipe,
): { readonly lines: readonly NetworkLine[]; readonly junctions: readonly NetworkJunction[] } {
  const ids = idsOf(tree);
  const lines = linesBetween(tree, ids, pipeFor);
  const junctions = [...ids]
    .filter(([vertex]) => vertex.kind !== 'outlet' && !vertex.basin && tree.into(vertex).length > 0)
    .map(([vertex, id]) => ({ id, x: vertex.x, y: vertex.y, ...turnsAt(id, vertex.id !== null, lines) }));
  return { lines, junctions };
}
