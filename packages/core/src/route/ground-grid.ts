import { type Plane, xOf, yOf } from '../geometry/plane.js';
import type { ElevationGrid } from '../model/ground.js';
import type { LonLat } from '../model/site.js';
import type { GroundSurface } from './ground-surface.js';

type Vector = readonly [x: number, y: number];

/** Corner cells in plane metres: a place at shares u east and v south is o + u a + v b + u v c. */
interface Frame {
  readonly o: Vector;
  readonly a: Vector;
  readonly b: Vector;
  readonly c: Vector;
}

function frameOf({ corners }: ElevationGrid, plane: Plane): Frame {
  const at = ([lon, lat]: LonLat): Vector => [xOf(plane, lon), yOf(plane, lat)];
  const o = at(corners.northWest);
  const east = at(corners.northEast);
  const south = at(corners.southWest);
  const far = at(corners.southEast);
  return {
    o,
    a: [east[0] - o[0], east[1] - o[1]],
    b: [south[0] - o[0], south[1] - o[1]],
    c: [far[0] - east[0] - south[0] + o[0], far[1] - east[1] - south[1] + o[1]],
  };
}

/** Newton steps for shares u, v of a place: the twist is small, so three are ample. */
const STEPS = 4;

function sharesAt({ o, a, b, c }: Frame, x: number, y: number): Vector {
  let u = 0.5;
  let v = 0.5;
  for (let step = 0; step < STEPS; step++) {
    const fx = o[0] + u * a[0] + v * b[0] + u * v * c[0] - x;
    const fy = o[1] + u * a[1] + v * b[1] + u * v * c[1] - y;
    const ux = a[0] + v * c[0];
    const uy = a[1] + v * c[1];
    const vx = b[0] + u * c[0];
    const vy = b[1] + u * c[1];
    const det = ux * vy - uy * vx;
    u -= (fx * vy - fy * vx) / det;
    v -= (ux * fy - uy * fx) / det;
  }
  return [u, v];
}

/** Cell and share of the next one at a place along a row of `count` cells; null outside their outer edges. */
function stepAt(at: number, count: number): { readonly cell: number; readonly share: number } | null {
  if (!(at >= -0.5 && at <= count - 0.5)) return null;
  const inside = Math.min(count - 1, Math.max(0, at));
  const cell = Math.min(Math.floor(inside), count - 2);
  return { cell, share: inside - cell };
}

/** A cell counts from this share on: less is rounding. */
const SLIGHT = 1e-4;

/**
 * Ground between the middles of the cells of a grid, straight both ways (bilinear); null outside it and where a
 * cell that counts is not known.
 * @throws RangeError where the grid has fewer than two rows or columns, or not all of its heights.
 */
export function groundFromGrid(grid: ElevationGrid, plane: Plane): GroundSurface {
  const { columns, rows, elevationsM } = grid;
  if (columns < 2 || rows < 2 || elevationsM.length !== columns * rows) {
    throw new RangeError(
      `grid must have 2 x 2 cells or more, got ${columns} x ${rows}, ${elevationsM.length} heights`,
    );
  }
  const frame = frameOf(grid, plane);
  const elevationAt = (x: number, y: number): number | null => {
    const [u, v] = sharesAt(frame, x, y);
    const column = stepAt(u * (columns - 1), columns);
    const row = stepAt(v * (rows - 1), rows);
    if (column === null || row === null) return null;
    let sum = 0;
    let weights = 0;
    for (const [down, downShare] of [
      [0, 1 - row.share],
      [1, row.share],
    ] as const) {
      for (const [right, rightShare] of [
        [0, 1 - column.share],
        [1, column.share],
      ] as const) {
        const weight = downShare * rightShare;
        if (weight < SLIGHT) continue;
        const height = elevationsM[(row.cell + down) * columns + column.cell + right] ?? null;
        if (height === null) return null;
        sum += weight * height;
        weights += weight;
      }
    }
    return sum / weights;
  };
  const step = (side: Vector, count: number): number => Math.hypot(side[0], side[1]) / (count - 1);
  const cellM = (step(frame.a, columns) + step(frame.b, rows)) / 2;
  return { basis: { kind: 'grid', cellM }, elevationAt };
}
