import * as L from 'leaflet';
import * as route from '../plan-route/route-state.js';
import { ink } from './ink.js';
import { patternOf } from './route-pattern.js';

/** Room for a finger on a way, pixels. */
const HIT = 24;

/** How one way is drawn: its place in the table gives the pattern. */
export interface WayStroke {
  readonly index: number;
  readonly weight: number;
  readonly isChosen: boolean;
  readonly choose: () => void;
}

/** Draws one way in its pattern on a rim of paper; a tap chooses it. */
export function strokeWay(
  group: L.LayerGroup,
  renderer: L.Renderer,
  path: L.LatLngExpression[],
  { index, weight, isChosen, choose }: WayStroke,
): void {
  const color = ink('ink');
  const common = { renderer, interactive: false } as const;
  L.polyline(path, { ...common, color: ink('paper'), weight: weight + 4, opacity: 0.9 }).addTo(group);
  L.polyline(path, {
    ...common,
    color,
    weight,
    opacity: isChosen ? 1 : 0.6,
    dashArray: patternOf(index),
  }).addTo(group);
  const hit = L.polyline(path, { renderer, color, weight: HIT, opacity: 0 });
  hit.on('click', (event) => {
    // a tap that sets a place goes through to the plan
    if (route.picking.value !== null) return;
    L.DomEvent.stopPropagation(event);
    choose();
  });
  hit.addTo(group);
}

/** Rings the place where water cannot run on by itself. */
export function ringFault(group: L.LayerGroup, renderer: L.Renderer, at: L.LatLngExpression): void {
  L.circleMarker(at, { renderer, radius: 9, color: ink('inspect'), weight: 3, fill: false }).addTo(group);
}
