import type { SharedLine, SharedRouteRequest, SharedWay } from '@rootreach/core';
import * as route from '../../plan-route/route-state.js';
import { isMain } from '../../plan-route/shared-state.js';
import * as state from '../../state.js';
import { words } from '../../words/words.js';

const w = () => words.value.routes.shared;

/** Number of a start by the id that the plan gives it; 0 for none. */
function startNumber(id: string, { from }: SharedRouteRequest): number {
  return from.findIndex(({ place }, i) => ('id' in place ? place.id : `source ${i + 1}`) === id) + 1;
}

/** A place that lines run from or to: a start by its number, a meeting by its letter, or the outlet. */
function placeName(id: string, way: SharedWay): string {
  const request = route.sharedRequest.value;
  const start = request ? startNumber(id, request) : 0;
  const fitting = state.opened.value?.site.fittings.find((one) => one.id === id);
  if (start > 0) return w().start(start, fitting ? fitting.id : null);
  const meeting = way.junctions.findIndex((one) => one.id === id);
  if (meeting >= 0) return w().meeting(String.fromCharCode(65 + meeting));
  return w().outlet(fitting ? fitting.id : null);
}

/** `Main: meeting A to the outlet`. */
export const lineName = (line: SharedLine, way: SharedWay): string =>
  w().line(isMain(line, way), placeName(line.from, way), placeName(line.to, way));
