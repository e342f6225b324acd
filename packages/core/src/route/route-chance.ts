import { lonLatOf } from '../geometry/plane.js';
import { pointAt } from '../geometry/polyline.js';
import type { Chance } from '../model/result.js';
import type { LonLat, Site } from '../model/site.js';
import { contextOf, prepareLine } from '../risk/context.js';
import { drawsOf, normals, seedFrom } from '../risk/draws.js';
import { lineLogSd, treesLogSd } from '../risk/interval.js';
import { addLoad, Load } from '../risk/load.js';
import { type DrawTable, drawTableOf, expectedUnder, sampledChance, surfaceOf } from '../risk/sampling.js';
import { type RouteLines, siteWithRoute } from './route-line.js';

/** Draws of the 80 % interval and their seed: those of a ranking. */
const DRAWS = 400;
const SEED = 20_240_229;

let table: DrawTable | null = null;
let deviates: Float64Array | null = null;

/** The same draws for every route, so that routes can be compared. */
function sharedDraws(): { table: DrawTable; deviates: Float64Array } {
  table ??= drawTableOf(drawsOf(DRAWS, SEED));
  deviates ??= Float64Array.from({ length: DRAWS }, normals(seedFrom('route', SEED)));
  return { table, deviates };
}

export interface RouteChance {
  readonly chance: Chance;
  /** Expected entries, and the same with each year's discounted to now. */
  readonly expected: number;
  readonly discounted: number;
  /** Where each joint is. */
  readonly joints: readonly LonLat[];
}

/** Chance that roots get into a new line anywhere within so many years, by the relations that lines are ranked with. */
export function routeChance(
  site: Site,
  lines: RouteLines,
  asOf: string,
  horizonYears: number,
  discountRate: number,
): RouteChance {
  const context = contextOf(siteWithRoute(site, lines), { asOf, horizonYears, segmentM: 1000 });
  const { table: draws, deviates: own } = sharedDraws();
  const sum = new Float64Array(DRAWS);
  let expected = 0;
  let discounted = 0;
  const joints: LonLat[] = [];
  for (let number = 0; number < context.lines.count; number++) {
    const line = context.lines.at(number);
    const { inputs, near, clock, scale } = prepareLine(context, line);
    const last = inputs.openings.first[line.segments.length] as number;
    const load = new Load(context.field.moments, near.count);
    addLoad(inputs, 0, last, load);
    const logSd = Math.hypot(lineLogSd(line, clock), treesLogSd(load, near, context.field));
    const extra = own.map((z) => Math.exp(logSd * z));
    const drawn = expectedUnder(surfaceOf(inputs, 0, last, false), draws, extra, scale);
    drawn.forEach((value, d) => {
      sum[d] = (sum[d] as number) + value;
    });
    expected += load.total;
    load.perYear.forEach((rate, k) => {
      const years = context.horizon.yearsAhead[k] as number;
      discounted += (rate * (context.horizon.weights[k] as number)) / (1 + discountRate) ** years;
    });
    for (const { stationM, count } of line.joints) {
      const [x, y] = pointAt(line.polyline, stationM);
      const place = lonLatOf(line.plane, x, y);
      for (let n = 0; n < count; n++) joints.push(place);
    }
  }
  return { chance: sampledChance(sum, expected), expected, discounted, joints };
}
