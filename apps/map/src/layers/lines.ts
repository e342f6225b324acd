import { type Band, type SegmentResult, wordChance } from '@rootreach/core';
import * as L from 'leaflet';
import type { Units } from '../measure.js';
import { words } from '../words/words.js';
import { latLng } from './ground.js';
import { bandStroke, ink } from './ink.js';
import type { Plan } from './plan.js';

export interface LineEvents {
  readonly choose: (id: string) => void;
  readonly hint: (id: string | null) => void;
}

/** Width that a finger can hit. */
const HIT_PIXELS = 30;
const RING_PIXELS = 24;

/** The worse, the later drawn, so that nothing covers it. */
const ORDER: readonly Band[] = ['leave', 'cannot-say', 'watch', 'inspect', 'act'];

/** Makes a drawn shape answer to click, Enter and space, and say what it is. */
export function onActivate(path: L.Path, label: string, act: () => void): void {
  path.on('click', (event) => {
    L.DomEvent.stopPropagation(event);
    act();
  });
  const element = path.getElement() as SVGElement | undefined;
  if (!element) return;
  element.setAttribute('role', 'button');
  element.setAttribute('aria-label', label);
  element.addEventListener('keydown', (event) => {
    if (event.key !== 'Enter' && event.key !== ' ') return;
    event.preventDefault();
    event.stopPropagation();
    act();
  });
}

/** One band at a time: all casings, then all lines, then all centres, so that neighbours join without a seam. */
function drawBand(
  segments: readonly SegmentResult[],
  band: Band,
  small: boolean,
  base: L.PolylineOptions,
  group: L.LayerGroup,
): void {
  const { weight, color, casing, centre, dash } = bandStroke(band, small);
  const paths = segments
    .filter((one) => one.band === band)
    .map((one) => one.geometry.coordinates.map(latLng));
  const main = { weight, color, ...(dash ? { dashArray: dash } : {}) };
  const lineCap = band === 'act' ? 'round' : 'butt';
  for (const pen of [casing, main, centre]) {
    if (pen === null) continue;
    for (const path of paths) L.polyline(path, { ...base, lineCap, ...pen }).addTo(group);
  }
}

/** Arrow keys walk from stretch to stretch, so that Tab does not have to pass them all. */
function walkByArrows(
  hits: readonly { readonly hit: L.Polyline; readonly id: string }[],
  start: string | null,
): void {
  const elements = hits.flatMap(({ hit }) => (hit.getElement() as SVGElement | undefined) ?? []);
  const first = Math.max(
    0,
    hits.findIndex(({ id }) => id === start),
  );
  for (const [index, element] of elements.entries()) {
    element.setAttribute('tabindex', index === first ? '0' : '-1');
    element.addEventListener('keydown', (event) => {
      const by = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1 }[event.key];
      if (by === undefined) return;
      event.preventDefault();
      event.stopPropagation();
      const next = elements[(index + by + elements.length) % elements.length];
      element.setAttribute('tabindex', '-1');
      next?.setAttribute('tabindex', '0');
      next?.focus();
    });
  }
}

const byStation = (a: SegmentResult, b: SegmentResult) =>
  a.drainId === b.drainId ? a.startM - b.startM : a.drainId < b.drainId ? -1 : 1;

/** Lines in ink: colour, weight and pattern by what to do. */
export function drawLines(
  plan: Plan,
  group: L.LayerGroup,
  segments: readonly SegmentResult[],
  drawing: { readonly canvas: boolean; readonly small: boolean; readonly units: Units },
  events: LineEvents,
): void {
  const { canvas, units } = drawing;
  group.clearLayers();
  const base = {
    renderer: plan.renderer('lines', canvas),
    pane: 'lines',
    interactive: false,
    smoothFactor: 0,
  };
  for (const band of ORDER) drawBand(segments, band, drawing.small, base, group);
  const worst = segments[0]?.id ?? null;
  const hits = [...segments].sort(byStation).map((segment) => {
    const hit = L.polyline(segment.geometry.coordinates.map(latLng), {
      ...base,
      interactive: true,
      weight: canvas ? 12 : HIT_PIXELS,
      opacity: 0,
      lineCap: 'butt',
      className: 'stretch-hit',
    }).addTo(group);
    onActivate(hit, words.value.plan.stretch(segment, wordChance(segment.chance), units), () =>
      events.choose(segment.id),
    );
    hit.on('mouseover', () => events.hint(segment.id));
    hit.on('mouseout', () => events.hint(null));
    hit.getElement()?.setAttribute('data-stretch', segment.id);
    return { hit, id: segment.id };
  });
  walkByArrows(hits, worst);
}

/** A highlighter stroke under the chosen stretch, a paler one under the pointed-at. */
export function drawChosen(
  plan: Plan,
  group: L.LayerGroup,
  chosen: SegmentResult | null,
  hinted: SegmentResult | null,
  metresPerPixel: number,
): void {
  group.clearLayers();
  const base = {
    renderer: plan.renderer('circles', false),
    pane: 'circles',
    interactive: false,
    smoothFactor: 0,
  };
  const mark = (segment: SegmentResult, opacity: number) =>
    L.polyline(segment.geometry.coordinates.map(latLng), {
      ...base,
      color: ink('marker'),
      opacity,
      weight: 26,
      lineCap: 'butt',
    }).addTo(group);
  if (hinted && hinted.id !== chosen?.id) mark(hinted, 0.45);
  if (!chosen) return;
  const path = mark(chosen, 0.95);
  if (chosen.lengthM > RING_PIXELS * metresPerPixel) return;
  // A ring, so that a short stretch is found on a large plan.
  L.circleMarker(path.getBounds().getCenter(), {
    ...base,
    radius: RING_PIXELS,
    color: ink('ink'),
    weight: 2,
    fill: true,
    fillColor: ink('marker'),
    fillOpacity: 0.25,
  }).addTo(group);
}
