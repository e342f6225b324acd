import type { RouteAlternative, RouteRequest } from '../model/route.js';
import type { Drain, Fitting, Site } from '../model/site.js';
import { bendsOf } from './bends.js';
import { pathLength } from './path-stations.js';
import { linesOfRoute } from './route-line.js';
import { depthAlong, fallOf } from './route-profile.js';
import { sceneOf } from './scene.js';
import { pointOf } from './scene-ends.js';

/** A feature of a site file. */
export interface AdoptedFeature {
  readonly type: 'Feature';
  readonly properties: Readonly<Record<string, string | number | boolean>>;
  readonly geometry:
    | { readonly type: 'LineString'; readonly coordinates: readonly (readonly number[])[] }
    | { readonly type: 'Point'; readonly coordinates: readonly number[] };
}

/** How an adopted route is called, and where it has no holes. */
export interface AdoptOptions {
  /** Id of the line; with several parts `-2` and so on is put behind it. */
  readonly id: string;
  readonly name?: string;
  /** Stretches laid solid in a perforated pipe; stations from the upper end. */
  readonly solid?: readonly (readonly [fromM: number, toM: number])[];
}

const millimetres = (metres: number): number => Math.round(metres * 1000);
const centimetres = (metres: number): number => Math.round(metres * 100) / 100;

/** A line as a feature of a site file. */
export function drainFeature(
  drain: Drain,
  id: string,
  name: string | undefined,
  asOf: string,
): AdoptedFeature {
  const { material, sizeM, perforated, wrapped, pieceM, joint, depthStartM, depthEndM, path, servesM2 } =
    drain;
  return {
    type: 'Feature',
    properties: {
      kind: 'drain',
      id,
      ...(name === undefined ? {} : { name }),
      material,
      size_mm: millimetres(sizeM as number),
      perforated,
      wrapped,
      ...(pieceM === null ? {} : { piece_m: Math.round(pieceM * 1000) / 1000 }),
      ...(joint === null ? {} : { joint }),
      depth_start_m: centimetres(depthStartM as number),
      depth_end_m: centimetres(depthEndM as number),
      installed: asOf,
      flow: 'as-drawn',
      carries: 'storm',
      ...(servesM2 === null ? {} : { serves_m2: Math.round(servesM2 * 10) / 10 }),
    },
    geometry: { type: 'LineString', coordinates: path.map((place) => [...place]) },
  };
}

/** A fitting as a feature of a site file. */
export const fittingFeature = (fitting: Fitting, id: string, drain: string): AdoptedFeature => ({
  type: 'Feature',
  properties: { kind: 'fitting', type: fitting.type, id, drain },
  geometry: { type: 'Point', coordinates: [...fitting.position] },
});

/**
 * An alternative as features of a site file: its line, in parts where it is solid past trees, and its bends. The day
 * it would be finished stands for its installation.
 * @param site the one that it was planned on.
 * @param request the one that it was planned with.
 * @param alternative its path, from the upper end.
 * @param options how it is called.
 * @throws RangeError for a request that makes no sense.
 */
export function adoptRoute(
  site: Site,
  request: RouteRequest,
  alternative: Pick<RouteAlternative, 'geometry'>,
  options: AdoptOptions,
): AdoptedFeature[] {
  const scene = sceneOf(site, request);
  const points = alternative.geometry.coordinates.map(([lon, lat]) =>
    pointOf(scene.plane, [lon as number, lat as number]),
  );
  const lengthM = pathLength(points);
  if (!(lengthM > 0)) throw new RangeError('geometry must have a length');
  const fall = fallOf(scene, points);
  const depthAt = depthAlong(scene, fall?.kind === 'laid' ? fall : null);
  const { drains, fittings } = linesOfRoute({
    plane: scene.plane,
    points,
    lengthM,
    bends: bendsOf(points, scene.bends),
    coverAt: (s) => Math.max(0, depthAt(s) - scene.limits.pipeHeightM),
    laidYear: scene.nowYear,
    asked: request.pipe,
    solid: options.solid ?? [],
  });
  const idOf = (route: string): string => {
    const number = drains.findIndex(({ id }) => id === route);
    return number <= 0 ? options.id : `${options.id}-${number + 1}`;
  };
  return [
    ...drains.map((drain) => drainFeature(drain, idOf(drain.id), options.name, request.asOf)),
    ...fittings.map((fitting) =>
      fittingFeature(fitting, fitting.id.replace(/^route/, options.id), idOf(fitting.drain as string)),
    ),
  ];
}
