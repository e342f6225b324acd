import type { Point } from './disc-less-strip.js';

const turn = ([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point): number =>
  (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);

function halfHull(sorted: readonly Point[]): Point[] {
  const half: Point[] = [];
  for (const point of sorted) {
    while (
      half.length > 1 &&
      turn(half[half.length - 2] as Point, half[half.length - 1] as Point, point) <= 0
    ) {
      half.pop();
    }
    half.push(point);
  }
  return half.slice(0, -1);
}

/** Corners of the smallest convex outline of some points, counter-clockwise (monotone chain). */
export function hullOf(points: readonly Point[]): Point[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  return [...halfHull(sorted), ...halfHull(sorted.reverse())];
}

/** True inside or on a convex outline that runs counter-clockwise. */
export function isInside(outline: readonly Point[], x: number, y: number): boolean {
  return outline.every((a, i) => turn(a, outline[(i + 1) % outline.length] as Point, [x, y]) >= 0);
}
