import type { RouteGrid } from './grid.js';
import { overNodes } from './grid.js';
import { outletLeast } from './route-profile.js';
import type { RouteScene } from './scene.js';
import type { SearchFall, Target } from './search.js';

/** Cover is not asked for within this share of the bare stretch before an outlet, in a straight. */
const BARE_SHARE = 0.8;

/** The lattice sees the ground only at its nodes: so much is kept in hand, metres. */
export const IN_HAND_M = 0.03;

/** Fall as the search needs it; null where too little is known of the ground. */
export function searchFallOf(scene: RouteScene, grid: RouteGrid): SearchFall | null {
  const { kind } = scene.ground.basis;
  if (kind === 'none' || kind === 'one-level') return null;
  const { minCoverM, pipeHeightM, maxDepthM, minFall, bareBeforeOutletM = 0, source } = scene.limits;
  const leastDepthM = minCoverM + pipeHeightM;
  const bareM = BARE_SHARE * bareBeforeOutletM;
  const groundM = overNodes(grid, (x, y) => scene.ground.elevationAt(x, y) ?? Number.NaN);
  let node = 0;
  const capM = overNodes(grid, (x, y) => {
    const ground = groundM[node++] as number;
    const bare = scene.to.some((end) => Math.hypot(x - end.x, y - end.y) < bareM);
    return bare ? ground : ground - leastDepthM;
  });
  const at = scene.ground.elevationAt(scene.from[0], scene.from[1]);
  return {
    groundM,
    capM,
    floorM: groundM.map((ground) => ground - maxDepthM),
    minFall,
    startM: Math.min(source?.mostM ?? Infinity, at === null ? Infinity : at - leastDepthM),
    outletM: (target: Target) => outletLeast(scene.to.find(({ x, y }) => x === target.x && y === target.y)),
    leastDepthM,
    deeperPerM: scene.costs.deeperPerM,
  };
}

/**
 * The same fall with so much forgiven: by how much the pipe may lie too deep or come out too low. Below 0 that much is
 * kept in hand.
 */
export const forgiving = (fall: SearchFall, byM: number): SearchFall => ({
  ...fall,
  floorM: fall.floorM.map((floor) => floor - byM),
  outletM: (target) => fall.outletM(target) - byM,
});
