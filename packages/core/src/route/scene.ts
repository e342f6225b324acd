import type { Point } from '../geometry/disc-less-strip.js';
import { type Plane, planeFor } from '../geometry/plane.js';
import type { FallLimits } from '../model/fall.js';
import type { Assumption } from '../model/issue.js';
import type { PriceList } from '../model/prices.js';
import type { RouteCosts, RoutePlace, RouteRequest } from '../model/route.js';
import type { Site } from '../model/site.js';
import { demoPrices } from '../prices/demo-prices.js';
import { outsideDiameterM } from '../quantities/outside-diameter.js';
import { trenchWidthM } from '../quantities/trench-width.js';
import type { HarmTree } from '../roots/harm.js';
import { routeNumbers } from '../tables/route-numbers.js';
import { yearOf } from '../units/calendar.js';
import { type BendRule, bendRuleOf } from './bends.js';
import { costsFromPrices } from './costs-from-prices.js';
import { groundOf } from './ground-of.js';
import type { GroundSurface } from './ground-surface.js';
import { outOfWalls, pointOf, positionOf } from './scene-ends.js';
import { type Obstacles, obstaclesOf } from './scene-obstacles.js';
import { harmTreesOf } from './scene-trees.js';
import type { Target } from './search.js';

/** An outlet: where, and the lowest invert with which the water still runs out; null where nothing tells. */
export interface RouteEnd extends Target {
  readonly leastInvertM: number | null;
}

/** A site and a request made ready: everything that a route is held against, in one plane. */
export interface RouteScene {
  readonly site: Site;
  readonly request: RouteRequest;
  readonly plane: Plane;
  readonly nowYear: number;
  readonly horizonYears: number;
  readonly prices: PriceList;
  readonly costs: RouteCosts;
  readonly limits: FallLimits;
  readonly bends: BendRule;
  readonly trenchWidthM: number;
  readonly ground: GroundSurface;
  readonly trees: readonly HarmTree[];
  readonly obstacles: Obstacles;
  readonly from: Point;
  readonly to: readonly RouteEnd[];
  readonly assumed: readonly Assumption[];
}

function checked(request: RouteRequest): number {
  const nowYear = yearOf(request.asOf);
  if (nowYear === undefined) throw new RangeError(`asOf must be an ISO date, got '${request.asOf}'`);
  if (request.to.length === 0) throw new RangeError('to must name at least one outlet');
  if (!(request.pipe.sizeM > 0)) throw new RangeError(`sizeM must be above 0, got ${request.pipe.sizeM}`);
  const { horizonYears, cellM } = request;
  if (horizonYears !== undefined && !(horizonYears > 0 && horizonYears <= 100)) {
    throw new RangeError(`horizonYears must be above 0 and at most 100, got ${horizonYears}`);
  }
  if (cellM !== undefined && !(cellM > 0)) throw new RangeError(`cellM must be above 0, got ${cellM}`);
  return nowYear;
}

/** Limits of fall, cover and depth as asked for, else the usual ones. */
function limitsOf({ limits, pipe, sourceInvertM }: RouteRequest): FallLimits {
  const pipeHeightM = outsideDiameterM(pipe.material, pipe.sizeM);
  const minCoverM = limits?.minCoverM ?? routeNumbers.minCoverM.value;
  const maxDepthM = limits?.maxDepthM ?? routeNumbers.maxDepthM.value;
  if (!(maxDepthM > minCoverM + pipeHeightM)) {
    throw new RangeError(
      `maxDepthM must be more than cover and pipe, ${minCoverM + pipeHeightM} m, got ${maxDepthM}`,
    );
  }
  return {
    minFall: limits?.minFall ?? routeNumbers.minFall.value,
    minCoverM,
    maxDepthM,
    pipeHeightM,
    bareBeforeOutletM: routeNumbers.bareBeforeOutletM.value,
    ...(sourceInvertM === undefined ? {} : { source: { mostM: sourceInvertM } }),
  };
}

/**
 * Lowest invert at an outlet: as asked for; else, where it comes out into the open, no deeper than with its usual
 * cover, from where a riser brings the water up under a grate (common practice on flat lots; the alternative says how
 * far). What a basin or another pipe takes is not known.
 */
