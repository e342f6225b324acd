import * as L from 'leaflet';
import { ink } from './ink.js';
import { patternOf } from './route-pattern.js';

/** Room for a finger on a way, pixels. */
const HIT = 24;

/** How one way is drawn: its place in the table gives the pattern. */
export interface WayStroke {
  readonly index: number;
  readonly weight: number;
  readonly isChosen: boolean;
}

/** Draws one way in its pattern on a rim of paper. @returns the unseen line that takes taps, not yet on the plan. */
export function strokeWay(
  group: L.LayerGroup,
  renderer: L.Renderer,
  path: L.LatLngExpression[],
  { index, weight, isChosen }: WayStroke,
): L.Polyline {
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
  return L.polyline(path, { renderer, color, weight: HIT, opacity: 0 });
}

/** Rings the place where water cannot run on by itself. */
export function ringFault(group: L.LayerGroup, renderer: L.Renderer, at: L.LatLngExpression): void {
  L.circleMarker(at, { renderer, radius: 9, color: ink('inspect'), weight: 3, fill: false }).addTo(group);
}
