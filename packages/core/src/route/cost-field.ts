import { chordOf } from '../geometry/chord.js';
import { type RouteGrid, valueAt } from './grid.js';
import {
  addCrossings,
  boxMeets,
  comesNear,
  distance2To,
  distanceToEdges,
  holds,
  type Shape,
} from './shapes.js';

/** Ground that no route may enter. */
export interface Keepout {
  readonly id: string;
  /** `outside`: what lies beyond the outline; `edges`: the outline or path alone. */
  readonly of: 'inside' | 'outside' | 'edges';
  readonly shape: Shape;
  readonly clearanceM: number;
  /** Ends of the route that it does not hold for, so that a pipe may begin at a wall or come out at a curb. */
  readonly ends: readonly EndDisc[];
}

/** A circle that no route may enter: the no-dig circle of a tree. */
export interface KeepoutDisc {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly radiusM: number;
}

/** Ground where a metre costs more. */
export interface PricedArea {
  readonly id: string;
  readonly shape: Shape;
  readonly morePerM: number;
  /** Areas of one layer do not add up where they overlap: the dearest counts. */
  readonly layer: 'surface' | 'utility';
}

/** A circle in which a metre costs more: of several that overlap the dearest counts. */
export interface PricedDisc extends KeepoutDisc {
  readonly morePerM: number;
}

/** About an end of the route: near it a wall's clearance does not hold, but no route goes through the wall. */
export interface EndDisc {
  readonly x: number;
  readonly y: number;
  readonly radiusM: number;
}

/** What a route is weighed by, in one local plane. */
export interface FieldParts {
  readonly grid: RouteGrid;
  /** A metre of route on open lawn. */
  readonly basePerM: number;
  readonly areas: readonly PricedArea[];
  readonly keepouts: readonly Keepout[];
  readonly discs: readonly KeepoutDisc[];
  readonly pricedDiscs?: readonly PricedDisc[];
  /** More a metre at each node, smooth from node to node: root trouble and harm to trees. */
  readonly smooth: Float64Array;
}

/** Cost of running a pipe anywhere on the ground, in currency. */
export interface CostField extends FieldParts {
  /** Currency a metre at each node. */
  readonly perM: Float64Array;
  /** 1 where a route may not be: nodes and the places half-way between them. */
  readonly blocked: Uint8Array;
  /** No metre is cheaper. */
  readonly leastPerM: number;
  /** Cost of a straight from a to b; Infinity where it enters what is forbidden. */
  readonly between: (ax: number, ay: number, bx: number, by: number) => number;
  /** True where the straight from a to b enters nothing that is forbidden. */
  readonly clear: (ax: number, ay: number, bx: number, by: number) => boolean;
}

/** A straight less its parts near the ends of the route. */
function awayFromEnds(
  ends: readonly EndDisc[],
  ax: number,
  ay: number,
  bx: number,
  by: number,
): [from: number, to: number][] {
  let parts: [number, number][] = [[0, 1]];
  for (const { x, y, radiusM } of ends) {
    const chord = chordOf(ax, ay, bx, by, x, y, radiusM);
    if (chord === null) continue;
    parts = parts.flatMap(([from, to]): [number, number][] => {
      const left: [number, number][] = [];
      if (chord[0] > from) left.push([from, Math.min(to, chord[0])]);
      if (chord[1] < to) left.push([Math.max(from, chord[1]), to]);
      return left;
    });
  }
  return parts;
}

const nearAnEnd = (ends: readonly EndDisc[], x: number, y: number): boolean =>
  ends.some((end) => (x - end.x) ** 2 + (y - end.y) ** 2 < end.radiusM ** 2);

/** An end may stand on the wall itself: within so far of it nothing is asked. */
const PIN_M = 0.02;

/** True where the straight goes through the outline or path, but for at the very ends of the route. */
function goesThrough(keepout: Keepout, ax: number, ay: number, bx: number, by: number): boolean {
  const pins = keepout.ends.map(({ x, y }) => ({ x, y, radiusM: PIN_M }));
  return awayFromEnds(pins, ax, ay, bx, by).some(([from, to]) => {
    const px = ax + from * (bx - ax);
    const py = ay + from * (by - ay);
    const qx = ax + to * (bx - ax);
    const qy = ay + to * (by - ay);
    if (comesNear(keepout.shape, px, py, qx, qy, 0)) return true;
    return keepout.of === 'inside' && holds(keepout.shape, (px + qx) / 2, (py + qy) / 2);
  });
}

