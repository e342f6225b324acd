import {
  halfCircle,
  mixedCrossings,
  type Round,
  roundCrossings,
  type SlabCurve,
  type Straight,
  straightCrossings,
  straightCurve,
} from './slab-curve.js';

/** A place in plane metres. */
export type Point = readonly [x: number, y: number];

/** Everything nearer than `halfWidthM` to a path: round at its ends and bends. */
export interface Strip {
  readonly path: readonly Point[];
  readonly halfWidthM: number;
}

/** One edge of a strip in the frame of the disc: centre 0, radius 1. */
interface Edge extends Straight {
  readonly h: number;
}

/** Parts of a disc of radius 1 closer than this are taken as touching. */
const TOUCHING = 1e-9;

function distance2(x: number, y: number, { x0, y0, x1, y1 }: Straight): number {
  const dx = x1 - x0;
  const dy = y1 - y0;
  const length2 = dx * dx + dy * dy;
  const t = length2 === 0 ? 0 : Math.min(1, Math.max(0, ((x - x0) * dx + (y - y0) * dy) / length2));
  return (x - x0 - t * dx) ** 2 + (y - y0 - t * dy) ** 2;
}

const covered = (edges: readonly Edge[], x: number, y: number): boolean =>
  edges.some((edge) => distance2(x, y, edge) <= edge.h * edge.h);

/** Edges that come near the disc, moved and scaled into its frame. */
function edgesNear(centre: Point, radiusM: number, strips: readonly Strip[]): Edge[] {
  const edges: Edge[] = [];
  for (const { path, halfWidthM } of strips) {
    const at = path.map(([x, y]) => [(x - centre[0]) / radiusM, (y - centre[1]) / radiusM] as const);
    const h = halfWidthM / radiusM;
    const last = Math.max(1, at.length - 1);
    for (let i = 0; i < last; i++) {
      const [x0, y0] = at[i] as Point;
      const [x1, y1] = at[i + 1] ?? [x0, y0];
      const edge = { x0, y0, x1, y1, h };
      if (distance2(0, 0, edge) < (1 + h) ** 2) edges.push(edge);
    }
  }
  return edges;
}

/** Both sides of an edge and the rounds at its ends. */
function outlineOf(edges: readonly Edge[]): { straights: Straight[]; rounds: Round[] } {
  const straights: Straight[] = [];
  const rounds = new Map<string, Round>();
  for (const { x0, y0, x1, y1, h } of edges) {
    rounds.set(`${x0} ${y0} ${h}`, { x: x0, y: y0, r: h });
    rounds.set(`${x1} ${y1} ${h}`, { x: x1, y: y1, r: h });
    const length = Math.hypot(x1 - x0, y1 - y0);
    if (length === 0) continue;
    for (const side of [h / length, -h / length]) {
      const ox = -(y1 - y0) * side;
      const oy = (x1 - x0) * side;
      straights.push({ x0: x0 + ox, y0: y0 + oy, x1: x1 + ox, y1: y1 + oy });
    }
  }
  return { straights, rounds: [...rounds.values()] };
}

/** Every x at which an outline begins, ends or crosses another, sorted, within the disc. */
function stopsOf(straights: readonly Straight[], rounds: readonly Round[]): number[] {
  const all: number[] = [-1, 1];
  straights.forEach((a, i) => {
    all.push(a.x0, a.x1);
    for (let k = i + 1; k < straights.length; k++)
      all.push(...straightCrossings(a, straights[k] as Straight));
    for (const c of rounds) all.push(...mixedCrossings(a, c));
  });
  rounds.forEach((a, i) => {
    all.push(a.x - a.r, a.x + a.r);
    for (let k = i + 1; k < rounds.length; k++) all.push(...roundCrossings(a, rounds[k] as Round));
  });
  const sorted = all.filter((x) => x >= -1 && x <= 1).sort((p, q) => p - q);
  return sorted.filter((x, i) => i === 0 || x - (sorted[i - 1] as number) > TOUCHING / 100);
}

/** A piece of the disc outside the strips, between two curves of one slab. */
interface Cell {
  readonly low: SlabCurve;
  readonly high: SlabCurve;
  readonly from: number;
  readonly to: number;
  /** Number of a cell that it is one with. */
  root: number;
}

