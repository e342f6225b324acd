import type { LaidPipe } from '../model/fall.js';
import type { Assumption } from '../model/issue.js';
import type { NetworkLine, PlannedNetwork } from '../model/network.js';
import type { NetworkFall } from '../model/network-fall.js';
import type { RoutePlace, RouteRequest } from '../model/route.js';
import type { SharedRoute, SharedRouteRequest, SharedRouteResult } from '../model/shared-route.js';
import type { Site } from '../model/site.js';
import type { TreeHarm } from '../model/tree-harm.js';
import { cautionsFor } from '../risk/cautions.js';
import { harmOf } from '../roots/harm.js';
import { SceneFields } from './field-of-scene.js';
import { planNetwork } from './network.js';
import { sliceOfPath } from './path-stations.js';
import { lonLatAt } from './route-line.js';
import { type RouteScene, sceneOf } from './scene.js';
import { type Chosen, type SharedEnds, withFall } from './shared-fall.js';
import { type SharedPrices, type SizeFor, sharedPrices } from './shared-prices.js';
import { stretchesOf } from './stretches.js';

/** How shared pipe is sized, and whether to go on. */
export interface SharedRouteOptions {
  /** The pipe for an area; the pipe asked for, whatever the area, where not given. Never smaller as the area grows. */
  readonly sizeFor?: SizeFor;
  readonly shouldStop?: () => boolean;
}

/** The scene of all ends: its outlets are the request's, and after them the other sources. */
function sceneOfAll(site: Site, request: SharedRouteRequest): RouteScene {
  const [first, ...others] = request.from;
  if (first === undefined) throw new RangeError('from must name at least one source');
  const single: RouteRequest = {
    ...request,
    from: first.place,
    to: [...request.to, ...others.map(({ place }) => place)],
  };
  return sceneOf(site, single);
}

/** Ids of places: their own, or a letter and a number. */
function idsOf(places: readonly RoutePlace[], letter: string): string[] {
  return places.map((place, i) => ('id' in place ? place.id : `${letter}${i + 1}`));
}

function endsOf(scene: RouteScene, request: SharedRouteRequest): SharedEnds {
  const count = request.to.length;
  const starts = [scene.from, ...scene.to.slice(count).map(({ x, y }) => [x, y] as const)];
  const names = idsOf(
    request.from.map(({ place }) => place),
    'source ',
  );
  return {
    sources: request.from.map(({ servesM2 }, i) => {
      const [x, y] = starts[i] as readonly [number, number];
      const id = names[i] as string;
      const basin = scene.site.fittings.some((fitting) => fitting.id === id && fitting.type === 'basin');
      return { id, x, y, load: servesM2, basin };
    }),
    outlets: idsOf(request.to, 'outlet ').map((id, i) => {
      const { x, y } = scene.to[i] as (typeof scene.to)[number];
      return { id, x, y };
    }),
  };
}

function harmTo(scene: RouteScene, lines: readonly NetworkLine[]): TreeHarm[] {
  return harmOf(
    scene.trees,
    lines.flatMap(({ points }) =>
      stretchesOf(scene, points).map(({ fromM, toM, way }) => ({
        path: sliceOfPath(points, fromM, toM),
        widthM: scene.trenchWidthM,
        bored: way === 'bored',
      })),
    ),
  );
}

function routeOf(
  scene: RouteScene,
  prices: SharedPrices,
  network: PlannedNetwork,
  chosen: Chosen,
  fall: NetworkFall | null,
): SharedRoute {
  const pipeOf = (id: string): LaidPipe | null =>
    fall?.kind === 'laid' ? (fall.lines.find((line) => line.id === id)?.pipe ?? null) : null;
  const laid = chosen.lines.map(({ id }) => pipeOf(id));
  const wyes = chosen.junctions.reduce((sum, { branches }) => sum + branches.length, 0);
  const { separate } = network;
  return {
    shape: chosen.shape,
    lines: chosen.lines.map(({ id, from, to, lengthM, load, sizeM, points }, i) => ({
      id,
      from,
      to,
      lengthM,
      servesM2: load,
      sizeM,
      pipe: laid[i] ?? null,
      geometry: { type: 'LineString', coordinates: points.map((point) => lonLatAt(scene.plane, point)) },
    })),
    junctions: chosen.junctions.map(({ x, y, ...rest }) => ({
      ...rest,
      position: lonLatAt(scene.plane, [x, y]),
    })),
    lengthM: chosen.lengthM,
    cost: prices.costOf(chosen.lines, wyes, laid),
    separate: { lengthM: separate.lengthM, cost: prices.costOf(separate.lines, 0, []) },
    trees: harmTo(scene, chosen.lines),
  };
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
  return [...scene.assumed, ...(options.sizeFor === undefined ? [oneSize] : [])];
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
  const fields = new SceneFields(scene);
  const prices = sharedPrices(fields, options.sizeFor ?? (() => request.pipe.sizeM));
  const { shouldStop } = options;
  const network = planNetwork(fields.weighted({ dig: 1, roots: 1, harm: 1 }), ends.sources, ends.outlets, {
    pipeFor: prices.pipeFor,
    wyeEach: prices.wyeEach,
    bendEach: scene.costs.bendEach,
    ...(shouldStop === undefined ? {} : { shouldStop }),
  });
  const found = network === null ? null : withFall(scene, request, ends, network);
  const route =
    network !== null && found !== null && 'chosen' in found
      ? routeOf(scene, prices, network, found.chosen, found.fall)
      : null;
  return {
    schema: 1,
    asOf: request.asOf,
    horizonYears: scene.horizonYears,
    currency: scene.prices.currency,
    pricesInvented: scene.prices.invented,
    route,
    none: found === null ? { reason: 'blocked', shortfallM: null } : 'reason' in found ? found : null,
    ground: scene.ground.basis,
    assumed: assumptionsOf(scene, options),
    cautions: cautionsOf(scene, route),
    stopped: shouldStop?.() === true,
  };
}
