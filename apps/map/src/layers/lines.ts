import type { SegmentResult, Units } from '@rootreach/core';
import * as L from 'leaflet';
import { latLng } from './ground.js';
import { ink } from './ink.js';
import type { Plan } from './plan.js';
import { drawingOf, HIT_SLOT, type LineEvents, StretchPaths } from './stretch.js';

const RING_PIXELS = 24;
const SVG = 'http://www.w3.org/2000/svg';

const byStation = (a: SegmentResult, b: SegmentResult) =>
  a.drainId === b.drainId ? a.startM - b.startM : a.drainId < b.drainId ? -1 : 1;

/** What the drawing of the lines hangs on beside the stretches. */
export interface LinesDrawing {
  readonly canvas: boolean;
  readonly small: boolean;
  /** Only what answers to the keys, where something else draws the lines. */
  readonly keysOnly: boolean;
  readonly units: Units;
  /** The catalogue of texts: others in another language. */
  readonly words: unknown;
  /** Changes with the colours of the page. */
  readonly scheme: unknown;
}

/** Groups of the drawing in the order in which they lie over each other. */
function makeSlots(renderer: L.Renderer): SVGGElement[] {
  const root = (renderer as unknown as { readonly _rootGroup: SVGGElement })._rootGroup;
  return Array.from({ length: HIT_SLOT + 1 }, () => {
    const slot = document.createElementNS(SVG, 'g') as SVGGElement;
    root.append(slot);
    return slot;
  });
}

/** Arrow keys walk from stretch to stretch, so that Tab does not have to pass them all. */
class Walk {
  private order: readonly string[] = [];
  private stop: string | null = null;

  constructor(private readonly elementOf: (id: string) => SVGElement | undefined) {}

  /** @param start where Tab comes in at first. */
  follow(order: readonly string[], start: string | null): void {
    this.order = order;
    if (this.stop === null || !order.includes(this.stop)) this.stopAt(start ?? order[0] ?? null);
  }

  private stopAt(id: string | null): void {
    if (this.stop !== null) this.elementOf(this.stop)?.setAttribute('tabindex', '-1');
    this.stop = id;
    if (id !== null) this.elementOf(id)?.setAttribute('tabindex', '0');
  }

  take(id: string): void {
    const element = this.elementOf(id);
    element?.setAttribute('tabindex', id === this.stop ? '0' : '-1');
    element?.addEventListener('keydown', (event) => {
      const by = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1 }[event.key];
      if (by === undefined) return;
      event.preventDefault();
      event.stopPropagation();
      const count = this.order.length;
      const next = this.order[(this.order.indexOf(id) + by + count) % count];
      if (next === undefined) return;
      this.stopAt(next);
      this.elementOf(next)?.focus();
    });
  }
}

/** Lines in ink: colour, weight and pattern by what to do. Only what changed is drawn again. */
export function linesLayer(plan: Plan, group: L.LayerGroup, events: LineEvents) {
  const shown = new Map<string, StretchPaths>();
  const walk = new Walk((id) => shown.get(id)?.hit.getElement() as SVGElement | undefined);
  let drawing: ReturnType<typeof drawingOf> | null = null;
  let slots: SVGGElement[] = [];
  let last: LinesDrawing | null = null;

  const sheet = {
    put: (path: L.Polyline, slot: number): void => {
      path.addTo(group);
      const element = path.getElement();
      if (element) slots[slot]?.append(element);
    },
    takeOff: (path: L.Polyline): void => {
      group.removeLayer(path);
    },
  };

  function begin(now: LinesDrawing): ReturnType<typeof drawingOf> {
    group.clearLayers();
    shown.clear();
    for (const slot of slots) slot.remove();
    const renderer = plan.renderer('lines', now.canvas);
    if (!plan.map.hasLayer(renderer)) renderer.addTo(plan.map);
    slots = now.canvas ? [] : makeSlots(renderer);
    const base = { renderer, pane: 'lines', interactive: false, smoothFactor: 0 };
    return drawingOf(base, now);
  }

  /** The same paths in the order of drawing: on canvas what is drawn later lies over the rest. */
  function onCanvas(segments: readonly SegmentResult[], how: ReturnType<typeof drawingOf>): void {
    const waiting: { readonly path: L.Polyline; readonly slot: number }[] = [];
    const put = (path: L.Polyline, slot: number) => waiting.push({ path, slot });
    for (const segment of segments) new StretchPaths(segment, how, { ...sheet, put }, events);
    for (const { path } of waiting.sort((a, b) => a.slot - b.slot)) path.addTo(group);
  }

  function inPlace(
    segments: readonly SegmentResult[],
    how: ReturnType<typeof drawingOf>,
    rename: boolean,
  ): void {
    const units = last?.units ?? 'us';
    const gone = new Set(shown.keys());
    let other = false;
    for (const segment of segments) {
      gone.delete(segment.id);
      const found = shown.get(segment.id);
      const changed = found?.isOld(segment) === true && found.change(segment);
      if (found && !changed && !rename) continue;
      const paths = found ?? new StretchPaths(segment, how, sheet, events);
      paths.name(units);
      if (found) continue;
      shown.set(segment.id, paths);
      walk.take(segment.id);
      other = true;
    }
    for (const id of gone) {
      shown.get(id)?.remove();
      shown.delete(id);
    }
    if (!other && gone.size === 0) return;
    const order = [...segments].sort(byStation).map(({ id }) => id);
    walk.follow(order, segments[0]?.id ?? null);
  }

  return (segments: readonly SegmentResult[], now: LinesDrawing): void => {
    const same =
      last?.canvas === now.canvas &&
      last.small === now.small &&
      last.keysOnly === now.keysOnly &&
      last.scheme === now.scheme;
    const rename = last?.units !== now.units || last.words !== now.words;
    last = now;
    if (!same || drawing === null || now.canvas) drawing = begin(now);
    if (now.canvas) onCanvas(segments, drawing);
    else inPlace(segments, drawing, rename);
  };
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
