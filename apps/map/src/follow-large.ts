import { effect } from '@preact/signals';
import type { Engine } from './engine.js';
import * as state from './state.js';

/** Asks the worker for what of a large site is in view, was tapped or was chosen. Returns the stop. */
export function followLarge(engine: Engine): () => void {
  const stops = [
    effect(() => {
      const wanted = state.viewWanted.value;
      if (!state.opened.value?.large || !wanted) {
        state.view.value = null;
        return;
      }
      void engine.view(wanted.box, wanted.metresPerPixel).then((view) => {
        if (view) state.view.value = view;
      });
    }),
    effect(() => {
      const at = state.tapped.value;
      if (!at) return;
      void engine.nearest(at.lon, at.lat, at.withinM).then((id) => {
        if (state.isLarge.peek() && state.tapped.peek() === at) state.chooseStretch(id);
      });
    }),
    effect(() => {
      const id = state.chosenStretch.value;
      if (!state.opened.value?.large || id === null) {
        state.around.value = null;
        return;
      }
      void engine.around(id).then((detail) => {
        if (detail) state.around.value = detail;
      });
    }),
  ];
  return () => {
    for (const stop of stops) stop();
  };
}