/** Free cells of the slab from `a` to `b`. */
function cellsOf(a: number, b: number, curves: readonly SlabCurve[], edges: readonly Edge[]): Cell[] {
  const middle = (a + b) / 2;
  const rim = Math.sqrt(Math.max(0, 1 - middle * middle));
  const near = edges.filter(
    ({ x0, x1, h }) => Math.min(x0, x1) - h <= middle && Math.max(x0, x1) + h >= middle,
  );
  const here: { readonly curve: SlabCurve; readonly y: number }[] = [];
  for (const curve of curves) {
    if (curve.from > middle || curve.to < middle) continue;
    const y = curve.y(middle);
    if (Math.abs(y) <= rim) here.push({ curve, y });
  }
  here.sort((p, q) => p.y - q.y);
  const cells: Cell[] = [];
  here.forEach((low, i) => {
    const high = here[i + 1];
    if (high === undefined || high.y - low.y <= TOUCHING / 100) return;
    if (covered(near, middle, (low.y + high.y) / 2)) return;
    cells.push({ low: low.curve, high: high.curve, from: a, to: b, root: -1 });
  });
  return cells;
}

function rootOf(cells: readonly Cell[], i: number): number {
  let at = i;
  while ((cells[at] as Cell).root !== at) at = (cells[at] as Cell).root;
  return at;
}

const opening = (a: Cell, b: Cell, x: number): number =>
  Math.min(a.high.y(x), b.high.y(x)) - Math.max(a.low.y(x), b.low.y(x));

/** All free cells, each with the number of the cell that stands for what it is connected to. */
function connectedCells(
  stops: readonly number[],
  curves: readonly SlabCurve[],
  edges: readonly Edge[],
): Cell[] {
  const cells: Cell[] = [];
  let before: readonly number[] = [];
  for (let k = 0; k + 1 < stops.length; k++) {
    const a = stops[k] as number;
    const now: number[] = [];
    for (const cell of cellsOf(a, stops[k + 1] as number, curves, edges)) {
      const number = cells.length;
      cell.root = number;
      cells.push(cell);
      now.push(number);
      for (const other of before) {
        if (opening(cells[other] as Cell, cell, a) <= TOUCHING) continue;
        (cells[rootOf(cells, other)] as Cell).root = rootOf(cells, number);
      }
    }
    before = now;
  }
  return cells;
}

/**
 * Share of a disc that is still connected to its centre once strips are taken out of it: 1 where none comes near,
 * 0 where one covers the centre. Exact but for rounding: the disc is cut into upright slabs between straight and
 * round pieces, each with its area in closed form. For one straight strip right through it, that is the disc less
 * a circular segment.
 * @throws RangeError where the radius or a half-width is not above 0.
 */
export function shareLeft(centre: Point, radiusM: number, strips: readonly Strip[]): number {
  if (!(radiusM > 0)) throw new RangeError(`radiusM must be above 0, got ${radiusM}`);
  const flat = strips.find(({ halfWidthM }) => !(halfWidthM > 0));
  if (flat) throw new RangeError(`halfWidthM must be above 0, got ${flat.halfWidthM}`);
  const edges = edgesNear(centre, radiusM, strips);
  if (edges.length === 0) return 1;
  if (covered(edges, 0, 0)) return 0;
  const { straights, rounds } = outlineOf(edges);
  const rim: Round = { x: 0, y: 0, r: 1 };
  const curves = [rim, ...rounds].flatMap((round) => [halfCircle(round, 1), halfCircle(round, -1)]);
  for (const straight of straights) {
    const curve = straightCurve(straight);
    if (curve !== null) curves.push(curve);
  }
  const cells = connectedCells(stopsOf(straights, [rim, ...rounds]), curves, edges);
  const holds = ({ from, to, low, high }: Cell): boolean =>
    from <= 0 && to >= 0 && low.y(0) <= 0 && high.y(0) >= 0;
  const root = rootOf(cells, cells.findIndex(holds));
  let area = 0;
  cells.forEach((cell, i) => {
    if (rootOf(cells, i) !== root) return;
    area += cell.high.area(cell.from, cell.to) - cell.low.area(cell.from, cell.to);
  });
  return Math.min(1, area / Math.PI);
}