/** True where the straight enters this keepout. */
export function enters(keepout: Keepout, ax: number, ay: number, bx: number, by: number): boolean {
  const { of, shape, clearanceM, ends } = keepout;
  if (of !== 'outside' && !boxMeets(shape, ax, ay, bx, by, clearanceM)) return false;
  const near = comesNear(shape, ax, ay, bx, by, clearanceM);
  const inside = holds(shape, ax, ay);
  if (!near && (of !== 'outside' || inside)) return of === 'inside' && inside;
  if (ends.length === 0) return true;
  for (const [from, to] of awayFromEnds(ends, ax, ay, bx, by)) {
    const px = ax + from * (bx - ax);
    const py = ay + from * (by - ay);
    const qx = ax + to * (bx - ax);
    const qy = ay + to * (by - ay);
    if (comesNear(shape, px, py, qx, qy, clearanceM)) return true;
    if (of === 'outside' && !holds(shape, px, py)) return true;
  }
  return of !== 'outside' && goesThrough(keepout, ax, ay, bx, by);
}

/** True where the straight enters the circle; a hair of slack lets one that touches it be turned about it. */
export function entersDisc(
  { x, y, radiusM }: KeepoutDisc,
  ax: number,
  ay: number,
  bx: number,
  by: number,
): boolean {
  return distance2To(x, y, ax, ay, bx, by) < radiusM * radiusM * (1 - 1e-9);
}

/** True where a route may not be at a place. */
function isBlocked(parts: FieldParts, x: number, y: number): boolean {
  for (const disc of parts.discs) {
    if ((x - disc.x) ** 2 + (y - disc.y) ** 2 < disc.radiusM ** 2) return true;
  }
  for (const { of, shape, clearanceM, ends } of parts.keepouts) {
    const inside = holds(shape, x, y);
    if (of === 'inside' && inside) return true;
    if (nearAnEnd(ends, x, y)) continue;
    if (of === 'outside' && !inside) return true;
    if (!boxMeets(shape, x, y, x, y, clearanceM)) continue;
    if (distanceToEdges(shape, x, y) < clearanceM) return true;
  }
  return false;
}

function blockedMask(parts: FieldParts): Uint8Array {
  const { x0, y0, cellM, columns, rows } = parts.grid;
  const wide = 2 * columns - 1;
  const mask = new Uint8Array(wide * (2 * rows - 1));
  for (let k = 0; k < 2 * rows - 1; k++) {
    for (let i = 0; i < wide; i++) {
      if (isBlocked(parts, x0 + (i * cellM) / 2, y0 + (k * cellM) / 2)) mask[k * wide + i] = 1;
    }
  }
  return mask;
}

type Priced = Pick<FieldParts, 'areas' | 'pricedDiscs'>;

/** What areas and circles at a place add to a metre. */
function moreAt({ areas, pricedDiscs = [] }: Priced, x: number, y: number): number {
  let surface = 0;
  let utility = 0;
  let disc = 0;
  for (const { shape, morePerM, layer } of areas) {
    if (morePerM <= (layer === 'surface' ? surface : utility) || !holds(shape, x, y)) continue;
    if (layer === 'surface') surface = morePerM;
    else utility = morePerM;
  }
  for (const { x: cx, y: cy, radiusM, morePerM } of pricedDiscs) {
    if (morePerM > disc && (x - cx) ** 2 + (y - cy) ** 2 < radiusM * radiusM) disc = morePerM;
  }
  return surface + utility + disc;
}

/** Places about a node, in cells, that stand for what lies round it. */
const ABOUT = [
  [-0.25, -0.25],
  [0.25, -0.25],
  [-0.25, 0.25],
  [0.25, 0.25],
] as const;

