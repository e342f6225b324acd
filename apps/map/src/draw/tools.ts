import type { FittingType, LonLat, ObstacleType } from '@rootreach/core';
import type { FeatureKind, SketchFeature } from '../sketch/document.js';
import { counterclockwise } from './outline.js';
import type { SnapKind } from './snap.js';

/** What a tap on the plan does. `pick` takes up what is there; `scale` gives two places of the picture. */
export type Tool = 'pick' | 'scale' | DrawTool;

export type DrawTool =
  | 'tree'
  | 'drain'
  | 'fitting'
  | 'building'
  | 'paving'
  | 'pool'
  | 'wall'
  | 'utility'
  | 'boundary'
  | 'barrier'
  | 'level';

export type Shape = 'point' | 'line' | 'area';

interface ToolRow {
  readonly kind: FeatureKind;
  readonly shape: Shape;
  readonly snap: SnapKind;
  /** Type of obstacle. */
  readonly type?: ObstacleType;
}

/** What each tool makes, in the order in which a lot is usually put down. */
export const tools: Readonly<Record<DrawTool, ToolRow>> = {
  tree: { kind: 'tree', shape: 'point', snap: 'none' },
  drain: { kind: 'drain', shape: 'line', snap: 'pipes' },
  fitting: { kind: 'fitting', shape: 'point', snap: 'lines' },
  building: { kind: 'obstacle', shape: 'area', snap: 'corners', type: 'building' },
  paving: { kind: 'obstacle', shape: 'area', snap: 'corners', type: 'paving' },
  pool: { kind: 'obstacle', shape: 'area', snap: 'corners', type: 'pool' },
  wall: { kind: 'obstacle', shape: 'line', snap: 'corners', type: 'wall' },
  utility: { kind: 'obstacle', shape: 'line', snap: 'none', type: 'utility' },
  boundary: { kind: 'obstacle', shape: 'line', snap: 'corners', type: 'boundary' },
  barrier: { kind: 'barrier', shape: 'line', snap: 'none' },
  level: { kind: 'level', shape: 'point', snap: 'none' },
};

export const drawTools = Object.keys(tools) as readonly DrawTool[];

export const isDrawTool = (tool: Tool): tool is DrawTool => tool !== 'pick' && tool !== 'scale';

export const fewest: Readonly<Record<Shape, number>> = { point: 1, line: 2, area: 3 };

/** What a tool asks for before it is used. */
export interface ToolChoices {
  readonly fitting: FittingType;
  /** Height of the ground where a spot level is put, in the unit that is on. */
  readonly elevation: number;
  readonly units: 'us' | 'metric';
}

function propertiesOf(tool: DrawTool, id: string, choices: ToolChoices): SketchFeature['properties'] {
  const { kind, type } = tools[tool];
  if (kind === 'obstacle') return { kind, type, id };
  if (kind === 'fitting') return { kind, type: choices.fitting, id };
  if (kind === 'drain') return { kind, id, flow: 'as-drawn' };
  if (kind !== 'level') return { kind, id };
  return choices.units === 'us'
    ? { kind, id, elevation_ft: choices.elevation }
    : { kind, id, elevation_m: choices.elevation };
}

/** The feature that a tool makes of the places it was given. */
export function madeBy(
  tool: DrawTool,
  id: string,
  places: readonly LonLat[],
  choices: ToolChoices,
): SketchFeature {
  const properties = propertiesOf(tool, id, choices);
  const positions = places.map((at) => [...at]);
  const { shape } = tools[tool];
  if (shape === 'point') {
    return { type: 'Feature', properties, geometry: { type: 'Point', coordinates: positions[0] ?? [] } };
  }
  if (shape === 'line') {
    return { type: 'Feature', properties, geometry: { type: 'LineString', coordinates: positions } };
  }
  const ring = counterclockwise(places).map((at) => [...at]);
  return {
    type: 'Feature',
    properties,
    geometry: { type: 'Polygon', coordinates: [[...ring, [...(ring[0] ?? [])]]] },
  };
}
