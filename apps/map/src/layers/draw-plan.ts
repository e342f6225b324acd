import { computed, effect, signal } from '@preact/signals';
import * as L from 'leaflet';
import { afterFrame } from '../after-frame.js';
import { emptyLot } from '../draw/empty-lot.js';
import { drawingWhenWanted } from '../draw/when-wanted.js';
import * as sketch from '../sketch/sketch.js';
import * as state from '../state.js';
import { words } from '../words/words.js';
import { drawFittings } from './fittings.js';
import { drawGrid } from './grid.js';
import { drawGround, latLng } from './ground.js';
import { labelsLayer } from './labels.js';
import { drawLanding } from './landing.js';
import { drawChosen, linesLayer } from './lines.js';
import { createPlan, type Plan } from './plan.js';
import { routesWhenWanted } from './routes-when-wanted.js';
import { townWhenWanted } from './town-when-wanted.js';
import { treesLayer } from './trees.js';

export interface PlanControls {
  readonly zoomBy: (steps: number) => void;
  readonly showWhole: () => void;
  readonly stop: () => void;
}

const NONE: readonly never[] = [];
/** How near to a line a finger must come on a plan drawn as one picture. */
const TAP_PIXELS = 20;

function siteBounds(): L.LatLngBounds | null {
  const opened = state.opened.value;
  if (!opened) return null;
  const { site, result, large } = opened;
  if (large) {
    const [west, south, east, north] = large.bounds;
    return L.latLngBounds([south, west], [north, east]);
  }
  // Streets may run on past the lot; they do not count.
  const shapes = site.obstacles.filter(({ type }) => type !== 'paving').map(({ shape }) => shape);
  const points = [
    ...site.drains.flatMap((drain) => drain.path),
    ...site.fittings.map(({ position }) => position),
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
    landing: group(),
    labels: group(),
  };
  let anchor = L.latLng(0, 0);
  let fitted: unknown = null;
  let panned: string | null = null;
  /** Marks and names wait until the first picture is on the screen. */
  const pictured = signal(false);
  const scheme = () => state.dark.value;
  const trees = computed(() => state.opened.value?.result.trees ?? NONE);
  const obstacles = computed(() => state.opened.value?.site.obstacles ?? NONE);
  const barriers = computed(() => state.opened.value?.site.barriers ?? NONE);
  const fittings = computed(() => state.opened.value?.site.fittings ?? NONE);
  const drawTrees = treesLayer(plan, layers.trees, state.chooseTree);
  const drawLines = linesLayer(plan, layers.lines, {
    choose: state.chooseStretch,
    hint: (id) => {
      state.hintedStretch.value = id;
    },
  });
  const drawLabels = labelsLayer(plan, layers.labels);
  map.on('click', ({ latlng: { lng, lat } }) => {
    const withinM = TAP_PIXELS * state.metresPerPixel.peek();
    if (state.isLarge.peek()) state.tapped.value = { lon: lng, lat, withinM };
  });
  return [
    effect(() => map.getContainer().setAttribute('aria-label', words.value.plan.label)),
    effect(() => {
      // where taps set things, two that come one soon after the other are no wish to come closer
      if (state.sheetPlace.value === 'draw' || state.sheetPlace.value === 'route')
        map.doubleClickZoom.disable();
      else map.doubleClickZoom.enable();
    }),
    effect(() => {
      const opened = state.opened.value;
      const site = sketch.site.peek();
      // An edited site stays where it is; another one is shown whole.
      const which = site?.key ?? (opened?.edits === 0 ? opened : fitted);
      if (which === fitted) return;
      if (fitted === null) {
        void afterFrame().then(() => {
          pictured.value = true;
        });
      }
      fitted = which;
      const shown = siteBounds() ?? (site ? emptyLot(site.info) : map.getBounds());
      anchor = shown.getSouthWest();
      map.fitBounds(shown, { ...covered(), animate: false });
    }),
    effect(() => {
      scheme();
      seen.value;
      // before a site is there, no scale is known
      if (fitted === null) return;
      drawGrid(plan, layers.grid, state.metresPerPixel.value, state.units.value, anchor);
    }),
    effect(() => {
      scheme();
      const ground = { obstacles: obstacles.value, barriers: barriers.value };
      drawGround(plan, layers.ground, ground, state.onCanvas.value);
    }),
    effect(() => {
      drawTrees(state.isLarge.value ? NONE : trees.value, {
        canvas: state.onCanvas.value,
        small: state.smallScale.value,
        chosen: state.chosenTree.value,
        words: words.value,
        scheme: scheme(),
      });
    }),
    effect(() => {
      drawLines(state.segments.value, {
        canvas: state.onCanvas.value,
        small: state.smallScale.value,
        keysOnly: state.isLarge.value,
        units: state.units.value,
        words: words.value,
        scheme: scheme(),
      });
    }),
    townWhenWanted(plan),
    effect(() => {
      scheme();
      const hinted = state.segmentById.value.get(state.hintedStretch.value ?? '') ?? null;
      drawChosen(plan, layers.chosen, state.segment.value, hinted, state.metresPerPixel.value);
    }),
    effect(() => {
      if (!pictured.value) return;
      seen.value;
      words.value;
      drawFittings(plan, layers.fittings, fittings.value, state.metresPerPixel.value);
    }),
    effect(() => {
      scheme();
      const chosen = sketch.chosen.value;
      const finding = chosen?.kind === 'finding' ? chosen.id : null;
      drawLanding(plan, layers.landing, state.opened.value?.result.lines ?? [], finding);
    }),
    effect(() => {
      seen.value;
      words.value;
      const opened = state.opened.value;
      if (!opened || !pictured.value) return;
      const { site, result } = opened;
      const { trees, segments } = result;
      drawLabels({ site, trees, segments, metresPerPixel: state.metresPerPixel.value });
    }),
    effect(() => {
      const segment = state.segment.value;
      // The plan follows what is chosen, not each new score of it.
      if (segment?.id === panned) return;
      panned = segment?.id ?? null;
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
  const stops = [...startEffects(plan, seen), drawingWhenWanted(plan), routesWhenWanted(plan)];
  const watcher = new ResizeObserver(() => map.invalidateSize({ animate: false }));
  watcher.observe(element);
  return {
    zoomBy: (steps) => map.setZoom(map.getZoom() + steps),
    showWhole: () => {
      const site = sketch.site.peek();
      const bounds = siteBounds() ?? (site && emptyLot(site.info));
      if (bounds) map.fitBounds(bounds, covered());
    },
    stop: () => {
      for (const stop of stops) stop();
      watcher.disconnect();
      map.remove();
    },
  };
}
