import { effect } from '@preact/signals';
import type { LonLat, RouteAlternative } from '@rootreach/core';
import * as L from 'leaflet';
import * as route from '../plan-route/route-state.js';
import { planNow, reshape } from '../plan-route/run-route.js';
import * as shared from '../plan-route/shared-state.js';
import * as state from '../state.js';
import { words } from '../words/words.js';
import { latLng } from './ground.js';
import { type Handle, layHandles } from './handles.js';
import { ink } from './ink.js';
import type { Plan } from './plan.js';
import { drawShared } from './shared-routes.js';
import { ringFault, strokeWay } from './way-strokes.js';

const PANES = { ways: '465', ends: '485' } as const;
const KEY_STEP_M = 0.3;

const lonLatOf = ({ lng, lat }: L.LatLng): LonLat => [lng, lat];
const isOn = () => state.sheetPlace.value === 'route';

const pathOf = ({ geometry }: RouteAlternative): LonLat[] =>
  geometry.coordinates.map(([lon = 0, lat = 0]) => [lon, lat]);

/** A place a step further in the direction of an arrow key. */
function stepped([lon, lat]: LonLat, key: string, far: boolean): LonLat | null {
  const step = KEY_STEP_M * (far ? 5 : 1);
  const north = step / 111_320;
  const east = north / Math.max(0.1, Math.cos((lat * Math.PI) / 180));
  switch (key) {
    case 'ArrowUp':
      return [lon, lat + north];
    case 'ArrowDown':
      return [lon, lat - north];
    case 'ArrowLeft':
      return [lon - east, lat];
    case 'ArrowRight':
      return [lon + east, lat];
    default:
      return null;
  }
}

function handle(
  key: string,
  at: LonLat,
  label: string,
  move: (to: LonLat) => void,
  moved: () => void = () => undefined,
): Handle {
  return {
    key,
    at,
    className: `route-${key.replace(/\d+$/, '')}`,
    label,
    draggable: true,
    act: () => undefined,
    drag: move,
    dragEnd: moved,
    keyDown: (event) => {
      const to = stepped(at, event.key, event.shiftKey);
      if (to === null) return false;
      move(to);
      moved();
      return true;
    },
  };
}

function drawWays(group: L.LayerGroup, renderer: L.Renderer): void {
  const { result, chosenId, drawn } = route;
  const alternatives = result.value?.alternatives ?? [];
  const none = result.value?.none;
  alternatives.forEach((alternative, index) => {
    const isChosen = alternative.id === chosenId.value;
    const path = pathOf(isChosen && drawn.value ? drawn.value : alternative).map(latLng);
    const choose = () => {
      drawn.value = null;
      chosenId.value = alternative.id;
    };
    strokeWay(group, renderer, path, { index, weight: isChosen ? 5 : 3, isChosen, choose });
  });
  if (none && 'geometry' in none) {
    const path = none.geometry.coordinates.map(([lon = 0, lat = 0]) => latLng([lon, lat]));
    L.polyline(path, {
      renderer,
      color: ink('inspect'),
      weight: 3,
      dashArray: '2 8',
      interactive: false,
    }).addTo(group);
    ringFault(group, renderer, latLng(none.at));
  }
}

/** Ways that were shown follow an end to where it was put. */
function planAgain(): void {
  if (route.answer.value !== null || shared.answer.value !== null) void planNow();
}

const endKey = (end: route.End, at: number): string => (at === 0 ? end : `${end}${at + 1}`);

/** Handles of the two ends, of the point that is to be passed, and of the bends of the chosen way. */
function handles(): Handle[] {
  const w = words.value.routes;
  const ends = (['from', 'to'] as const).flatMap((end) =>
    route.ends[end].value.flatMap((place, i, all) => {
      const at = route.positionOf(place);
      if (at === null) return [];
      const move = (to: LonLat) => route.setPlace(end, i, { position: to });
      const made = handle(endKey(end, i), at, w.placeLabel(end, i, all.length), move, planAgain);
      return [all.length > 1 ? { ...made, badge: String(i + 1) } : made];
    }),
  );
  const through = route.sharedRequest.value ? null : route.via.value;
  const vias = through
    ? [
        handle(
          'via',
          through,
          w.via,
          (place) => {
            route.via.value = place;
          },
          planAgain,
        ),
      ]
    : [];
  const chosen = route.chosen.value;
  if (!chosen) return [...ends, ...vias];
  const path = pathOf(chosen);
  const bends = path.slice(1, -1).map((at, i) =>
    handle(`bend${i + 1}`, at, w.bend(i + 1), (place) => {
      const now = pathOf(route.chosen.value ?? chosen);
      void reshape(now.map((one, k) => (k === i + 1 ? place : one)));
    }),
  );
  return [...ends, ...vias, ...bends];
}

/** Lays the planning of a new line over the plan: fetched with its panel. */
export function attachRoutes({ map }: Plan): () => void {
  for (const [name, zIndex] of Object.entries(PANES)) {
    const pane = map.getPane(name) ?? map.createPane(name);
    pane.style.zIndex = zIndex;
  }
  const renderer = L.svg({ pane: 'ways', padding: 0.4 });
  const group = L.layerGroup().addTo(map);
  const show = layHandles(map, 'ends');
  const take = ({ latlng }: L.LeafletMouseEvent) => {
    if (isOn()) route.setPicked(lonLatOf(latlng));
  };
  map.on('click', take);
  const container = map.getContainer();
  route.setMidPlan.value = () => {
    const what = route.picking.value;
    const { x, y } = map.getSize();
    route.setPicked(lonLatOf(map.containerPointToLatLng([x / 2, (y - state.coveredBottom.peek()) / 2])));
    // nothing else is to be set: the keys go on to move it
    if (what === null || route.picking.value !== null) return;
    const key = what === 'via' ? 'via' : endKey(what.end, what.at);
    container.querySelector<HTMLElement>(`[data-handle="${key}"]`)?.focus({ preventScroll: true });
  };
  const stops = [
    effect(() => {
      state.dark.value;
      group.clearLayers();
      if (!isOn()) return;
      drawWays(group, renderer);
      drawShared(group, renderer);
    }),
    effect(() => show(isOn() ? handles() : [])),
    effect(() => {
      container.classList.toggle('picking', isOn() && route.picking.value !== null);
    }),
  ];
  return () => {
    route.setMidPlan.value = null;
    map.off('click', take);
    for (const stop of stops) stop();
  };
}
