import type { LonLat, Obstacle, Site } from '@rootreach/core';
import * as L from 'leaflet';
import { ink } from './ink.js';
import type { Plan } from './plan.js';

/** Leaflet wants latitude first. */
export const latLng = ([lon, lat]: LonLat | readonly number[]): L.LatLngTuple => [lat ?? 0, lon ?? 0];

const AREAS: Partial<Record<Obstacle['type'], { fill: string; edge: string }>> = {
  building: { fill: 'building', edge: 'building-edge' },
  paving: { fill: 'paving', edge: 'paving-edge' },
  pool: { fill: 'pool', edge: 'paving-edge' },
};

const PATHS: Partial<Record<Obstacle['type'], { weight: number; dash: string | null }>> = {
  boundary: { weight: 1.2, dash: '14 4 3 4' },
  utility: { weight: 1.4, dash: '2 4' },
  wall: { weight: 3, dash: null },
};

/** Paving under everything, then pools, then buildings. */
const ORDER: readonly Obstacle['type'][] = ['paving', 'boundary', 'pool', 'utility', 'wall', 'building'];

function shapeOf(obstacle: Obstacle, base: L.PolylineOptions): L.Path {
  if (obstacle.shape.type === 'area') {
    const area = AREAS[obstacle.type];
    return L.polygon(
      obstacle.shape.rings.map((ring) => ring.map(latLng)),
      {
        ...base,
        weight: 1,
        color: ink(area?.edge ?? 'faint'),
        fill: area !== undefined,
        fillColor: ink(area?.fill ?? 'paving'),
        fillOpacity: 1,
        ...(obstacle.type === 'boundary' ? { dashArray: '14 4 3 4', color: ink('faint') } : {}),
      },
    );
  }
  const path = PATHS[obstacle.type] ?? { weight: 1.5, dash: null };
  return L.polyline(obstacle.shape.path.map(latLng), {
    ...base,
    weight: path.weight,
    color: ink('faint'),
    ...(path.dash === null ? {} : { dashArray: path.dash }),
  });
}

/** What stands on the ground: buildings and paving as flat greys, lot line, other services, root barriers. */
export function drawGround(
  plan: Plan,
  group: L.LayerGroup,
  site: Pick<Site, 'obstacles' | 'barriers'>,
  canvas: boolean,
): void {
  group.clearLayers();
  const base = {
    renderer: plan.renderer('ground', canvas),
    pane: 'ground',
    interactive: false,
    smoothFactor: 0,
  };
  const inOrder = [...site.obstacles].sort((a, b) => ORDER.indexOf(a.type) - ORDER.indexOf(b.type));
  for (const obstacle of inOrder) shapeOf(obstacle, base).addTo(group);
  for (const barrier of site.barriers) {
    const path = barrier.path.map(latLng);
    L.polyline(path, { ...base, weight: 5, color: ink('ink'), lineCap: 'butt' }).addTo(group);
    L.polyline(path, { ...base, weight: 3, color: ink('paper'), dashArray: '3 3', lineCap: 'butt' }).addTo(
      group,
    );
  }
}
