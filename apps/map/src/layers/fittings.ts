import type { Fitting } from '@rootreach/core';
import * as L from 'leaflet';
import { words } from '../words/words.js';
import { latLng } from './ground.js';
import { marks } from './marks.js';
import type { Plan } from './plan.js';

const SVG = 'http://www.w3.org/2000/svg';
/** Small parts are left out where the plan is too small to show them. */
const MINOR: ReadonlySet<Fitting['type']> = new Set(['coupling', 'bend', 'reducer', 'cap', 'tee']);
const MINOR_BELOW_METRES_PER_PIXEL = 0.12;
const ALL_BELOW_METRES_PER_PIXEL = 0.5;

function markElement(fitting: Fitting): SVGSVGElement {
  const svg = document.createElementNS(SVG, 'svg');
  svg.setAttribute('viewBox', '0 0 20 20');
  svg.setAttribute('role', 'img');
  svg.setAttribute('aria-label', `${words.value.fitting[fitting.type]} ${fitting.id}`);
  const { lines, solid } = marks[fitting.type];
  for (const [className, d] of [
    ['mark-back', lines],
    ['mark-line', lines],
    ['mark-solid', solid],
  ] as const) {
    if (d === undefined) continue;
    const path = document.createElementNS(SVG, 'path');
    path.setAttribute('class', className);
    path.setAttribute('d', d);
    svg.append(path);
  }
  return svg;
}

/** Those that are drawn at this scale. */
export function shownFittings(fittings: readonly Fitting[], metresPerPixel: number): readonly Fitting[] {
  if (metresPerPixel > ALL_BELOW_METRES_PER_PIXEL) return [];
  if (metresPerPixel <= MINOR_BELOW_METRES_PER_PIXEL) return fittings;
  return fittings.filter((fitting) => !MINOR.has(fitting.type));
}

/** Fittings as small plain marks; the key explains them. */
export function drawFittings(
  plan: Plan,
  group: L.LayerGroup,
  fittings: readonly Fitting[],
  metresPerPixel: number,
): void {
  group.clearLayers();
  const inView = plan.map.getBounds().pad(0.3);
  for (const fitting of shownFittings(fittings, metresPerPixel)) {
    if (!inView.contains(latLng(fitting.position))) continue;
    const icon = L.divIcon({
      html: markElement(fitting) as unknown as HTMLElement,
      className: 'mark',
      iconSize: [20, 20],
    });
    L.marker(latLng(fitting.position), { icon, pane: 'fittings', interactive: false, keyboard: false }).addTo(
      group,
    );
  }
}
