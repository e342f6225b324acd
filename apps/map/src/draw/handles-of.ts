import type { LonLat } from '@rootreach/core';
import type { Handle } from '../layers/handles.js';
import { setInfo } from '../sketch/changes.js';
import { type FeatureRef, refOf, type SketchFeature } from '../sketch/document.js';
import * as sketch from '../sketch/sketch.js';
import { words } from '../words/words.js';
import { choose } from './draw-with.js';
import { reachM, underlay } from './drawing-state.js';
import { addBend, deleteThing, dropBend, moveThing, stepOf } from './edit-chosen.js';
import { lonLat, shifted } from './flat.js';
import { isArea, outlineOf } from './outline.js';
import { isDrawn } from './pick.js';
import { movePlace } from './reshape.js';
import { type SnapKind, snapTo } from './snap.js';

/** The drag under way: handles are made anew while it goes on. */
let drag: ReturnType<typeof sketch.startMove> | null = null;
let draggedTo: LonLat | null = null;

/** More stops than this would make Tab useless; those nearest to the middle of the plan stay. */
const MOST_STOPS = 120;

const middle = (a: LonLat, b: LonLat): LonLat => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];

/** Where a thing is taken hold of by keys: a point's place, the middle of a line's middle leg or of an area. */
function anchorOf(feature: SketchFeature): LonLat | null {
  const outline = outlineOf(feature);
  const at = Math.floor((outline.length - 1) / 2);
  const [a, b] = [outline[at], outline[at + 1]];
  if (isArea(feature)) {
    const sum = outline.reduce(([x, y], [lon, lat]): LonLat => [x + lon, y + lat], [0, 0] as LonLat);
    return [sum[0] / outline.length, sum[1] / outline.length];
  }
  return a && b ? middle(a, b) : (a ?? null);
}

/** A stop for each thing in view, so that Tab reaches it and arrow keys move it. */
export function stopsOf(features: readonly SketchFeature[], inView: (at: LonLat) => boolean): Handle[] {
  const stops: Handle[] = [];
  for (const feature of features) {
    if (stops.length === MOST_STOPS) break;
    const at = isDrawn(feature) ? anchorOf(feature) : null;
    if (!at || !inView(at)) continue;
    const ref = refOf(feature);
    stops.push({
      key: `stop/${ref.kind}/${ref.id}`,
      at,
      className: 'handle-stop',
      label: words.value.draw.stop(words.value.draw.feature(feature.properties)),
      draggable: false,
      act: () => choose(ref),
      keyDown: (event) => thingKey(ref, event),
    });
  }
  return stops;
}

function thingKey(ref: FeatureRef, event: KeyboardEvent): boolean {
  const step = stepOf(event);
  if (step) moveThing(ref, step);
  else if (event.key === 'Delete') deleteThing(ref);
  else return false;
  return true;
}

const SNAPS: Readonly<Record<string, SnapKind>> = { drain: 'pipes', fitting: 'lines', obstacle: 'corners' };

/** A handle that moves one place of a thing; the whole drag is one step of history. */
function placeHandle(feature: SketchFeature, index: number, held: (index: number) => void): Handle {
  const ref = refOf(feature);
  const outline = outlineOf(feature);
  const name = words.value.draw.feature(feature.properties);
  const label = words.value.draw.bendMoved(name);
  const to = (at: LonLat): LonLat => {
    const site = sketch.site.value;
    const kind = SNAPS[ref.kind] ?? 'none';
    return (site && snapTo(site, at, kind, reachM() / 2, ref)?.at) ?? at;
  };
  return {
    key: `place/${ref.kind}/${ref.id}/${index}`,
    at: outline[index] as LonLat,
    className: outline.length === 1 ? 'handle-point' : 'handle-place',
    label: words.value.draw.handle(index, outline.length),
    draggable: true,
    act: () => held(index),
    dragStart: () => {
      drag = sketch.startMove(label);
    },
    drag: (at) => drag?.move(movePlace(ref, index, to(at))),
    dragEnd: () => drag?.done(),
    keyDown: (event) => {
      const step = stepOf(event);
      const at = outline[index] as LonLat;
      if (step) sketch.edit(label, movePlace(ref, index, shifted(at, ...step)));
      else if (event.key === 'Delete' && outline.length === 1) deleteThing(ref);
      else if (event.key === 'Delete' || event.key === 'Backspace') dropBend(ref, index);
      else if (event.key === 'Escape') choose(null);
      else return false;
      return true;
    },
  };
}

function betweenHandles(feature: SketchFeature): Handle[] {
  const ref = refOf(feature);
  const outline = outlineOf(feature);
  const closed = isArea(feature) ? [...outline, outline[0] as LonLat] : outline;
  return closed.slice(1).map((b, i): Handle => {
    const at = middle(closed[i] as LonLat, b);
    const add = (to: LonLat) => addBend(ref, i + 1, [to[0], to[1]]);
    return {
      key: `between/${ref.kind}/${ref.id}/${i}/${outline.length}`,
      at,
      className: 'handle-between',
      label: words.value.draw.between(i),
      draggable: true,
      act: () => add(at),
      drag: (to) => {
        draggedTo = to;
      },
      dragEnd: () => add(draggedTo ?? at),
    };
  });
}

/** Handles of the thing that was taken up. `held` tells which place was tapped last. */
export function handlesOf(feature: SketchFeature, held: (index: number) => void): Handle[] {
  const places = outlineOf(feature).map((_, index) => placeHandle(feature, index, held));
  return places.length > 1 ? [...places, ...betweenHandles(feature)] : places;
}

/** The middle of the picture, by which it is moved. */
export function pictureHandle(): Handle[] {
  const shown = underlay.value;
  if (!shown) return [];
  const to = (centre: LonLat) => setInfo({ underlay: { ...underlay.value, centre: lonLat([...centre]) } });
  return [
    {
      key: 'picture',
      at: shown.centre,
      className: 'handle-picture',
      label: words.value.draw.picture.handle,
      draggable: true,
      act: () => undefined,
      dragStart: () => {
        drag = sketch.startMove(words.value.draw.picture.moved);
      },
      drag: (at) => drag?.move(to(at)),
      dragEnd: () => drag?.done(),
      keyDown: (event) => {
        const step = stepOf(event);
        if (!step) return false;
        sketch.edit(words.value.draw.picture.moved, to(shifted(shown.centre, ...step)));
        return true;
      },
    },
  ];
}
