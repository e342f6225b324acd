import type { Units } from '@rootreach/core';
import * as L from 'leaflet';
import { roundStep, unitM } from '../measure.js';
import { ink } from './ink.js';
import type { Plan } from './plan.js';

/** Grid lines stand at least this far apart on the screen. */
const LEAST_PIXELS = 26;
/** Every fifth line is a little stronger, as on squared paper. */
const STRONG_EVERY = 5;

/** Grid spacing in units for the present scale. */
export const gridStep = (metresPerPixel: number, units: Units): number =>
  roundStep((LEAST_PIXELS * metresPerPixel) / unitM(units));

/** Hairline grid in the chosen unit, anchored to the ground so that it moves with the plan. */
export function drawGrid(
  plan: Plan,
  group: L.LayerGroup,
  metresPerPixel: number,
  units: Units,
  anchor: L.LatLng,
): void {
  group.clearLayers();
  if (metresPerPixel === 0) return;
  const { map } = plan;
  const gap = (gridStep(metresPerPixel, units) * unitM(units)) / metresPerPixel;
  const size = map.getSize();
  const origin = map.latLngToContainerPoint(anchor);
  const renderer = plan.renderer('grid', false);
  const at = (x: number, y: number) => map.containerPointToLatLng([x, y]);
  // one path for all lines of a strength
  const [hair, strong]: [L.LatLng[][], L.LatLng[][]] = [[], []];
  const rule = (k: number, from: L.LatLng, to: L.LatLng) => {
    (k % STRONG_EVERY === 0 ? strong : hair).push([from, to]);
  };
  const steps = (start: number, extent: number) => {
    const first = Math.ceil((-extent / 2 - start) / gap);
    const last = Math.floor((extent * 1.5 - start) / gap);
    return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => first + i);
  };
  for (const k of steps(origin.x, size.x)) {
    const x = origin.x + k * gap;
    rule(k, at(x, -size.y / 2), at(x, size.y * 1.5));
  }
  for (const k of steps(origin.y, size.y)) {
    const y = origin.y + k * gap;
    rule(k, at(-size.x / 2, y), at(size.x * 1.5, y));
  }
  const base = { renderer, pane: 'grid', interactive: false, weight: 1, smoothFactor: 0 };
  L.polyline(hair, { ...base, color: ink('grid') }).addTo(group);
  L.polyline(strong, { ...base, color: ink('grid-strong') }).addTo(group);
}
