import type { Point } from '../geometry/disc-less-strip.js';
import type { Plane } from '../geometry/plane.js';
import type { LonLat, Obstacle, Site } from '../model/site.js';
import { routeNumbers } from '../tables/route-numbers.js';
import type { EndDisc, Keepout, PricedArea } from './cost-field.js';
import { distanceToEdges, type Edges, holds, type Shape, shapeOf, shapeOfEdges } from './shapes.js';

/** A buried service in the plane of a route. */
export interface Utility {
  readonly id: string;
  readonly name: string | null;
  readonly shape: Shape;
}

/** What lies on top of the ground besides lawn. */
export interface SurfaceArea {
  readonly id: string;
  readonly surface: 'bed' | 'paving';
  readonly shape: Shape;
  /** About how wide it is to cross, metres: twice the area over the outline. */
  readonly widthM: number;
}

/** Obstacles of a site as routes see them. */
export interface Obstacles {
  readonly keepouts: readonly Keepout[];
  readonly surfaces: readonly SurfaceArea[];
  readonly utilities: readonly Utility[];
}

const pathsOf = ({ shape }: Obstacle): readonly (readonly LonLat[])[] =>
  shape.type === 'area' ? shape.rings : [shape.path];

/** Ends of a lot line drawn this near to each other are the same corner, metres. */
const CLOSES_M = 1;

/** A lot line that comes back to its start holds everything inside; an open one is a line not to cross. */
function closedShape(obstacle: Obstacle, plane: Plane): Shape {
  const shape = shapeOf(pathsOf(obstacle), plane, obstacle.shape.type === 'area');
  const [first] = shape.paths;
  if (shape.closed || first === undefined || first.x.length < 4) return shape;
  const last = first.x.length - 1;
  const gap = Math.hypot(
    (first.x[last] as number) - (first.x[0] as number),
    (first.y[last] as number) - (first.y[0] as number),
  );
  if (gap > CLOSES_M) return shape;
  const ring: Edges = {
    x: Float64Array.from([...first.x, first.x[0] as number]),
    y: Float64Array.from([...first.y, first.y[0] as number]),
  };
  return shapeOfEdges([ring], true);
}

/** Room about the ends of a route that stand nearer to a wall than its clearance. */
function endsAtWall(shape: Shape, ends: readonly Point[], clearanceM: number): EndDisc[] {
  return ends
    .filter(([x, y]) => distanceToEdges(shape, x, y) < clearanceM)
    .map(([x, y]) => ({ x, y, radiusM: routeNumbers.endRoomM.value }));
}

/** An outlet given beyond the lot line: the way out to it. */
function endsBeyond(shape: Shape, ends: readonly Point[]): EndDisc[] {
  return ends
    .filter(([x, y]) => !holds(shape, x, y))
    .map(([x, y]) => ({
      x,
      y,
      radiusM: distanceToEdges(shape, x, y) + routeNumbers.wallClearanceM.value,
    }));
}

function keepoutOf(obstacle: Obstacle, plane: Plane, ends: readonly Point[]): Keepout | null {
  const { id, type } = obstacle;
  const clearanceM = routeNumbers.wallClearanceM.value;
  if (type === 'boundary') {
    const shape = closedShape(obstacle, plane);
    return shape.closed
      ? { id, of: 'outside', shape, clearanceM: 0, ends: endsBeyond(shape, ends) }
      : { id, of: 'edges', shape, clearanceM: 0, ends: [] };
  }
  if (type !== 'building' && type !== 'pool' && type !== 'wall') return null;
  const closed = obstacle.shape.type === 'area';
  const shape = shapeOf(pathsOf(obstacle), plane, closed);
  return {
    id,
    of: closed ? 'inside' : 'edges',
    shape,
    clearanceM,
    ends: endsAtWall(shape, ends, clearanceM),
  };
}

function areaM2({ paths }: Shape): number {
  let twice = 0;
  for (const { x, y } of paths) {
    for (let i = 0; i + 1 < x.length; i++) {
      twice += (x[i] as number) * (y[i + 1] as number) - (x[i + 1] as number) * (y[i] as number);
    }
  }
  return Math.abs(twice) / 2;
}

function outlineM({ paths }: Shape): number {
  let sum = 0;
  for (const { x, y } of paths) {
    for (let i = 0; i + 1 < x.length; i++) {
      sum += Math.hypot((x[i + 1] as number) - (x[i] as number), (y[i + 1] as number) - (y[i] as number));
    }
  }
  return sum;
}

function surfaceOf(id: string, surface: 'bed' | 'paving', shape: Shape): SurfaceArea {
  return { id, surface, shape, widthM: (2 * areaM2(shape)) / Math.max(1e-6, outlineM(shape)) };
}

/** Sorts the obstacles of a site by what they mean to a route with these ends. */
export function obstaclesOf(
  site: Site,
  plane: Plane,
  ends: readonly Point[],
  beds: readonly (readonly LonLat[])[],
): Obstacles {
  const keepouts = site.obstacles.flatMap((obstacle) => keepoutOf(obstacle, plane, ends) ?? []);
  const surfaces = site.obstacles
    .filter(({ type, shape }) => type === 'paving' && shape.type === 'area')
    .map((obstacle) => surfaceOf(obstacle.id, 'paving', shapeOf(pathsOf(obstacle), plane, true)));
  const planted = beds.map((ring, i) => surfaceOf(`bed-${i + 1}`, 'bed', shapeOf([ring], plane, true)));
  const utilities = site.obstacles
    .filter(({ type }) => type === 'utility')
    .map((obstacle) => ({
      id: obstacle.id,
      name: obstacle.name,
      shape: shapeOf(pathsOf(obstacle), plane, false),
    }));
  return { keepouts, surfaces: [...surfaces, ...planted], utilities };
}

/**
 * Strips along a utility in which a metre costs so much more that crossing square costs `each`, and slanting or
 * running along it more.
 */
export function utilityStrips({ id, shape }: Utility, each: number): PricedArea[] {
  const half = routeNumbers.utilityHandDigM.value;
  const strips: PricedArea[] = [];
  for (const { x, y } of shape.paths) {
    for (let i = 0; i + 1 < x.length; i++) {
      const [ax, ay, bx, by] = [x[i], y[i], x[i + 1], y[i + 1]] as [number, number, number, number];
      const length = Math.hypot(bx - ax, by - ay);
      if (length === 0) continue;
      const [ox, oy] = [(-(by - ay) * half) / length, ((bx - ax) * half) / length];
      const ring: Edges = {
        x: Float64Array.of(ax + ox, bx + ox, bx - ox, ax - ox, ax + ox),
        y: Float64Array.of(ay + oy, by + oy, by - oy, ay - oy, ay + oy),
      };
      strips.push({ id, shape: shapeOfEdges([ring], true), morePerM: each / (2 * half), layer: 'utility' });
    }
  }
  return strips;
}
