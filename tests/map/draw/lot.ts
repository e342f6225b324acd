import type { SiteDocument, SketchFeature } from '../../../apps/map/src/sketch/document.js';

export type At = readonly [lon: number, lat: number];

/** A corner of an invented lot in open ocean. */
export const CORNER: At = [-60, 40];

export const point = (properties: Record<string, unknown>, at: At): SketchFeature => ({
  type: 'Feature',
  properties,
  geometry: { type: 'Point', coordinates: [...at] },
});

export const line = (properties: Record<string, unknown>, path: readonly At[]): SketchFeature => ({
  type: 'Feature',
  properties,
  geometry: { type: 'LineString', coordinates: path.map((at) => [...at]) },
});

export const area = (properties: Record<string, unknown>, ring: readonly At[]): SketchFeature => ({
  type: 'Feature',
  properties,
  geometry: { type: 'Polygon', coordinates: [[...ring, ring[0] as At].map((at) => [...at])] },
});

export const documentOf = (...features: readonly SketchFeature[]): SiteDocument => ({
  key: 'test',
  features,
  info: { schema: 1, units: 'metric' },
  members: {},
});
