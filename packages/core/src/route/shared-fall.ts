import type { NetworkLine } from '../model/network.js';
import type { NetworkFall } from '../model/network-fall.js';
import type { NoSharedRoute, SharedRouteRequest } from '../model/shared-route.js';
import { outsideDiameterM } from '../quantities/outside-diameter.js';
import { layNetwork } from './network-fall.js';
import { pointOnPath } from './path-stations.js';
import { lonLatAt } from './route-line.js';
import { groundUnder } from './route-profile.js';
import type { RouteScene } from './scene.js';
import type { SharedEnds } from './shared-ends.js';

/** Pipes of all lines; null where too little is known of the ground. */
export function laidLines(
  scene: RouteScene,
  request: SharedRouteRequest,
  ends: SharedEnds,
  lines: readonly NetworkLine[],
): NetworkFall | null {
  const { kind } = scene.ground.basis;
  if (kind === 'none' || kind === 'one-level') return null;
  const bounds = [
    ...ends.outlets.map(({ id }, i) => [id, { leastM: scene.to[i]?.leastInvertM ?? undefined }] as const),
    ...ends.sources.map(({ id }, i) => [id, { mostM: request.from[i]?.invertMostM }] as const),
  ];
  const known = bounds.filter(([, bound]) => Object.values(bound).some((value) => value !== undefined));
  const { minFall, minCoverM, maxDepthM, bareBeforeOutletM } = scene.limits;
  return layNetwork(
    lines.map((line) => ({
      id: line.id,
      from: line.from,
      to: line.to,
      ...groundUnder(scene, line.points),
      pipeHeightM: outsideDiameterM(scene.request.pipe.material, line.sizeM),
    })),
    {
      minFall,
      minCoverM,
      maxDepthM,
      ...(bareBeforeOutletM === undefined ? {} : { bareBeforeOutletM }),
      ends: Object.fromEntries(known) as Record<string, { leastM: number } | { mostM: number }>,
    },
  );
}

/** Why lines from several sources cannot fall. */
export function noFallOf(
  scene: RouteScene,
  lines: readonly NetworkLine[],
  fall: Extract<NetworkFall, { kind: 'impossible' }>,
): NoSharedRoute {
  const line = lines.find(({ id }) => id === fall.line) as NetworkLine;
  return {
    reason: 'no-fall',
    shortfallM: fall.shortfallM,
    line: fall.line,
    at: lonLatAt(scene.plane, pointOnPath(line.points, fall.atM)),
    remedies: fall.remedies,
  };
}
