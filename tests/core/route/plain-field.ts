import { type CostField, costFieldOf, type FieldParts } from '../../../packages/core/src/route/cost-field.js';
import { gridOver, overNodes } from '../../../packages/core/src/route/grid.js';
import { type Shape, shapeOfEdges } from '../../../packages/core/src/route/shapes.js';

/** An outline in plane metres, closed for the caller. */
export function outline(...corners: readonly (readonly [number, number])[]): Shape {
  const ring = [...corners, corners[0] as readonly [number, number]];
  return shapeOfEdges(
    [{ x: Float64Array.from(ring, ([x]) => x), y: Float64Array.from(ring, ([, y]) => y) }],
    true,
  );
}

export function rectangle(west: number, south: number, east: number, north: number): Shape {
  return outline([west, south], [east, south], [east, north], [west, north]);
}

/** An open path in plane metres. */
export function openPath(...points: readonly (readonly [number, number])[]): Shape {
  return shapeOfEdges(
    [{ x: Float64Array.from(points, ([x]) => x), y: Float64Array.from(points, ([, y]) => y) }],
    false,
  );
}

export interface PlainParts extends Partial<Omit<FieldParts, 'grid' | 'smooth'>> {
  readonly cellM?: number;
  readonly sizeM?: number;
  readonly smooth?: (x: number, y: number) => number;
}

/** A square lot from (0, 0) on, where a metre costs 1. */
export function plainField(parts: PlainParts = {}): CostField {
  const { sizeM = 30, cellM = 0.5 } = parts;
  const grid = gridOver(0, 0, sizeM, sizeM, cellM);
  return costFieldOf({
    basePerM: 1,
    areas: [],
    keepouts: [],
    discs: [],
    ...parts,
    grid,
    smooth: overNodes(grid, parts.smooth ?? (() => 0)),
  });
}

export function lengthOf(points: readonly (readonly [number, number])[]): number {
  let sum = 0;
  for (let i = 0; i + 1 < points.length; i++) {
    const [a, b] = [points[i], points[i + 1]] as [readonly [number, number], readonly [number, number]];
    sum += Math.hypot(b[0] - a[0], b[1] - a[1]);
  }
  return sum;
}
