import type { Point } from '../geometry/disc-less-strip.js';
import { lonLatOf, type Plane } from '../geometry/plane.js';
import type { RouteBend, RoutePipe } from '../model/route.js';
import type { Drain, Fitting, LonLat, Site } from '../model/site.js';
import { pipeRow } from '../tables/pipes.js';
import { pointOnPath, sliceOfPath } from './path-stations.js';

/** A route as lines of a site, ready to be scored: one after another down the way. */
export interface RouteLines {
  readonly drains: readonly Drain[];
  readonly fittings: readonly Fitting[];
}

/** What is laid: the path from its upper end, its bends, and the depth to the pipe's top at any station. */
export interface Laying {
  /** Id of the line, with a number behind it for each of its parts; `route` where not given. */
  readonly id?: string;
  readonly plane: Plane;
  readonly points: readonly Point[];
  readonly lengthM: number;
  readonly bends: readonly RouteBend[];
  readonly coverAt: (stationM: number) => number;
  readonly laidYear: number;
  readonly asked: RoutePipe;
  /** Stretches without holes in a perforated pipe. */
  readonly solid: readonly (readonly [fromM: number, toM: number])[];
}

const NOWHERE = { file: 'route', index: 0 };

/** Nine decimals of a degree are a tenth of a millimetre. */
export const lonLatAt = (plane: Plane, [x, y]: Point): LonLat => {
  const [lon, lat] = lonLatOf(plane, x, y);
  return [Math.round(lon * 1e9) / 1e9, Math.round(lat * 1e9) / 1e9];
};

function drainOf(laying: Laying, fromM: number, toM: number, perforated: boolean, number: number): Drain {
  const { id = 'route', asked, plane, points, laidYear, coverAt } = laying;
  return {
    id: `${id}-${number}`,
    origin: NOWHERE,
    name: null,
    path: sliceOfPath(points, fromM, toM).map((point) => lonLatAt(plane, point)),
    material: asked.material,
    materialKnown: asked.material !== 'unknown',
    sizeM: asked.sizeM,
    perforated,
    wrapped: perforated && asked.wrapped === true,
    pieceM: asked.pieceM ?? pipeRow(asked.material).pieceM.value,
    joint: asked.joint ?? pipeRow(asked.material).joint,
    sealed: null,
    sealMPa: null,
    depthStartM: coverAt(fromM),
    depthEndM: coverAt(toM),
    installedYear: laidYear,
    dugYear: null,
    cutYear: null,
    flow: 'as-drawn',
    carries: 'storm',
    servesM2: null,
    wet: null,
  };
}

/** The parts of a route that are alike: solid or perforated, in order. */
export function alikeParts(
  lengthM: number,
  perforated: boolean,
  solid: readonly (readonly [number, number])[],
): { fromM: number; toM: number; perforated: boolean }[] {
  if (!perforated) return [{ fromM: 0, toM: lengthM, perforated: false }];
  const parts: { fromM: number; toM: number; perforated: boolean }[] = [];
  let at = 0;
  for (const [fromM, toM] of solid) {
    if (fromM > at) parts.push({ fromM: at, toM: fromM, perforated: true });
    if (toM > fromM) parts.push({ fromM, toM, perforated: false });
    at = Math.max(at, toM);
  }
  if (lengthM - at > 1e-6) parts.push({ fromM: at, toM: lengthM, perforated: true });
  return parts;
}

/** The line or lines of a route with its bends, and a coupling wherever pipe of another kind begins. */
export function linesOfRoute(laying: Laying): RouteLines {
  const { id: name = 'route', points, plane, bends, lengthM, asked, solid } = laying;
  const parts = alikeParts(lengthM, asked.perforated === true, solid);
  const drains = parts.map((part, i) => drainOf(laying, part.fromM, part.toM, part.perforated, i + 1));
  const drainAt = (stationM: number): string =>
    `${name}-${Math.max(1, parts.findIndex(({ toM }) => stationM <= toM) + 1)}`;
  const fitting = (id: string, type: Fitting['type'], stationM: number): Fitting => ({
    id,
    origin: NOWHERE,
    type,
    position: lonLatAt(plane, pointOnPath(points, stationM)),
    sealed: null,
    drain: drainAt(stationM),
  });
  const turns = bends.flatMap((bend, i) =>
    bend.fittings.map((_, k) =>
      fitting(`${name}-bend-${i + 1}${k > 0 ? `-${k + 1}` : ''}`, 'bend', bend.atM),
    ),
  );
  const couplings = parts
    .slice(1)
    .map(({ fromM }, i) => fitting(`${name}-coupling-${i + 1}`, 'coupling', fromM));
  return { drains, fittings: [...turns, ...couplings] };
}

/** The site with a route in the place of its lines, as nobody has looked into it. */
export function siteWithRoute(site: Site, { drains, fittings }: RouteLines): Site {
  return { ...site, drains, fittings, findings: [], levels: [] };
}
