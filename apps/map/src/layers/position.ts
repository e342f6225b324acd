import type { LonLat } from '@rootreach/core';
import * as L from 'leaflet';
import { latLng } from './ground.js';
import { ink } from './ink.js';

/** Where the device says it is, with how sure it is of that. */
export function drawPosition(
  group: L.LayerGroup,
  renderer: L.Renderer,
  position: { readonly at: LonLat; readonly withinM: number } | null,
): void {
  group.clearLayers();
  if (!position) return;
  const base = { renderer, interactive: false, color: ink('focus'), fillColor: ink('focus') };
  const at = latLng(position.at);
  L.circle(at, { ...base, radius: position.withinM, weight: 1.5, fillOpacity: 0.1 }).addTo(group);
  L.circleMarker(at, { ...base, radius: 6, weight: 2, color: ink('paper'), fillOpacity: 1 }).addTo(group);
}
