import { effect } from '@preact/signals';
import type { Plan } from '../layers/plan.js';
import * as sketch from '../sketch/sketch.js';
import * as state from '../state.js';
import { wholeEnglish } from '../words/words.js';
import { tileAddress } from './tile-address.js';

/** Fetches the drawing tools when they are first needed: to draw, or since a picture lies under the plan. */
export function drawingWhenWanted(plan: Plan): () => void {
  let asked = false;
  let stopped = false;
  let stopDrawing: () => void = () => undefined;
  const stop = effect(() => {
    const pictures = sketch.site.value?.info['underlay'] !== undefined || tileAddress() !== null;
    if (asked || !(state.sheetPlace.value === 'draw' || pictures)) return;
    asked = true;
    void Promise.all([import('./attach.js'), wholeEnglish()]).then(([{ attachDrawing }]) => {
      if (!stopped) stopDrawing = attachDrawing(plan);
    });
  });
  return () => {
    stopped = true;
    stop();
    stopDrawing();
  };
}
