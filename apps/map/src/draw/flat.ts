import { type LonLat, lonLatOf, type Plane, planeFor, xOf, yOf } from '@rootreach/core';

/** A place in metres east and north of a plane's origin. */
export type Spot = readonly [x: number, y: number];

export const lonLat = (at: readonly number[]): LonLat => [at[0] ?? 0, at[1] ?? 0];

export const spotOf = (plane: Plane, at: LonLat): Spot => [xOf(plane, at[0]), yOf(plane, at[1])];

export const placeOf = (plane: Plane, [x, y]: Spot): LonLat => lonLatOf(plane, x, y);

/** Metres between two places, in the same plane as the model measures lines in. */
export function distanceM(a: LonLat, b: LonLat): number {
  const plane = planeFor([a, b]);
  const [ax, ay] = spotOf(plane, a);
  const [bx, by] = spotOf(plane, b);
  return Math.hypot(bx - ax, by - ay);
}

/** Length of each leg of a path, metres. */
export function legsM(path: readonly LonLat[]): number[] {
  const plane = planeFor(path);
  const spots = path.map((at) => spotOf(plane, at));
  return spots.slice(1).map(([x, y], i) => {
    const [fromX, fromY] = spots[i] as Spot;
    return Math.hypot(x - fromX, y - fromY);
  });
}

export const lengthM = (path: readonly LonLat[]): number =>
  path.length < 2 ? 0 : legsM(path).reduce((sum, leg) => sum + leg, 0);

/** Area inside a ring that is not closed, square metres. */
export function areaM2(ring: readonly LonLat[]): number {
  if (ring.length < 3) return 0;
  const plane = planeFor(ring);
  const spots = ring.map((at) => spotOf(plane, at));
  const twice = spots.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = spots[(i + 1) % spots.length] as Spot;
    return sum + x * nextY - nextX * y;
  }, 0);
  return Math.abs(twice) / 2;
}

/** The place so many metres further east and north. */
export function shifted(at: LonLat, eastM: number, northM: number): LonLat {
  const plane = planeFor([at]);
  return placeOf(plane, [eastM, northM]);
}

/** Nearest place on the leg from `a` to `b`, and how far it is. */
export function nearestOnLeg(at: Spot, a: Spot, b: Spot): { readonly spot: Spot; readonly distance: number } {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : ((at[0] - a[0]) * dx + (at[1] - a[1]) * dy) / square;
  const t = Math.min(1, Math.max(0, share));
  const spot: Spot = [a[0] + t * dx, a[1] + t * dy];
  return { spot, distance: Math.hypot(at[0] - spot[0], at[1] - spot[1]) };
}
