import type { Point } from '../geometry/disc-less-strip.js';
import { distanceToPath } from '../geometry/distance-to-path.js';
import type { RouteAim, RouteAlternative, RouteRequest, RouteResult } from '../model/route.js';
import type { Site } from '../model/site.js';
import { evaluatePath, routeNames } from './evaluate-route.js';
import { SceneFields, sparingDiscs } from './field-of-scene.js';
import { Ways } from './find-way.js';
import { noRouteOf } from './no-route.js';
import { onlyForward } from './only-forward.js';
import { pathLength, pointOnPath } from './path-stations.js';
import { pipeChoices } from './pipe-choices.js';
import { cautionsOfRoutes } from './route-cautions.js';
import { type RouteScene, sceneOf } from './scene.js';
import { pointOf } from './scene-ends.js';
import { forgiving, IN_HAND_M, searchFallOf } from './scene-fall.js';
import type { Weights } from './scene-weights.js';

/** For a search that somebody waits for: how far it is, and whether to go on. */
export interface PlanOptions {
  /** Told how much is done, 0 to 1. */
  readonly onProgress?: (share: number) => void;
  /** Asked now and then; true ends the search with what was found so far. */
  readonly shouldStop?: () => boolean;
}

/**
 * What each aim weighs. `fewest-roots` counts trouble and harm many times over, so that digging decides only between
 * ways that are alike in roots (judgement).
 */
const WEIGHTS: readonly (readonly [RouteAim, Weights])[] = [
  ['cheapest', { dig: 1, roots: 0, harm: 0 }],
  ['fewest-roots', { dig: 1, roots: 12, harm: 4 }],
  ['balanced', { dig: 1, roots: 1, harm: 1 }],
];

/** Ways that run closer together than this are one, metres (judgement). */
const SAME_WAY_M = 0.75;
/** Figures closer than this share count as the same (judgement). */
const SAME_SHARE = 0.01;

interface Way {
  readonly aim: RouteAim;
  readonly ways: Ways;
  readonly points: readonly Point[];
}

/** Mean distance of a path from another, looked at in 20 places. */
function apart(a: readonly Point[], b: readonly Point[]): number {
  const length = pathLength(a);
  let sum = 0;
  for (let i = 0; i < 20; i++) {
    const [x, y] = pointOnPath(a, (length * (i + 0.5)) / 20);
    sum += distanceToPath(b, x, y);
  }
  return sum / 20;
}

/** Each aim takes the best for it of all the ways that were found. */
function exchanged(found: readonly Way[]): Way[] {
  return found.map((way) => {
    if (way.aim === 'via') return way;
    let best = { points: way.points, price: way.ways.priceOf(way.points) };
    for (const { points } of found) {
      const price = way.ways.priceOf(points);
      if (price < best.price * (1 - 1e-9)) best = { points, price };
    }
    return { ...way, points: best.points };
  });
}

const worstShare = ({ trees }: RouteAlternative): number =>
  trees.reduce((worst, { severedShare }) => Math.max(worst, severedShare), 0);

/** True where `a` is nowhere worse than `b` in price, roots and harm. */
function dominates(a: RouteAlternative, b: RouteAlternative): boolean {
  const more = 1 + SAME_SHARE;
  return (
    a.cost.now <= b.cost.now * more &&
    a.expectedEntries <= b.expectedEntries * more + 1e-9 &&
    a.cost.treeHarm <= b.cost.treeHarm * more + 1e-9 &&
    worstShare(a) <= worstShare(b) + SAME_SHARE
  );
}

/** True where no trench should be dug: too near a trunk, or too much of a root circle lost. */
const forbidden = ({ trees }: RouteAlternative): boolean => trees.some(({ rule }) => rule === 'no-dig');

/** Alternatives that truly differ; what the user asked for by a point stays. */
function differing(
  scene: RouteScene,
  ways: readonly Way[],
): { points: readonly Point[]; route: RouteAlternative }[] {
  const distinct: Way[] = [];
  for (const way of ways) {
    const same = distinct.some(
      ({ points }) => apart(way.points, points) < SAME_WAY_M && apart(points, way.points) < SAME_WAY_M,
    );
    if (!same || way.aim === 'via') distinct.push(way);
  }
  const priced = distinct.map(({ points, aim }) => ({ points, route: evaluatePath(scene, points, aim) }));
  const allowed = priced.filter(({ route }) => route.aim === 'via' || !forbidden(route));
  const all = allowed.length > 0 ? allowed : priced;
  return all.filter(({ route }, i) => {
    if (route.aim === 'via') return true;
    return !all.some((other, k) => {
      if (k === i || other.route.aim === 'via' || !dominates(other.route, route)) return false;
      // of two that are alike the earlier stays
      return !dominates(route, other.route) || k < i;
    });
  });
}

