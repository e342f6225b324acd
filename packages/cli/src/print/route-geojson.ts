import type { RouteResult, SharedRouteResult } from '@rootreach/core';
import { json } from './json.js';

/** One line feature an alternative; all else about the result stands in the collection's own member. */
export function routeGeojson({ alternatives, ...about }: RouteResult): string {
  return json({
    type: 'FeatureCollection',
    rootreach: about,
    features: alternatives.map(({ geometry, ...properties }) => ({
      type: 'Feature',
      id: properties.id,
      properties,
      geometry,
    })),
  });
}

/** One line feature a line of a shared route. */
export function sharedGeojson({ route, ...about }: SharedRouteResult): string {
  const { lines = [], ...rest } = route ?? {};
  return json({
    type: 'FeatureCollection',
    rootreach: { ...about, route: route === null ? null : rest },
    features: lines.map(({ geometry, ...properties }) => ({
      type: 'Feature',
      id: properties.id,
      properties,
      geometry,
    })),
  });
}
