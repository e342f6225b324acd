import type { TreeZones } from '@rootreach/core';
import * as L from 'leaflet';
import { words } from '../words/words.js';
import { ink } from './ink.js';
import { onActivate } from './lines.js';
import type { Plan } from './plan.js';
import { canvasWash, svgWash } from './wash.js';

/** A stem is never drawn smaller than this, or it would be lost. */
const LEAST_STEM_PIXELS = { full: 2.5, small: 1.3 };

/** Trees: a wash that fades as the roots do, dripline, protection circle, stem to scale. Nothing else. */
export function drawTrees(
  plan: Plan,
  group: L.LayerGroup,
  trees: readonly TreeZones[],
  drawing: { readonly canvas: boolean; readonly small: boolean; readonly chosen: string | null },
  choose: (id: string) => void,
): void {
  group.clearLayers();
  const { canvas, small, chosen } = drawing;
  const washRenderer = plan.renderer('wash', canvas);
  if (!plan.map.hasLayer(washRenderer)) washRenderer.addTo(plan.map);
  const color = ink('root');
  const paint = canvas ? null : svgWash(washRenderer, color);
  const washed = canvas ? canvasWash(color) : null;
  const circles = { renderer: plan.renderer('circles', canvas), pane: 'circles', fill: false };
  for (const tree of trees) {
    const at: L.LatLngTuple = [tree.lat, tree.lon];
    const wash = {
      radius: tree.reachM,
      renderer: washRenderer,
      pane: 'wash',
      interactive: false,
      stroke: false,
    };
    if (washed) washed(at, wash).addTo(group);
    else if (paint) L.circle(at, { ...wash, fillColor: paint, fillOpacity: 1 }).addTo(group);
    const mine = tree.id === chosen;
    L.circle(at, {
      ...circles,
      interactive: false,
      radius: tree.driplineM,
      color: ink('tree'),
      weight: mine ? 2.2 : 1.1,
    }).addTo(group);
    L.circle(at, {
      ...circles,
      interactive: false,
      radius: tree.protectionM,
      color: ink('tree'),
      weight: mine ? 2 : 1.2,
      dashArray: '1 5',
    }).addTo(group);
    stem(group, tree, circles.renderer, LEAST_STEM_PIXELS[small ? 'small' : 'full'], choose);
  }
}

function stem(
  group: L.LayerGroup,
  tree: TreeZones,
  renderer: L.Renderer,
  leastPixels: number,
  choose: (id: string) => void,
): void {
  const at: L.LatLngTuple = [tree.lat, tree.lon];
  const dot = {
    renderer,
    pane: 'circles',
    interactive: false,
    stroke: false,
    fillColor: ink('tree'),
    fillOpacity: 1,
  };
  L.circleMarker(at, { ...dot, radius: leastPixels }).addTo(group);
  L.circle(at, { ...dot, radius: tree.stemDiameterM / 2 }).addTo(group);
  const hit = L.circleMarker(at, {
    ...dot,
    radius: 22,
    fillOpacity: 0,
    interactive: true,
    className: 'stem-hit',
  });
  hit.addTo(group);
  onActivate(hit, words.value.tree.label(tree.name), () => choose(tree.id));
  hit.getElement()?.setAttribute('tabindex', '-1');
}
