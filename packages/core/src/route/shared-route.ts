import type { Assumption } from '../model/issue.js';
import type { NetworkLine, PlannedNetwork } from '../model/network.js';
import type { NetworkFall } from '../model/network-fall.js';
import type { PipeForArea } from '../model/pipe-for-area.js';
import type {
  NoSharedRoute,
  SharedRoute,
  SharedRouteRequest,
  SharedRouteResult,
  SharedWay,
} from '../model/shared-route.js';
import type { Site } from '../model/site.js';
import { cautionsFor } from '../risk/cautions.js';
import { noDigDiscs, SceneFields, sparingDiscs } from './field-of-scene.js';
import { planNetwork } from './network.js';
import { onlyForward } from './only-forward.js';
import type { RouteScene } from './scene.js';
import { withFittings } from './shared-bends.js';
import { endsOf, type SharedEnds, sceneOfAll } from './shared-ends.js';
import { laidLines, noFallOf } from './shared-fall.js';
import { sceneForSize } from './shared-lines.js';
import { type SizeFor, sharedPrices } from './shared-prices.js';
import { evaluateShared } from './shared-way.js';

/** How shared pipe is sized, and whether to go on. */
export interface SharedRouteOptions {
  /** The pipe for an area; the pipe asked for, whatever the area, where not given. Never smaller as the area grows. */
  readonly pipeFor?: (servesM2: number) => PipeForArea;
  /** Told how much is done, 0 to 1. */
  readonly onProgress?: (share: number) => void;
  readonly shouldStop?: () => boolean;
}

function cautionsOf(scene: RouteScene, route: SharedRoute | null): SharedRouteResult['cautions'] {
  const depths = route?.lines.map(({ pipe }) => pipe?.depthM.max ?? scene.limits.maxDepthM) ?? [];
  const away = (route?.trees ?? []).map(({ id, nearestM }) => {
    return nearestM / (scene.trees.find((tree) => tree.id === id)?.stemDiameterM ?? 1);
  });
  const near = away.length === 0 ? undefined : Math.max(0, Math.min(...away));
  return cautionsFor({
    digging: true,
    trenchDepthM: Math.max(0, ...depths),
    discharge: true,
    ...(near === undefined ? {} : { trunkDiametersAway: near, rootCutting: near < 12 }),
  });
}

function assumptionsOf(scene: RouteScene, options: SharedRouteOptions): Assumption[] {
  const oneSize: Assumption = {
    path: 'route/sizeM',
    value: scene.request.pipe.sizeM,
    why: 'one size for every line: rain or areas were not given to size them by',
  };
  return [...scene.assumed, ...(options.pipeFor === undefined ? [oneSize] : [])];
}

/** Every trench as wide as that of the largest pipe: so far the search keeps from trunks. */
function widest(scene: RouteScene, ends: SharedEnds, sizeFor: SizeFor): RouteScene {
  const all = ends.sources.reduce((sum, { load }) => sum + load, 0);
  return { ...scene, trenchWidthM: sceneForSize(scene, sizeFor(all)).trenchWidthM };
}

/** Outside all circles of which a trench would take too much; between them if there is no other way. */
function searched(
  scene: RouteScene,
  ends: SharedEnds,
  { pipeFor, onProgress, shouldStop }: SharedRouteOptions,
): PlannedNetwork | null {
  const sizeFor: SizeFor = (area) => pipeFor?.(area).sizeM ?? scene.request.pipe.sizeM;
  const wide = widest(scene, ends, sizeFor);
  const options = {
    ...sharedPrices(scene, sizeFor),
    bendEach: scene.costs.bendEach,
    ...(onProgress === undefined ? {} : { onProgress: (share: number) => onProgress(0.1 + 0.8 * share) }),
    ...(shouldStop === undefined ? {} : { shouldStop }),
  };
  for (const discs of [sparingDiscs(wide), noDigDiscs(wide)]) {
    const fields = new SceneFields(wide, discs);
    const field = fields.weighted({ dig: 1, roots: 1, harm: 1 });
    const network = planNetwork(field, ends.sources, ends.outlets, options);
    if (network === null) continue;
    const drawn = <N extends Pick<PlannedNetwork, 'lines' | 'junctions'>>(each: N) =>
      withFittings(fields, each, options.pipeFor);
    const { lines, lengthM } = drawn({ ...network.separate, junctions: [] });
    return { ...drawn(network), separate: { ...network.separate, lines, lengthM } };
  }
  return null;
}

/** A way with the fall that was tried on it. */
interface Tried {
  readonly way: SharedWay;
  readonly fall: NetworkFall | null;
}

