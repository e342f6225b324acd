import type { NetworkLine, NetworkOutlet, NetworkSource, PlannedNetwork } from '../model/network.js';
import type { NetworkFall } from '../model/network-fall.js';
import type { NoSharedRoute, SharedRouteRequest } from '../model/shared-route.js';
import { outsideDiameterM } from '../quantities/outside-diameter.js';
import { layNetwork } from './network-fall.js';
import { pointOnPath } from './path-stations.js';
import { lonLatAt } from './route-line.js';
import { groundUnder } from './route-profile.js';
import type { RouteScene } from './scene.js';

/** Sources and outlets of a shared route in its plane. */
export interface SharedEnds {
  readonly sources: readonly NetworkSource[];
  readonly outlets: readonly NetworkOutlet[];
}

/** Pipes of all lines; null where too little is known of the ground. */
function laidLines(
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

/** Lines that are laid. */
export type Chosen = Pick<PlannedNetwork, 'shape' | 'lines' | 'junctions' | 'lengthM'>;

function noFall(
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

/** The network if it falls, else separate lines if they do, else why not. */
export function withFall(
  scene: RouteScene,
  request: SharedRouteRequest,
  ends: SharedEnds,
  network: PlannedNetwork,
): { readonly chosen: Chosen; readonly fall: NetworkFall | null } | NoSharedRoute {
  const fall = laidLines(scene, request, ends, network.lines);
  if (fall?.kind !== 'impossible') return { chosen: network, fall };
  const { lines, lengthM } = network.separate;
  const apart = laidLines(scene, request, ends, lines);
  if (apart?.kind !== 'impossible') {
    return { chosen: { shape: 'separate', lines, junctions: [], lengthM }, fall: apart };
  }
  return apart.shortfallM < fall.shortfallM
    ? noFall(scene, lines, apart)
    : noFall(scene, network.lines, fall);
}