/** Named by what they turned out to be, and lettered in the order in which they are shown. */
function named(routes: readonly RouteAlternative[]): RouteAlternative[] {
  const planned = routes.filter(({ aim }) => aim !== 'via');
  const leastOf = (figure: (route: RouteAlternative) => number): RouteAlternative | undefined =>
    planned.reduce<RouteAlternative | undefined>(
      (best, route) => (best === undefined || figure(route) < figure(best) ? route : best),
      undefined,
    );
  const cheapest = leastOf(({ cost }) => cost.now);
  const fewest = leastOf(({ expectedEntries }) => expectedEntries);
  const kindest = leastOf(({ cost }) => cost.treeHarm);
  const aimOf = (route: RouteAlternative): RouteAim => {
    if (route.aim === 'via') return 'via';
    if (route === cheapest) return 'cheapest';
    if (route === fewest) return 'fewest-roots';
    return route === kindest ? 'spares-trees' : 'balanced';
  };
  const order: readonly RouteAim[] = ['cheapest', 'fewest-roots', 'spares-trees', 'balanced', 'via'];
  return routes
    .map((route) => ({ ...route, aim: aimOf(route), name: routeNames[aimOf(route)] }))
    .sort((a, b) => order.indexOf(a.aim) - order.indexOf(b.aim))
    .map((route, i) => ({ ...route, id: String.fromCharCode(97 + i) }));
}

/** Ways for every aim, and through the asked place. */
function searchWays(
  fields: SceneFields,
  { onProgress, shouldStop }: PlanOptions,
): { found: Way[]; last: Ways | null } {
  const { scene, grid } = fields;
  onProgress?.(0.2);
  const fall = searchFallOf(scene, grid);
  const falls = fall === null ? [] : [forgiving(fall, -IN_HAND_M), fall];
  const found: Way[] = [];
  let last: Ways | null = null;
  for (const [i, [aim, weights]] of WEIGHTS.entries()) {
    if (shouldStop?.() === true) break;
    // every aim may take another's way: one thorough search serves all
    last = new Ways(fields, weights, falls, aim !== 'balanced');
    const points = last.find(null, shouldStop);
    if (points !== null) found.push({ aim, ways: last, points });
    onProgress?.(0.2 + 0.2 * (i + 1));
  }
  const { via } = scene.request;
  if (via !== undefined && last !== null && shouldStop?.() !== true) {
    const points = last.find(pointOf(scene.plane, via), shouldStop);
    if (points !== null) found.push({ aim: 'via', ways: last, points });
  }
  return { found, last };
}

/** Lattices are laid so many times as fine where the usual one leaves no way: through gaps narrower than its cells. */
const FINER = 2;

/**
 * First outside all circles of which a trench would take too much; between them if there is no other way; and on a
 * finer lattice if there is none at all.
 */
function searchedWays(scene: RouteScene, options: PlanOptions): ReturnType<typeof searchWays> {
  const over = !options.shouldStop ? () => false : options.shouldStop;
  const sparing = searchWays(new SceneFields(scene, sparingDiscs(scene)), options);
  if (sparing.found.length > 0 || over()) return sparing;
  const fields = new SceneFields(scene);
  const usual = searchWays(fields, options);
  if (usual.found.length > 0 || usual.last === null || over()) return usual;
  if (noRouteOf(scene, usual.last.field).reason !== 'blocked') return usual;
  const finer = { ...scene, request: { ...scene.request, cellM: fields.grid.cellM / FINER } };
  return searchWays(new SceneFields(finer), options);
}

/**
 * Plans a new line from a source to the cheapest of its outlets: around what may not be entered, by what digging, root
 * trouble and harm to trees are worth, with fall, cover and depth where ground levels are known.
 * @param site as read; its levels and obstacles count.
 * @param request from where, to where, with which pipe.
 * @param options for somebody who waits.
 * @returns alternatives that truly differ; none, with the reason, where there is no way.
 * @throws RangeError for a request that makes no sense or names what the site does not have.
 */
export function planRoute(site: Site, request: RouteRequest, options: PlanOptions = {}): RouteResult {
  const { shouldStop } = options;
  const onProgress = onlyForward(options.onProgress);
  const scene = sceneOf(site, request);
  const { found, last } = searchedWays(scene, { ...options, onProgress });
  const stopped = shouldStop?.() === true;
  const kept = differing(scene, exchanged(found));
  onProgress(0.9);
  const alternatives = named(kept.map(({ route }) => route));
  // the best over the years, digging and roots together
  const first = kept.reduce<(typeof kept)[number] | undefined>(
    (best, one) =>
      best === undefined || one.route.cost.presentValue < best.route.cost.presentValue ? one : best,
    undefined,
  );
  const none = alternatives.length > 0 || stopped || last === null ? null : noRouteOf(scene, last.field);
  const pipes = first === undefined || stopped ? [] : pipeChoices(scene, first.points);
  onProgress(1);
  return {
    schema: 1,
    asOf: request.asOf,
    horizonYears: scene.horizonYears,
    currency: scene.prices.currency,
    pricesInvented: scene.prices.invented,
    alternatives,
    none,
    pipes,
    ground: scene.ground.basis,
    assumed: scene.assumed,
    issues: [],
    cautions: cautionsOfRoutes(scene, alternatives),
    stopped,
  };
}