/** Rather one that harms no tree too much, then the lowest price with root trouble and harm to trees. */
function better(a: SharedWay, b: SharedWay): SharedWay {
  const forbidden = ({ trees }: SharedWay): boolean => trees.some(({ rule }) => rule === 'no-dig');
  if (forbidden(a) !== forbidden(b)) return forbidden(a) ? b : a;
  const worth = ({ cost }: SharedWay): number => cost.presentValue + cost.treeHarm;
  return worth(a) < worth(b) ? a : b;
}

function chosenOf(
  scene: RouteScene,
  request: SharedRouteRequest,
  ends: SharedEnds,
  network: PlannedNetwork,
  { pipeFor }: SharedRouteOptions,
): SharedRoute | NoSharedRoute {
  const tried = (each: Pick<PlannedNetwork, 'shape' | 'lines' | 'junctions' | 'lengthM'>): Tried => {
    const fall = laidLines(scene, request, ends, each.lines);
    return { way: evaluateShared(scene, { network: each, fall, pipeFor: pipeFor ?? null }), fall };
  };
  const separate = tried({ ...network.separate, shape: 'separate', junctions: [] });
  const shared = network.shape === 'shared' ? tried(network) : separate;
  const able = [shared, separate].filter(({ way }) => way.falls !== false).map(({ way }) => way);
  if (able.length > 0) return { ...able.reduce(better), separate: separate.way };
  const failed = [
    { lines: network.lines, fall: shared.fall },
    { lines: network.separate.lines, fall: separate.fall },
  ].flatMap(({ lines, fall }) => (fall?.kind === 'impossible' ? [{ lines, fall }] : []));
  const least = failed.reduce((a, b) => (b.fall.shortfallM < a.fall.shortfallM ? b : a));
  return noFallOf(scene, least.lines, least.fall);
}

/** The outlet that a line's water comes out at. */
function outletBelow(lines: readonly NetworkLine[], id: string): string {
  const line = lines.find((each) => each.id === id) as NetworkLine;
  const next = lines.find(({ from }) => from === line.to);
  return next === undefined ? line.to : outletBelow(lines, next.id);
}

/**
 * The search looks at the ground's price, not its height, so the outlet it takes may lie too high: then the others are
 * tried without it, down to the last. What is told where none will do is the least that is missing.
 */
function overOutlets(
  scene: RouteScene,
  request: SharedRouteRequest,
  ends: SharedEnds,
  options: SharedRouteOptions,
): SharedRoute | NoSharedRoute {
  let none: NoSharedRoute = { reason: 'blocked', shortfallM: null };
  for (let { outlets } = ends; outlets.length > 0; ) {
    const network = searched(scene, { ...ends, outlets }, options);
    if (network === null) break;
    const found = chosenOf(scene, request, ends, network, options);
    if (!('reason' in found) || found.reason === 'blocked') return found;
    if (none.reason === 'blocked' || found.shortfallM < none.shortfallM) none = found;
    const { line } = found;
    const all = network.lines.some(({ id }) => id === line) ? network.lines : network.separate.lines;
    const tooHigh = outletBelow(all, line);
    const left = outlets.filter(({ id }) => id !== tooHigh);
    // every round has one outlet less, whatever the lines say
    if (left.length === outlets.length) break;
    outlets = left;
  }
  return none;
}

/**
 * Lines from several sources to one or more outlets of a site, sharing trenches where that is cheaper, shared pipe
 * sized downstream, all falling to their outlet. Where the shared lines cannot fall but separate ones can, those are
 * given; where neither can, `none` says by how much, where, and what would help.
 * @param site as read; its levels and obstacles count.
 * @param request from where, to where, with which pipe.
 * @param options how pipe grows with what it serves.
 * @throws RangeError for a request that makes no sense or names what the site does not have.
 */
export function planSharedRoute(
  site: Site,
  request: SharedRouteRequest,
  options: SharedRouteOptions = {},
): SharedRouteResult {
  const scene = sceneOfAll(site, request);
  const ends = endsOf(scene, request);
  const { shouldStop } = options;
  const onProgress = onlyForward(options.onProgress);
  onProgress(0.1);
  const found = overOutlets(scene, request, ends, { ...options, onProgress });
  const route = 'lines' in found ? found : null;
  onProgress(1);
  return {
    schema: 1,
    asOf: request.asOf,
    horizonYears: scene.horizonYears,
    currency: scene.prices.currency,
    pricesInvented: scene.prices.invented,
    route,
    none: 'reason' in found ? found : null,
    ground: scene.ground.basis,
    assumed: assumptionsOf(scene, options),
    cautions: cautionsOf(scene, route),
    stopped: shouldStop?.() === true,
  };
}
