import type { Point } from '../geometry/disc-less-strip.js';
import type { FallLimits, FallResult, LaidPipe } from '../model/fall.js';
import { layInvert } from './fall.js';
import { pathLength } from './path-stations.js';
import type { RouteEnd, RouteScene } from './scene.js';

/** Ground is looked at this often along a route, metres. */
const STEP_M = 1;
/** Outlets this near to the end of a path are its own, metres. */
const SAME_END_M = 0.5;

/** Limits of a route that ends at a place. */
export function limitsAt(scene: RouteScene, end: Point): FallLimits {
  const near = scene.to.find(({ x, y }) => Math.hypot(x - end[0], y - end[1]) < SAME_END_M);
  const ground = scene.ground.elevationAt(end[0], end[1]);
  const open = ground === null ? null : ground - scene.limits.minCoverM - scene.limits.pipeHeightM;
  const least = near === undefined ? open : near.leastInvertM;
  return least === null ? scene.limits : { ...scene.limits, outlet: { leastM: least } };
}

export const outletLeast = (end: RouteEnd | undefined): number => end?.leastInvertM ?? -Infinity;

/** Ground under a path, at its vertices and about every metre. */
export function groundUnder(
  { ground }: RouteScene,
  points: readonly Point[],
): { stationM: number[]; groundM: (number | null)[] } {
  const stationM = [0];
  const places: Point[] = [points[0] as Point];
  let s = 0;
  for (let i = 0; i + 1 < points.length; i++) {
    const [a, b] = [points[i], points[i + 1]] as [Point, Point];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const parts = Math.max(1, Math.ceil(length / STEP_M - 1e-9));
    for (let k = 1; k <= parts; k++) {
      const next = s + (length * k) / parts;
      if (next - (stationM.at(-1) as number) < 1e-6) continue;
      stationM.push(next);
      places.push([a[0] + ((b[0] - a[0]) * k) / parts, a[1] + ((b[1] - a[1]) * k) / parts]);
    }
    s += length;
  }
  return { stationM, groundM: places.map(([x, y]) => ground.elevationAt(x, y)) };
}

/** The pipe laid under a path; null where nothing is known of the ground or the path has no length. */
export function fallOf(scene: RouteScene, points: readonly Point[]): FallResult | null {
  const { kind } = scene.ground.basis;
  if (kind === 'none' || kind === 'one-level' || pathLength(points) < 1e-3) return null;
  return layInvert(groundUnder(scene, points), limitsAt(scene, points.at(-1) as Point));
}

/** Depth from the ground to the invert at a station: of the pipe as laid, else the least. */
export function depthAlong(scene: RouteScene, laid: LaidPipe | null): (stationM: number) => number {
  const least = scene.limits.minCoverM + scene.limits.pipeHeightM;
  if (laid === null) return () => least;
  const { stationM, groundM, invertM } = laid;
  return (s) => {
    let i = 1;
    while (i < stationM.length - 1 && (stationM[i] as number) < s) i++;
    const [s0, s1] = [stationM[i - 1] as number, stationM[i] as number];
    const t = s1 > s0 ? Math.min(1, Math.max(0, (s - s0) / (s1 - s0))) : 0;
    const at = (k: number): number => (groundM[k] as number) - (invertM[k] as number);
    return at(i - 1) + t * (at(i) - at(i - 1));
  };
}
