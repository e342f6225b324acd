import type { RankResult } from '@rootreach/core';
import { json } from './json.js';

/** One LineString feature a segment; all else about the ranking stands in the collection's own member. */
export function segmentGeojson({
  segments,
  site,
  ...rest
}: Omit<RankResult, 'issues'> & { issues: unknown }): string {
  const { lines: _lines, trees: _trees, ...about } = rest;
  return json({
    type: 'FeatureCollection',
    rootreach: { ...about, name: site.name, invented: site.invented },
    features: segments.map(({ geometry, ...properties }) => ({
      type: 'Feature',
      id: properties.id,
      properties,
      geometry,
    })),
  });
}
