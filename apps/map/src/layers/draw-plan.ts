import { effect, signal } from '@preact/signals';
import * as L from 'leaflet';
import { emptyLot } from '../draw/empty-lot.js';
import { drawingWhenWanted } from '../draw/when-wanted.js';
import * as sketch from '../sketch/sketch.js';
import * as state from '../state.js';
import { drawFittings } from './fittings.js';
import { drawGrid } from './grid.js';
import { drawGround, latLng } from './ground.js';
import { drawLabels } from './labels.js';
import { drawChosen, drawLines } from './lines.js';
import { createPlan, type Plan } from './plan.js';
import { drawTrees } from './trees.js';

export interface PlanControls {
  readonly zoomBy: (steps: number) => void;
  readonly showWhole: () => void;
  readonly stop: () => void;
}

function siteBounds(): L.LatLngBounds | null {
  const opened = state.opened.value;
  if (!opened) return null;
  const { site, result } = opened;
  // Streets may run on past the lot; they do not count.
  const shapes = site.obstacles.filter(({ type }) => type !== 'paving').map(({ shape }) => shape);
  const points = [
    ...site.drains.flatMap((drain) => drain.path),
    ...shapes.flatMap((shape) => (shape.type === 'area' ? shape.rings.flat() : shape.path)),
  ];
  const bounds = L.latLngBounds(points.map(latLng));
  for (const tree of result.trees) {
    const across = Math.max(tree.driplineM, 1) * 2;
    bounds.extend(L.latLng(tree.lat, tree.lon).toBounds(across));
  }
  return bounds.isValid() ? bounds : null;
}

/** Edges of the plan that something lies over, in pixels. */
function covered(): L.FitBoundsOptions {
  const bottom = state.coveredBottom.peek();
  if (!state.wide.peek()) return { paddingTopLeft: [10, 58], paddingBottomRight: [10, bottom + 50] };
  return { paddingTopLeft: [20, 40], paddingBottomRight: [state.keyOpen.peek() ? 292 : 76, 40] };
}

/** Each concern of the drawing follows the state on its own. */
function startEffects(plan: Plan, seen: { readonly value: number }): (() => void)[] {
  const { map } = plan;
  const group = () => L.layerGroup().addTo(map);
  const layers = {
    grid: group(),
    ground: group(),
    trees: group(),
    chosen: group(),
    lines: group(),
    fittings: group(),
    labels: group(),
  };
  let anchor = L.latLng(0, 0);
  let fitted: unknown = null;
  const scheme = () => state.dark.value;
  return [
    effect(() => {
      const bounds = siteBounds();
      // An edited site stays where it is; another one is shown whole.
      const which = sketch.site.peek()?.key ?? state.opened.peek();
      if (which === fitted) return;
      fitted = which;
      const site = sketch.site.peek();
      const shown = bounds ?? (site ? emptyLot(site.info) : map.getBounds());
      anchor = shown.getSouthWest();
      map.fitBounds(shown, { ...covered(), animate: false });
    }),
    effect(() => {
      scheme();
      seen.value;
      drawGrid(plan, layers.grid, state.metresPerPixel.value, state.units.value, anchor);
    }),
    effect(() => {
      scheme();
      const opened = state.opened.value;
      if (opened) drawGround(plan, layers.ground, opened.site, state.onCanvas.value);
    }),
    effect(() => {
      scheme();
      const trees = state.opened.value?.result.trees ?? [];
      const drawing = {
        canvas: state.onCanvas.value,
        small: state.smallScale.value,
        chosen: state.chosenTree.value,
      };
      drawTrees(plan, layers.trees, trees, drawing, state.chooseTree);
    }),
    effect(() => {
      scheme();
      const events = {
        choose: state.chooseStretch,
        hint: (id: string | null) => {
          state.hintedStretch.value = id;
        },
      };
      const drawing = {
        canvas: state.onCanvas.value,
        small: state.smallScale.value,
        units: state.units.value,
      };
      drawLines(plan, layers.lines, state.segments.value, drawing, events);
    }),
    effect(() => {
      scheme();
      const hinted = state.segmentById.value.get(state.hintedStretch.value ?? '') ?? null;
      drawChosen(plan, layers.chosen, state.segment.value, hinted, state.metresPerPixel.value);
    }),
    effect(() => {
      seen.value;
      const opened = state.opened.value;
      if (opened) drawFittings(plan, layers.fittings, opened.site.fittings, state.metresPerPixel.value);
    }),
    effect(() => {
      seen.value;
      const opened = state.opened.value;
      if (!opened) return;
      const { site, result } = opened;
      drawLabels(plan, layers.labels, site, result.trees, result.segments, state.metresPerPixel.value);
    }),
    effect(() => {
      const segment = state.segment.value;
      if (!segment) return;
      const bounds = L.latLngBounds(segment.geometry.coordinates.map(latLng));
      map.panInside(bounds.getCenter(), {
        paddingTopLeft: [60, 80],
        paddingBottomRight: [60, state.coveredBottom.value + 60],
      });
    }),
  ];
}

/** Puts the plan into its element and keeps it as the state says, until stopped. */
export function drawPlan(element: HTMLElement): PlanControls {
  const plan = createPlan(element);
  const { map } = plan;
  const seen = signal(0);
  const look = () => {
    const middle = map.getSize().divideBy(2);
    const from = map.containerPointToLatLng([middle.x - 50, middle.y]);
    const to = map.containerPointToLatLng([middle.x + 50, middle.y]);
    state.metresPerPixel.value = map.distance(from, to) / 100;
    seen.value = seen.peek() + 1;
  };
  map.on('moveend zoomend resize', look);
  look();
  const stops = [...startEffects(plan, seen), drawingWhenWanted(plan)];
  const watcher = new ResizeObserver(() => map.invalidateSize({ animate: false }));
  watcher.observe(element);
  return {
    zoomBy: (steps) => map.setZoom(map.getZoom() + steps),
    showWhole: () => {
      const bounds = siteBounds();
      if (bounds) map.fitBounds(bounds, covered());
    },
    stop: () => {
      for (const stop of stops) stop();
      watcher.disconnect();
      map.remove();
    },
  };
}
