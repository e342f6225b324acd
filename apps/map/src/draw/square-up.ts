import { type LonLat, planeFor } from '@rootreach/core';
import { placeOf, type Spot, spotOf } from './flat.js';

type Way = 'along' | 'across';

const turned = ([x, y]: Spot, angle: number): Spot => [
  x * Math.cos(angle) - y * Math.sin(angle),
  x * Math.sin(angle) + y * Math.cos(angle),
];

const at = <T>(list: readonly T[], i: number): T => list[(i + list.length) % list.length] as T;

/** Direction of the longest edge: a house is squared to its longest wall. */
function mainDirection(spots: readonly Spot[]): number {
  const edges = spots.map(([x, y], i) => {
    const [nextX, nextY] = at(spots, i + 1);
    return { dx: nextX - x, dy: nextY - y, length: Math.hypot(nextX - x, nextY - y) };
  });
  const { dx, dy } = edges.reduce((long, one) => (one.length > long.length ? one : long));
  return Math.atan2(dy, dx);
}

const wayOf = ([x0, y0]: Spot, [x1, y1]: Spot): Way =>
  Math.abs(x1 - x0) >= Math.abs(y1 - y0) ? 'along' : 'across';

/** Corners between two edges that run the same way are no corners. */
function realCorners(spots: readonly Spot[]): readonly Spot[] {
  return spots.filter((spot, i) => wayOf(at(spots, i - 1), spot) !== wayOf(spot, at(spots, i + 1)));
}

/**
 * A ring with all its corners made right angles: each edge is laid along or across the longest one, through its
 * own middle. Three corners are taken as those of a rectangle. Null where nothing with four corners is left.
 * @param ring not closed
 */
export function squareUp(ring: readonly LonLat[]): readonly LonLat[] | null {
  const plane = planeFor(ring);
  const given = ring.map((place) => spotOf(plane, place));
  if (given.length < 3) return null;
  const [a, b, c] = given as [Spot, Spot, Spot];
  const four: readonly Spot[] =
    given.length === 3 ? [a, b, c, [a[0] + c[0] - b[0], a[1] + c[1] - b[1]]] : given;
  const angle = mainDirection(four);
  const corners = realCorners(four.map((spot) => turned(spot, -angle)));
  if (corners.length < 4) return null;
  const squared = corners.map((spot, i): Spot => {
    const [before, after] = [at(corners, i - 1), at(corners, i + 1)];
    const [level, upright] = wayOf(spot, after) === 'along' ? [after, before] : [before, after];
    return [(spot[0] + upright[0]) / 2, (spot[1] + level[1]) / 2];
  });
  return squared.map((spot) => placeOf(plane, turned(spot, angle)));
}
