import { batch } from '@preact/signals';
import { remove } from '../sketch/changes.js';
import { type FeatureRef, find } from '../sketch/document.js';
import * as sketch from '../sketch/sketch.js';
import * as state from '../state.js';
import { words } from '../words/words.js';
import { note } from './drawing-state.js';
import { dropPlace, insertPlace, moveWhole, squareArea, turnFlow } from './reshape.js';

/** A foot, or a tenth of a metre; ten of them with Shift. */
const STEP_M = { us: 0.3048, metric: 0.1 } as const;
const LARGE = 10;

const WAYS: Readonly<Record<string, readonly [east: number, north: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** How far an arrow key moves a thing, metres east and north; null for other keys. */
export function stepOf(event: Pick<KeyboardEvent, 'key' | 'shiftKey'>): readonly [number, number] | null {
  const way = WAYS[event.key];
  if (!way) return null;
  const step = STEP_M[state.units.value] * (event.shiftKey ? LARGE : 1);
  return [way[0] * step, way[1] * step];
}

const nameOf = (ref: FeatureRef): string => {
  const feature = sketch.site.value && find(sketch.site.value, ref);
  return feature ? words.value.draw.feature(feature.properties) : ref.id;
};

/** Deletes a thing and says so, with an undo beside it. */
export function deleteThing(ref: FeatureRef): void {
  const label = words.value.draw.deleted(nameOf(ref));
  batch(() => {
    sketch.edit(label, remove(ref));
    sketch.chosen.value = null;
    note.value = label;
  });
}

export const moveThing = (ref: FeatureRef, [east, north]: readonly [number, number]): void =>
  sketch.edit(words.value.draw.moved(nameOf(ref)), moveWhole(ref, east, north));

export const turnLine = (ref: FeatureRef): void =>
  sketch.edit(words.value.draw.turned(nameOf(ref)), turnFlow(ref));

export const squareThing = (ref: FeatureRef): void =>
  sketch.edit(words.value.draw.squaredUp(nameOf(ref)), squareArea(ref));

export const dropBend = (ref: FeatureRef, index: number): void =>
  sketch.edit(words.value.draw.bendDropped(nameOf(ref)), dropPlace(ref, index));

export const addBend = (ref: FeatureRef, index: number, at: readonly [number, number]): void =>
  sketch.edit(words.value.draw.bendAdded(nameOf(ref)), insertPlace(ref, index, at));
