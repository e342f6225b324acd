import type { SharedWay } from '@rootreach/core';
import * as L from 'leaflet';
import * as shared from '../plan-route/shared-state.js';
import { latLng } from './ground.js';
import { ink } from './ink.js';
import { ringFault, strokeWay } from './way-strokes.js';

/** Strokes of branches and of what carries their water on, chosen or not, pixels. */
const BRANCH = { chosen: 4, other: 2.5 } as const;
const MAIN = { chosen: 7, other: 2.5 } as const;

function drawWay(group: L.LayerGroup, renderer: L.Renderer, way: SharedWay, index: number): void {
  const isChosen = way === shared.way.value;
  const which = isChosen ? 'chosen' : 'other';
  const [dark, paper] = [ink('ink'), ink('paper')];
  for (const line of way.lines) {
    const path = line.geometry.coordinates.map(latLng);
    const weight = (shared.isMain(line, way) ? MAIN : BRANCH)[which];
    const choose = () => {
      shared.shape.value = way.shape;
    };
    strokeWay(group, renderer, path, { index, weight, isChosen, choose });
  }
  if (!isChosen) return;
  for (const { position } of way.junctions) {
    L.circleMarker(latLng(position), {
      renderer,
      radius: 6,
      color: dark,
      weight: 3,
      fillColor: paper,
      fillOpacity: 1,
      interactive: false,
    }).addTo(group);
  }
}

/** Draws lines for several starts: what is chosen last, over the other. */
export function drawShared(group: L.LayerGroup, renderer: L.Renderer): void {
  const ways = shared.ways.value.map((way, index) => ({ way, index }));
  const chosen = shared.way.value;
  for (const { way, index } of ways.sort((a, b) => Number(a.way === chosen) - Number(b.way === chosen)))
    drawWay(group, renderer, way, index);
  const none = shared.plan.value?.result.none;
  if (none?.reason !== 'no-fall') return;
  ringFault(group, renderer, latLng(none.at));
}