function leastInvert(
  site: Site,
  request: RouteRequest,
  place: RoutePlace,
  groundM: number | null,
  coveredM: number,
): number | null {
  if (request.outletInvertM !== undefined) return request.outletInvertM;
  const open =
    'position' in place || site.fittings.some(({ id, type }) => id === place.id && type === 'outlet');
  return open && groundM !== null ? groundM - coveredM : null;
}

function assumptionsOf(request: RouteRequest, limits: FallLimits, ground: GroundSurface): Assumption[] {
  const assumed: Assumption[] = [];
  const assume = (name: string, value: number | string, why: string): void => {
    assumed.push({ path: `route/${name}`, value, why });
  };
  if (request.limits?.minFall === undefined)
    assume('minFall', limits.minFall, 'an eighth of an inch per foot');
  if (request.limits?.minCoverM === undefined)
    assume('minCoverM', limits.minCoverM, 'usual cover under lawn');
  if (request.limits?.maxDepthM === undefined)
    assume('maxDepthM', limits.maxDepthM, 'as deep as is dug without a ladder');
  if (ground.basis.kind === 'none' || ground.basis.kind === 'one-level') {
    assume('ground', 'level', 'no ground levels: whether the line has fall was not looked at');
  }
  if (request.prices === undefined) assume('prices', 'invented', 'no price list given: an invented one');
  return assumed;
}

/** Ends on two sides of a country are a slip of the pen: a search between them would not come to an end. */
function checkNear(places: readonly Point[]): void {
  const [first, ...others] = places as [Point, ...Point[]];
  const apartM = Math.max(...others.map(([x, y]) => Math.hypot(x - first[0], y - first[1])));
  const mostM = routeNumbers.mostApartM.value;
  if (apartM > mostM) {
    throw new RangeError(
      `the places lie ${Math.round(apartM / 100) / 10} km apart: a route is looked for up to ${mostM / 1000} km`,
    );
  }
}

/** @throws RangeError for a request that makes no sense or names what the site does not have. */
export function sceneOf(site: Site, request: RouteRequest): RouteScene {
  const nowYear = checked(request);
  const from = positionOf(site, request.from);
  const to = request.to.map((place) => positionOf(site, place));
  const plane = planeFor([from, ...to]);
  const via = request.via === undefined ? [] : [request.via];
  checkNear([from, ...to, ...via].map((place) => pointOf(plane, place)));
  const limits = limitsOf(request);
  const prices = request.prices ?? demoPrices();
  const costs: RouteCosts = {
    ...costsFromPrices(
      prices,
      request.pipe,
      limits.minCoverM + limits.pipeHeightM,
      site.soil,
      request.costs?.discountRate,
    ),
    ...request.costs,
  };
  const roughly = obstaclesOf(site, plane, [], []);
  const buildings = roughly.keepouts.filter(({ of }) => of === 'inside').map(({ shape }) => shape);
  const start = outOfWalls(buildings, pointOf(plane, from));
  const ends = to.map((place) => outOfWalls(buildings, pointOf(plane, place)));
  const ground = groundOf(site.levels, request.grid ?? null, plane);
  return {
    site,
    request,
    plane,
    nowYear,
    horizonYears: request.horizonYears ?? routeNumbers.horizonYears.value,
    prices,
    costs,
    limits,
    bends: bendRuleOf(request.pipe),
    trenchWidthM: trenchWidthM(outsideDiameterM(request.pipe.material, request.pipe.sizeM), limits.minCoverM),
    ground,
    trees: harmTreesOf(site, plane, nowYear),
    obstacles: obstaclesOf(site, plane, [start, ...ends], request.beds ?? []),
    from: start,
    to: ends.map(([x, y], i) => ({
      x,
      y,
      leastInvertM: leastInvert(
        site,
        request,
        request.to[i] as RoutePlace,
        ground.elevationAt(x, y),
        limits.minCoverM + limits.pipeHeightM,
      ),
    })),
    assumed: assumptionsOf(request, limits, ground),
  };
}
