import { effect, signal, untracked } from '@preact/signals';
import type { LonLat } from '@rootreach/core';
import * as L from 'leaflet';
import { latLng } from '../layers/ground.js';
import { layHandles } from '../layers/handles.js';
import type { Plan } from '../layers/plan.js';
import { drawPosition } from '../layers/position.js';
import { layTiles } from '../layers/tiles.js';
import { layUnderlay } from '../layers/underlay.js';
import { find } from '../sketch/document.js';
import * as sketch from '../sketch/sketch.js';
import * as state from '../state.js';
import { words } from '../words/words.js';
import { finishDraft, forgetDraft, pointAt } from './draw-with.js';
import * as drawing from './drawing-state.js';
import { handlesOf, pictureHandle, stopsOf } from './handles-of.js';
import { outlineOf } from './outline.js';
import { planKey } from './plan-keys.js';
import { drawStrokes } from './strokes.js';
import { tileAddress } from './tile-address.js';

/** Over the plan's own layers, lowest first. */
const PANES = { strokes: '470', stops: '480', holds: '490' } as const;

const lonLatOf = ({ lng, lat }: L.LatLng): LonLat => [lng, lat];

const isOn = () => state.sheetPlace.value === 'draw' && sketch.site.value !== null;

/** Middle of the part of the plan that nothing lies over: there the cross stands. */
export function crossPoint(map: L.Map): L.Point {
  const { x, y } = map.getSize();
  return L.point(Math.round(x / 2), Math.round((y - state.coveredBottom.value) / 2));
}

/** Taps, the mouse, and the keys of the plan itself. */
function takeEvents({ map }: Plan): () => void {
  const container = map.getContainer();
  // A tap leaves a mouse behind it that nobody moved.
  const hovers = matchMedia('(hover: hover)');
  map.on('click', (event) => {
    if (!isOn()) return;
    if (drawing.aiming.value) map.panBy(event.containerPoint.subtract(crossPoint(map)), { animate: false });
    else pointAt(lonLatOf(event.latlng));
  });
  map.on('mousemove', (event) => {
    if (isOn() && hovers.matches) drawing.hover.value = lonLatOf(event.latlng);
  });
  map.on('mouseout', () => {
    drawing.hover.value = null;
  });
  const onKey = (event: KeyboardEvent) => {
    if (!isOn() || event.target !== container) return;
    if (!planKey(event, state.units.value, () => map.containerPointToLatLng(crossPoint(map)))) return;
    event.preventDefault();
    event.stopPropagation();
  };
  container.addEventListener('keydown', onKey, true);
  return () => container.removeEventListener('keydown', onKey, true);
}

/** The cross stays; the plan moves under it. What keys aimed at is exact, though the plan moves by whole pixels. */
function followAim({ map }: Plan): () => void {
  let ours = false;
  const look = () => {
    if (ours || !drawing.aiming.value) return;
    drawing.aim.value = lonLatOf(map.containerPointToLatLng(crossPoint(map)));
  };
  const settle = () => {
    drawing.planMiddle.value = lonLatOf(map.containerPointToLatLng(crossPoint(map)));
  };
  settle();
  map.on('move zoomend resize', look);
  map.on('moveend', settle);
  return effect(() => {
    const { aiming, aim } = drawing;
    if (!aiming.value || !isOn()) {
      aim.value = null;
      return;
    }
    if (aim.value === null) {
      look();
      return;
    }
    const off = map.latLngToContainerPoint(latLng(aim.value)).subtract(crossPoint(map));
    if (Math.abs(off.x) < 1 && Math.abs(off.y) < 1) return;
    ours = true;
    untracked(() => map.panBy(off.round(), { animate: false }));
    ours = false;
  });
}

function followView({ map }: Plan): () => void {
  return effect(() => {
    const view = drawing.wantedView.value;
    if (!view) return;
    const [lon, lat] = view.centre;
    const bounds = L.latLng(lat, lon).toBounds(view.acrossM);
    const bottom = state.coveredBottom.peek() + 10;
    untracked(() =>
      map.fitBounds(bounds, { paddingTopLeft: [10, 58], paddingBottomRight: [10, bottom], animate: false }),
    );
    drawing.wantedView.value = null;
  });
}

