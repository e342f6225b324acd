import type { SharedRouteRequest, SharedWay } from '../model/shared-route.js';
import type { Site } from '../model/site.js';
import { type AdoptedFeature, type AdoptOptions, drainFeature, fittingFeature } from './adopt-route.js';
import { pointOf } from './scene-ends.js';
import { sceneOfAll } from './shared-ends.js';
import { linesOfShared } from './shared-lines.js';

/**
 * Lines from several sources as features of a site file: each line from its upper end, its bends, and the wyes where
 * lines meet. The first line has the id that is asked for, the others `-2` and so on behind it; what drains to a source
 * stands on the line that begins there.
 * @param site the one that was planned on.
 * @param request the one that the lines were planned with.
 * @param way the lines to adopt, as they were found.
 * @param options id and name of the first line.
 * @returns lines, then bends and wyes, in degrees, metres and millimetres as a site file has them.
 * @throws RangeError for a request that makes no sense.
 */
export function adoptShared(
  site: Site,
  request: SharedRouteRequest,
  way: Pick<SharedWay, 'lines' | 'junctions'>,
  options: Pick<AdoptOptions, 'id' | 'name'>,
): AdoptedFeature[] {
  const { lines, junctions } = way;
  const { id, name } = options;
  const scene = sceneOfAll(site, request);
  const { drains, fittings } = linesOfShared(
    scene,
    lines.map(({ geometry, pipe, ...line }) => ({
      ...line,
      points: geometry.coordinates.map((place) => pointOf(scene.plane, place)),
      laid: pipe,
    })),
    junctions,
  );
  const ids = new Map(drains.map((drain, i) => [drain.id, i === 0 ? id : `${id}-${i + 1}`]));
  return [
    ...drains.map((drain) => drainFeature(drain, ids.get(drain.id) as string, name, request.asOf)),
    ...fittings.map((fitting) =>
      fittingFeature(fitting, fitting.id.replace(/^route/, id), ids.get(fitting.drain as string) ?? id),
    ),
  ];
}
