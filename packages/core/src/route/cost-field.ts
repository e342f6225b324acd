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
export function entersDisc({ x, y, radiusM }: KeepoutDisc, ax: number, ay: number, bx: number, by: number): boolean {
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

/** What the areas at a place add to a metre. */
function areasAt(areas: readonly PricedArea[], x: number, y: number): number {
  let surface = 0;
  let utility = 0;
  for (const { shape, morePerM, layer } of areas) {
    if (morePerM <= (layer === 'surface' ? surface : utility) || !holds(shape, x, y)) continue;
    if (layer === 'surface') surface = morePerM;
    else utility = morePerM;
  }
  return surface + utility;
}

/** What the areas add to a straight: exact, cut wherever it crosses an outline. */
function areasAlong(areas: readonly PricedArea[], ax: number, ay: number, bx: number, by: number): number {
  const met = areas.filter(({ shape }) => boxMeets(shape, ax, ay, bx, by, 0));
  if (met.length === 0) return 0;
  const stops = [0, 1];
  for (const { shape } of met) addCrossings(shape, ax, ay, bx, by, stops);
  stops.sort((a, b) => a - b);
  let sum = 0;
  for (let i = 0; i + 1 < stops.length; i++) {
    const from = stops[i] as number;
    const to = stops[i + 1] as number;
    if (to <= from) continue;
    const at = (from + to) / 2;
    sum += (to - from) * areasAt(met, ax + at * (bx - ax), ay + at * (by - ay));
  }
  return sum * Math.hypot(bx - ax, by - ay);
}

/** Two-point Gauss-Legendre rule (Abramowitz & Stegun 1964, table 25.4). */
const LOW = 0.5 - Math.sqrt(3) / 6;

/** Roots and harm change over metres: the rule need not be laid closer. */
const LEAST_PIECE_M = 0.5;

/** Integral of the smooth part along a straight. */
function smoothAlong(parts: FieldParts, ax: number, ay: number, bx: number, by: number, length: number): number {
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
  const { grid, basePerM, areas, keepouts, discs, smooth } = parts;
  const perM = new Float64Array(smooth.length);
  let leastSmooth = Infinity;
  for (let k = 0, at = 0; k < grid.rows; k++) {
    for (let i = 0; i < grid.columns; i++, at++) {
      const more = areas.length === 0 ? 0 : areasAt(areas, grid.x0 + i * grid.cellM, grid.y0 + k * grid.cellM);
      perM[at] = basePerM + (smooth[at] as number) + more;
      leastSmooth = Math.min(leastSmooth, smooth[at] as number);
    }
  }
  const clear = (ax: number, ay: number, bx: number, by: number): boolean => {
    for (const disc of discs) if (entersDisc(disc, ax, ay, bx, by)) return false;
    for (const keepout of keepouts) if (enters(keepout, ax, ay, bx, by)) return false;
    return true;
  };
  const between = (ax: number, ay: number, bx: number, by: number): number => {
    const length = Math.hypot(bx - ax, by - ay);
    if (length === 0) return 0;
    if (!clear(ax, ay, bx, by)) return Infinity;
    return length * basePerM + areasAlong(areas, ax, ay, bx, by) + smoothAlong(parts, ax, ay, bx, by, length);
  };
  return { ...parts, perM, blocked, leastPerM: basePerM + leastSmooth, between, clear };
}
