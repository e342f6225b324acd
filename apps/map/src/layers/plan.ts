import * as L from 'leaflet';
import 'leaflet/dist/leaflet.css';

/** Drawing order, lowest first. */
const PANES = ['grid', 'ground', 'wash', 'circles', 'lines', 'fittings', 'labels'] as const;
export type Pane = (typeof PANES)[number];

export interface Plan {
  readonly map: L.Map;
  /** Draws into one pane; on canvas where a site is too large for one element a feature. */
  readonly renderer: (pane: Pane, canvas: boolean) => L.Renderer;
}

const reducedMotion = () => matchMedia('(prefers-reduced-motion: reduce)').matches;

/** The empty sheet of paper: no tiles, no attribution image, no request to anywhere. */
export function createPlan(element: HTMLElement): Plan {
  const still = reducedMotion();
  const map = L.map(element, {
    attributionControl: false,
    zoomControl: false,
    minZoom: 12,
    maxZoom: 24,
    zoomSnap: 0.25,
    zoomDelta: 0.75,
    wheelPxPerZoomLevel: 110,
    zoomAnimation: !still,
    fadeAnimation: !still,
    inertia: !still,
    bounceAtZoomLimits: false,
  });
  map.setView([0, 0], 18);
  for (const [index, pane] of PANES.entries()) {
    const made = map.createPane(pane);
    made.style.zIndex = String(400 + index * 10);
    made.classList.add(`pane-${pane}`);
    if (pane !== 'lines' && pane !== 'circles') made.style.pointerEvents = 'none';
  }
  element.setAttribute('role', 'application');

  const made = new Map<string, L.Renderer>();
  const renderer = (pane: Pane, canvas: boolean): L.Renderer => {
    const key = `${pane}/${canvas}`;
    let found = made.get(key);
    if (!found) {
      const options = { pane, padding: 0.4, tolerance: 12 };
      found = canvas ? L.canvas(options) : L.svg(options);
      made.set(key, found);
    }
    return found;
  };
  return { map, renderer };
}