/** What areas and circles add to a metre about each node: a mean, so that their borders fall between the nodes. */
function moreAtNodes({ grid, areas, pricedDiscs = [] }: FieldParts): Float64Array {
  const { x0, y0, cellM, columns, rows } = grid;
  const more = new Float64Array(columns * rows);
  for (let k = 0, at = 0; k < rows; k++) {
    for (let i = 0; i < columns; i++, at++) {
      const [x, y] = [x0 + i * cellM, y0 + k * cellM];
      const near = {
        areas: areas.filter(({ shape }) => boxMeets(shape, x, y, x, y, cellM)),
        pricedDiscs: pricedDiscs.filter((d) => (x - d.x) ** 2 + (y - d.y) ** 2 < (d.radiusM + cellM) ** 2),
      };
      if (near.areas.length === 0 && near.pricedDiscs.length === 0) continue;
      for (const [u, v] of ABOUT)
        more[at] = (more[at] as number) + moreAt(near, x + u * cellM, y + v * cellM) / 4;
    }
  }
  return more;
}

/** What areas and circles add to a straight: exact, cut wherever it crosses an outline. */
function moreAlong(priced: Priced, ax: number, ay: number, bx: number, by: number): number {
  const areas = priced.areas.filter(({ shape }) => boxMeets(shape, ax, ay, bx, by, 0));
  const pricedDiscs = (priced.pricedDiscs ?? []).filter(
    ({ x, y, radiusM }) => distance2To(x, y, ax, ay, bx, by) < radiusM * radiusM,
  );
  if (areas.length === 0 && pricedDiscs.length === 0) return 0;
  const stops = [0, 1];
  for (const { shape } of areas) addCrossings(shape, ax, ay, bx, by, stops);
  for (const { x, y, radiusM } of pricedDiscs) {
    const chord = chordOf(ax, ay, bx, by, x, y, radiusM);
    if (chord !== null) stops.push(chord[0], chord[1]);
  }
  stops.sort((a, b) => a - b);
  const met = { areas, pricedDiscs };
  let sum = 0;
  for (let i = 0; i + 1 < stops.length; i++) {
    const from = stops[i] as number;
    const to = stops[i + 1] as number;
    if (to <= from) continue;
    const at = (from + to) / 2;
    sum += (to - from) * moreAt(met, ax + at * (bx - ax), ay + at * (by - ay));
  }
  return sum * Math.hypot(bx - ax, by - ay);
}

/** Two-point Gauss-Legendre rule (Abramowitz & Stegun 1964, table 25.4). */
const LOW = 0.5 - Math.sqrt(3) / 6;

/** Roots and harm change over metres: the rule need not be laid closer. */
const LEAST_PIECE_M = 0.5;

/** Integral of the smooth part along a straight. */
function smoothAlong(
  parts: FieldParts,
  ax: number,
  ay: number,
  bx: number,
  by: number,
  length: number,
): number {
  const { grid, smooth } = parts;
  const pieces = Math.max(1, Math.ceil(length / Math.max(LEAST_PIECE_M, grid.cellM)));
  let sum = 0;
  for (let i = 0; i < pieces; i++) {
    for (const at of [(i + LOW) / pieces, (i + 1 - LOW) / pieces]) {
      sum += valueAt(grid, smooth, ax + at * (bx - ax), ay + at * (by - ay));
    }
  }
  return (sum * length) / (2 * pieces);
}

/**
 * Puts together what a route is weighed by. Outlines, circles and prices of areas are exact along any straight; the
 * smooth part is taken between the nodes of the lattice.
 * @param blocked where a route may not be, from a field with the same keepouts and discs.
 */
export function costFieldOf(parts: FieldParts, blocked: Uint8Array = blockedMask(parts)): CostField {
  const { basePerM, keepouts, discs, smooth } = parts;
  const more = moreAtNodes(parts);
  const perM = smooth.map((metre, at) => basePerM + metre + (more[at] as number));
  const leastSmooth = smooth.reduce((least, metre) => Math.min(least, metre), Infinity);
  const clear = (ax: number, ay: number, bx: number, by: number): boolean => {
    for (const disc of discs) if (entersDisc(disc, ax, ay, bx, by)) return false;
    for (const keepout of keepouts) if (enters(keepout, ax, ay, bx, by)) return false;
    return true;
  };
  const between = (ax: number, ay: number, bx: number, by: number): number => {
    const length = Math.hypot(bx - ax, by - ay);
    if (length === 0) return 0;
    if (!clear(ax, ay, bx, by)) return Infinity;
    return length * basePerM + moreAlong(parts, ax, ay, bx, by) + smoothAlong(parts, ax, ay, bx, by, length);
  };
  return { ...parts, perM, blocked, leastPerM: basePerM + leastSmooth, between, clear };
}
