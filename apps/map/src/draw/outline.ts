import type { LonLat } from '@rootreach/core';
import type { Position } from 'geojson';
import type { SketchFeature } from '../sketch/document.js';

/** Places that can be taken hold of: a point's one, a line's, an area's outer ring without its closing place. */
export function outlineOf(feature: SketchFeature): readonly LonLat[] {
  const { geometry } = feature;
  if (geometry === null) return [];
  if (geometry.type === 'Point') return [geometry.coordinates as unknown as LonLat];
  if (geometry.type === 'LineString') return geometry.coordinates as unknown as LonLat[];
  if (geometry.type === 'Polygon') return (geometry.coordinates[0] ?? []).slice(0, -1) as unknown as LonLat[];
  return [];
}

export const isArea = (feature: SketchFeature): boolean => feature.geometry?.type === 'Polygon';

/** Fewest places the shape can do with. */
export function fewestPlaces(feature: SketchFeature): number {
  if (feature.geometry?.type === 'Polygon') return 3;
  return feature.geometry?.type === 'LineString' ? 2 : 1;
}

const position = (at: LonLat): Position => [...at];

/** The same feature along another outline; holes of an area stay. */
export function withOutline(feature: SketchFeature, outline: readonly LonLat[]): SketchFeature {
  const { geometry } = feature;
  const first = outline[0];
  if (geometry === null || first === undefined) return feature;
  if (geometry.type === 'Point') {
    return { ...feature, geometry: { ...geometry, coordinates: position(first) } };
  }
  if (geometry.type === 'LineString') {
    return { ...feature, geometry: { ...geometry, coordinates: outline.map(position) } };
  }
  if (geometry.type !== 'Polygon') return feature;
  const ring = counterclockwise([...outline]).map(position);
  ring.push([...(ring[0] as Position)]);
  return { ...feature, geometry: { ...geometry, coordinates: [ring, ...geometry.coordinates.slice(1)] } };
}

/** RFC 7946 section 3.1.6: an outer ring runs counterclockwise. Its first place stays first. */
export function counterclockwise(ring: readonly LonLat[]): readonly LonLat[] {
  const [west, south] = ring[0] ?? [0, 0];
  const twice = ring.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = ring[(i + 1) % ring.length] as LonLat;
    return sum + (x - west) * (nextY - south) - (nextX - west) * (y - south);
  }, 0);
  const [first, ...rest] = ring;
  return twice >= 0 || first === undefined ? ring : [first, ...rest.reverse()];
}
