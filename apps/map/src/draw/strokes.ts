import type { LonLat } from '@rootreach/core';
import * as L from 'leaflet';
import { latLng } from '../layers/ground.js';
import { ink } from '../layers/ink.js';
import * as measure from '../measure.js';
import * as sketch from '../sketch/sketch.js';
import * as state from '../state.js';
import * as drawing from './drawing-state.js';
import { distanceM, legsM } from './flat.js';
import { isArea, outlineOf } from './outline.js';
import { isDrawTool, tools } from './tools.js';

/** Legs shorter than this on the screen carry no length. */
const LEAST_LABEL_PIXELS = 44;

const middle = (a: LonLat, b: LonLat): LonLat => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];

function legLabel(group: L.LayerGroup, a: LonLat, b: LonLat, lengthM: number, aside = false): void {
  if (lengthM < LEAST_LABEL_PIXELS * state.metresPerPixel.value) return;
  const html = document.createElement('span');
  html.textContent = measure.length(lengthM, state.units.value);
  const icon = L.divIcon({
    html,
    className: aside ? 'leg-length leg-length-aside' : 'leg-length',
    iconSize: [64, 20],
  });
  L.marker(latLng(middle(a, b)), { icon, pane: 'strokes', interactive: false, keyboard: false }).addTo(group);
}

function path(group: L.LayerGroup, places: readonly LonLat[], closed: boolean, options: L.PolylineOptions) {
  const points = places.map(latLng);
  const shape = closed ? L.polygon(points, { ...options, fill: false }) : L.polyline(points, options);
  shape.addTo(group);
}

function drawPaper(group: L.LayerGroup, places: readonly LonLat[], closed: boolean, base: L.PolylineOptions) {
  path(group, places, closed, { ...base, weight: 7, color: ink('paper'), opacity: 0.85 });
  path(group, places, closed, { ...base, weight: 3, color: ink('focus') });
  const ring = closed ? [...places, places[0] as LonLat] : places;
  for (const [i, lengthM] of legsM(ring).entries()) {
    // The handles of a thing taken up stand in the middle of its legs.
    legLabel(group, ring[i] as LonLat, ring[i + 1] as LonLat, lengthM, drawing.draft.value === null);
  }
}

function drawChosen(group: L.LayerGroup, base: L.PolylineOptions): void {
  const feature = sketch.chosenFeature.value;
  if (!feature || drawing.draft.value) return;
  const outline = outlineOf(feature);
  if (outline.length > 1) drawPaper(group, outline, isArea(feature), base);
}

function drawDraft(group: L.LayerGroup, base: L.PolylineOptions): void {
  const { tool, draft, pointer, snapped } = drawing;
  const under = draft.value;
  const next = snapped.value?.at ?? pointer.value;
  if (under) {
    const area = isDrawTool(tool.value) && tools[tool.value].shape === 'area';
    drawPaper(group, under.places, area && under.places.length > 2, base);
    for (const at of under.places) dot(group, at, base);
    const last = under.places.at(-1);
    if (next && last) {
      path(group, [last, next], false, { ...base, weight: 2, color: ink('focus'), dashArray: '6 5' });
      legLabel(group, last, next, distanceM(last, next));
    }
  }
  const snap = snapped.value;
  if (!snap) return;
  const ring = { ...base, radius: 13, color: ink('focus') };
  L.circleMarker(latLng(snap.at), { ...ring, color: ink('paper'), weight: 7 }).addTo(group);
  L.circleMarker(latLng(snap.at), { ...ring, weight: 3 }).addTo(group);
}

function dot(group: L.LayerGroup, at: LonLat, base: L.PolylineOptions): void {
  const look = {
    radius: 5,
    weight: 2,
    color: ink('paper'),
    fill: true,
    fillColor: ink('focus'),
    fillOpacity: 1,
  };
  L.circleMarker(latLng(at), { ...base, ...look }).addTo(group);
}

/** What is being drawn, what was taken up, and where the next place would be drawn to. */
export function drawStrokes(group: L.LayerGroup, renderer: L.Renderer): void {
  group.clearLayers();
  const base = { renderer, pane: 'strokes', interactive: false, smoothFactor: 0, fill: false };
  drawChosen(group, base);
  drawDraft(group, base);
  for (const at of drawing.scalePlaces.value) dot(group, at, base);
  const [a, b] = drawing.scalePlaces.value;
  if (a && b) path(group, [a, b], false, { ...base, weight: 3, color: ink('focus'), dashArray: '8 5' });
}
