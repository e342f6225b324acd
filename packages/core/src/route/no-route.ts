import type { Point } from '../geometry/disc-less-strip.js';
import type { NoRoute } from '../model/route.js';
import type { CostField } from './cost-field.js';
import { noDigDiscs } from './field-of-scene.js';
import { highestWay } from './highest-way.js';
import { pointOnPath } from './path-stations.js';
import { lonLatAt } from './route-line.js';
import { fallOf } from './route-profile.js';
import type { RouteScene } from './scene.js';
import { forgiving, searchFallOf } from './scene-fall.js';
import { shallowLine } from './shallow-line.js';
import { smoothPath } from './smooth.js';

/** More than this no cover or depth gives, metres. */
const MOST_M = 20;
/** Found out to a centimetre. */
const FINE_M = 0.01;

/** What holds an end fast, if its place alone tells. */
function blockedBy(scene: RouteScene): string {
  const ends: readonly (readonly [string, Point])[] = [
    ['start', scene.from],
    ...scene.to.map(({ x, y }): readonly [string, Point] => ['outlet', [x, y]]),
  ];
  for (const [name, [x, y]] of ends) {
    const disc = noDigDiscs(scene).find((d) => Math.hypot(x - d.x, y - d.y) < d.radiusM);
    if (disc) return `the ${name} lies inside the no-dig circle of tree ${disc.id} (3 trunk diameters)`;
  }
  return 'buildings, pools, walls, the lot line or no-dig circles leave no way between the ends';
}

const round = (metres: number): string => `${Math.max(0.01, Math.round(metres * 100) / 100)} m`;

const WHY = {
  depth: 'the pipe would lie deeper than allowed',
  outlet: 'the pipe would come out lower than its outlet',
  source: 'the pipe would begin lower than its source',
} as const;

/** Why no route was found: the ends are cut off, or the way that fails least by fall. */
export function noRouteOf(scene: RouteScene, field: CostField): NoRoute {
  const { grid } = field;
  const strict = searchFallOf(scene, grid);
  const blocked = (): NoRoute => ({ reason: 'blocked', message: blockedBy(scene), shortfallM: null });
  if (strict === null) return blocked();
  const at = (forgivenM: number) => {
    const fall = forgiving(strict, forgivenM);
    const way = highestWay(field, fall, scene.from, scene.to);
    return way !== null && way.spareM >= -1e-9 ? { fall, way } : null;
  };
  let best = at(MOST_M);
  if (best === null) return blocked();
  let [low, high] = [0, MOST_M];
  while (high - low > FINE_M) {
    const middle = (low + high) / 2;
    const found = at(middle);
    if (found === null) low = middle;
    else {
      high = middle;
      best = found;
    }
  }
  const { fall, way } = best;
  const outletM = fall.outletM(way.target);
  const { points } = smoothPath(field, way.points, {
    whole: (path) => shallowLine(fall, grid, path, outletM).cost,
  });
  const laid = fallOf(scene, points);
  const failed = laid?.kind === 'impossible' ? laid : null;
  const shortfallM = failed?.shortfallM ?? high;
  const atM = failed?.atM ?? 0;
  return {
    reason: 'no-fall',
    message: `no way falls all along within cover and depth: ${WHY[failed?.below ?? 'depth']} by ${round(shortfallM)} at ${round(atM)} from the start`,
    shortfallM,
    at: lonLatAt(scene.plane, pointOnPath(points, atM)),
    atM,
    remedies: failed?.remedies ?? [],
    geometry: { type: 'LineString', coordinates: points.map((p) => [...lonLatAt(scene.plane, p)]) },
  };
}
