import type { Point } from '../geometry/disc-less-strip.js';
import type { LaidPipe } from '../model/fall.js';
import type { RouteAim, RouteAlternative, RouteRequest } from '../model/route.js';
import type { LonLat, Site } from '../model/site.js';
import { asNumber } from '../prices/price-quantities.js';
import { harmOf, type Stretch } from '../roots/harm.js';
import { bendsOf } from './bends.js';
import { pathLength, pointOnPath, sliceOfPath } from './path-stations.js';
import { breaksOf } from './route-breaks.js';
import { type RouteChance, routeChance } from './route-chance.js';
import { linesOfRoute, lonLatAt, type RouteLines } from './route-line.js';
import { digsOfRoute, priceOfDigs } from './route-price.js';
import { depthAlong, fallOf } from './route-profile.js';
import { type RouteScene, sceneOf } from './scene.js';
import { pointOf } from './scene-ends.js';
import { harmPerM } from './scene-weights.js';
import { crossingsOf, stretchesOf } from './stretches.js';

/** What an alternative is called, in English. */
export const routeNames: Readonly<Record<RouteAim, string>> = {
  cheapest: 'cheapest to dig',
  'fewest-roots': 'fewest roots',
  'spares-trees': 'sparing the trees',
  balanced: 'balanced',
  via: 'through your point',
  drawn: 'as drawn',
};

/** Harm to trees is added up in steps of about this, metres. */
const HARM_STEP_M = 0.25;
/** Trunk diameters, or the dripline if that is wider, within which a joint counts as near roots. */
const NEAR_DIAMETERS = 12;

/** Of some joints, those near the roots of any tree. */
export function jointsNear(scene: RouteScene, joints: readonly LonLat[]): number {
  return joints.filter((place) => {
    const [x, y] = pointOf(scene.plane, place);
    return scene.trees.some(
      (tree) =>
        Math.hypot(x - tree.x, y - tree.y) < Math.max(tree.driplineM, NEAR_DIAMETERS * tree.stemDiameterM),
    );
  }).length;
}

/** Worth of the harm that the dug stretches of a path do to trees. */
export function harmWorth(
  scene: RouteScene,
  points: readonly Point[],
  stretches: RouteAlternative['stretches'],
): number {
  let sum = 0;
  for (const { fromM, toM, way } of stretches) {
    if (way === 'bored') continue;
    const steps = Math.max(1, Math.ceil((toM - fromM) / HARM_STEP_M));
    for (let i = 0; i < steps; i++) {
      const at = pointOnPath(points, fromM + ((toM - fromM) * (i + 0.5)) / steps);
      sum += (harmPerM(scene, ...at) * (toM - fromM)) / steps;
    }
  }
  return sum;
}

/** The stretches of a path as trees feel them. */
export function harmStretches(
  scene: RouteScene,
  points: readonly Point[],
  stretches: RouteAlternative['stretches'],
  depthAt: (stationM: number) => number,
): Stretch[] {
  return stretches.map(({ fromM, toM, way }) => ({
    path: sliceOfPath(points, fromM, toM),
    widthM: scene.trenchWidthM,
    bored: way === 'bored',
    topDepthM: Math.min(depthAt(fromM), depthAt(toM)) - scene.limits.pipeHeightM,
  }));
}

/** Chances within 10 and 25 years and over the horizon asked for, each worked out once. */
export function chancesOf(scene: RouteScene, lines: RouteLines): Record<'10' | '25' | 'asked', RouteChance> {
  const { site, request, horizonYears, costs } = scene;
  const within = (years: number): RouteChance =>
    routeChance(site, lines, request.asOf, years, costs.discountRate);
  const ten = within(10);
  const twentyFive = within(25);
  const asked = horizonYears === 25 ? twentyFive : horizonYears === 10 ? ten : within(horizonYears);
  return { '10': ten, '25': twentyFive, asked };
}

const depthsOf = (
  laid: LaidPipe | null,
): Pick<RouteAlternative, 'depthM' | 'coverM' | 'fall' | 'outletBelowM' | 'profile'> =>
  laid === null
    ? { depthM: null, coverM: null, fall: null, outletBelowM: null, profile: null }
    : {
        depthM: laid.depthM,
        coverM: laid.coverM,
        fall: laid.fall,
        outletBelowM: (laid.groundM.at(-1) as number) - (laid.invertM.at(-1) as number),
        profile: { stationM: laid.stationM, groundM: laid.groundM, invertM: laid.invertM },
      };

/** Everything about one path in the plane of its scene. */
export function evaluatePath(scene: RouteScene, points: readonly Point[], aim: RouteAim): RouteAlternative {
  const { pipe } = scene.request;
  const lengthM = pathLength(points);
  const fall = fallOf(scene, points);
  const laid = fall?.kind === 'laid' ? fall : null;
  const depthAt = depthAlong(scene, laid);
  const coverAt = (s: number): number => Math.max(0, depthAt(s) - scene.limits.pipeHeightM);
  const bendList = bendsOf(points, scene.bends);
  const stretches = stretchesOf(scene, points);
  const lines = linesOfRoute({
    plane: scene.plane,
    points,
    lengthM,
    bends: bendList,
    coverAt,
    laidYear: scene.nowYear,
    asked: pipe,
    solid: [],
  });
  const chances = chancesOf(scene, lines);
  const priced = priceOfDigs(
    scene,
    digsOfRoute({ stretches, bends: bendList, depthAt, pipe, solid: [], lengthM }),
    pipe,
  );
  const now = asNumber(priced.total);
  const roots = chances.asked.discounted * scene.costs.repairEach;
  return {
    id: aim,
    name: routeNames[aim],
    aim,
    lengthM,
    bends: bendList.length,
    bendList,
    joints: { count: chances.asked.joints.length, nearRoots: jointsNear(scene, chances.asked.joints) },
    chance: { '10': chances['10'].chance, '25': chances['25'].chance },
    expectedEntries: chances.asked.expected,
    ...depthsOf(laid),
    trees: harmOf(scene.trees, harmStretches(scene, points, stretches, depthAt)),
    stretches,
    crossings: crossingsOf(scene, points),
    priced,
    cost: { now, roots, treeHarm: harmWorth(scene, points, stretches), presentValue: now + roots },
    breaks: breaksOf(scene, points, fall),
    geometry: { type: 'LineString', coordinates: points.map((point) => [...lonLatAt(scene.plane, point)]) },
  };
}

/**
 * Everything about a route that somebody drew: the same figures as for one that was planned, and what it breaks.
 * @param site as read.
 * @param request what was asked for; its ends are those of the path.
 * @param path from the upper end, in degrees.
 * @throws RangeError for a path without length, or a request that makes no sense.
 */
export function evaluateRoute(site: Site, request: RouteRequest, path: readonly LonLat[]): RouteAlternative {
  const scene = sceneOf(site, request);
  const points = path.map((place) => pointOf(scene.plane, place));
  if (!(pathLength(points) > 0)) throw new RangeError('path must have a length');
  return evaluatePath(scene, points, 'drawn');
}
