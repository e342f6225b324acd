import type { NetworkOutlet, NetworkSource } from '../model/network.js';
import type { RoutePlace, RouteRequest } from '../model/route.js';
import type { SharedRouteRequest } from '../model/shared-route.js';
import type { Site } from '../model/site.js';
import { type RouteScene, sceneOf } from './scene.js';

/** Sources and outlets of a shared route in its plane. */
export interface SharedEnds {
  readonly sources: readonly NetworkSource[];
  readonly outlets: readonly NetworkOutlet[];
}

/** The scene of all ends: its outlets are the request's, and after them the other sources. */
export function sceneOfAll(site: Site, request: SharedRouteRequest): RouteScene {
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

/** The ends of a request as the network knows them. */
export function endsOf(scene: RouteScene, request: SharedRouteRequest): SharedEnds {
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