/** While the draw place is open, taps go to the drawing and not to the ranking's own layers. */
function followPlace({ map }: Plan): () => void {
  const container = map.getContainer();
  return effect(() => {
    const on = isOn();
    container.classList.toggle('drawing', on);
    container.setAttribute('aria-label', on ? words.value.draw.hint.aim : words.value.plan.label);
    if (on) {
      map.keyboard.disable();
      container.tabIndex = 0;
    } else {
      finishDraft();
      drawing.tool.value = 'pick';
      drawing.aiming.value = false;
      map.keyboard.enable();
    }
  });
}

function followHandles({ map }: Plan): () => void {
  const showStops = layHandles(map, 'stops');
  const showHolds = layHandles(map, 'holds');
  const moved = signal(0);
  map.on('moveend', () => {
    moved.value = moved.peek() + 1;
  });
  return effect(() => {
    moved.value;
    const site = isOn() ? sketch.site.value : null;
    const bounds = map.getBounds();
    const resting = drawing.tool.value === 'pick';
    const inView = (at: LonLat) => bounds.contains(latLng(at));
    showStops(site && resting ? stopsOf(site.features, inView) : []);
    const chosen = site && resting ? sketch.chosenFeature.value : null;
    const held = (index: number) => {
      drawing.heldPlace.value = index;
    };
    const picture = site && resting && drawing.pictureOpen.value ? pictureHandle() : [];
    showHolds([...(chosen ? handlesOf(chosen, held) : []), ...picture]);
  });
}

/** Brings the thing that was taken up to where nothing lies over it. */
function followChosen({ map }: Plan): () => void {
  return effect(() => {
    const ref = sketch.chosen.value;
    const site = sketch.site.peek();
    const feature = ref && site && isOn() ? find(site, ref) : undefined;
    if (!feature) return;
    const bounds = L.latLngBounds(outlineOf(feature).map(latLng));
    if (!bounds.isValid()) return;
    const bottom = state.coveredBottom.value;
    untracked(() =>
      map.panInside(bounds.getCenter(), {
        paddingTopLeft: [50, 120],
        paddingBottomRight: [50, bottom + 30],
        animate: false,
      }),
    );
  });
}

/** A drawing that was begun on one site must not go on in another. */
function followSite(): () => void {
  let key = sketch.site.peek()?.key;
  return effect(() => {
    const now = sketch.site.value?.key;
    if (now === key) return;
    key = now;
    forgetDraft();
    drawing.scalePlaces.value = [];
  });
}

/** Lays the drawing tools over the plan: fetched when the draw place is opened, or a picture lies under the plan. */
export function attachDrawing(plan: Plan): () => void {
  const { map } = plan;
  for (const [name, zIndex] of Object.entries(PANES)) {
    const pane = map.getPane(name) ?? map.createPane(name);
    pane.style.zIndex = zIndex;
    if (name === 'strokes') pane.style.pointerEvents = 'none';
  }
  const renderer = L.svg({ pane: 'strokes', padding: 0.4 });
  const strokes = L.layerGroup().addTo(map);
  const where = L.layerGroup().addTo(map);
  const showPicture = layUnderlay(map);
  const tiles = tileAddress();
  if (tiles) layTiles(map, tiles);
  const stops = [
    takeEvents(plan),
    followPlace(plan),
    followSite(),
    followAim(plan),
    followView(plan),
    followHandles(plan),
    followChosen(plan),
    effect(() => showPicture(drawing.underlay.value)),
    effect(() => {
      state.dark.value;
      drawPosition(where, renderer, drawing.position.value);
    }),
    effect(() => {
      state.dark.value;
      if (isOn()) drawStrokes(strokes, renderer);
      else strokes.clearLayers();
    }),
  ];
  return () => {
    for (const stop of stops) stop();
  };
}
