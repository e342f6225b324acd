import type { RouteAlternative, SharedLine, SharedWay } from '@rootreach/core';
import { distanceM, lonLat } from '../../draw/flat.js';
import * as route from '../../plan-route/route-state.js';
import { isMain } from '../../plan-route/shared-state.js';
import * as state from '../../state.js';
import { words } from '../../words/words.js';

const w = () => words.value.routes.shared;

const PLAN_CALLS = { from: 'source', to: 'outlet' } as const;

/** Number on the page of a place of one end, by the id that the plan gives it; 0 for none. */
function placeNumber(end: route.End, id: string): number {
  const at = route
    .placesOf(end)
    .findIndex((place, i) => ('id' in place ? place.id : `${PLAN_CALLS[end]} ${i + 1}`) === id);
  return at < 0 ? 0 : route.numberOf(end, at);
}

const fittingId = (id: string): string | null =>
  state.opened.value?.site.fittings.some((one) => one.id === id) ? id : null;

/** An outlet by its number, where there are several. */
function outletName(number: number, id: string): string {
  return w().outlet(route.ends.to.value.length > 1 ? number : null, fittingId(id));
}

/** A place that lines run from or to: a start or an outlet by its number, a meeting by its letter. */
function placeName(id: string, way: SharedWay): string {
  const start = placeNumber('from', id);
  if (start > 0) return w().start(start, fittingId(id));
  const meeting = way.junctions.findIndex((one) => one.id === id);
  if (meeting >= 0) return w().meeting(String.fromCharCode(65 + meeting));
  return outletName(placeNumber('to', id), id);
}

/** Of several outlets, the one that a way comes out at. */
export function outletOf({ geometry }: Pick<RouteAlternative, 'geometry'>): string {
  const end = lonLat(geometry.coordinates.at(-1) ?? []);
  const gaps = route.placesOf('to').map((place) => {
    const at = route.positionOf(place);
    return at === null ? Number.POSITIVE_INFINITY : distanceM(at, end);
  });
  const i = gaps.indexOf(Math.min(...gaps));
  const place = route.placesOf('to')[i];
  return outletName(route.numberOf('to', i), place && 'id' in place ? place.id : '');
}

/** `Main: meeting A to the outlet`. */
export const lineName = (line: SharedLine, way: SharedWay): string =>
  w().line(isMain(line, way), placeName(line.from, way), placeName(line.to, way));
