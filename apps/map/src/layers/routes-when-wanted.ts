import { effect } from '@preact/signals';
import * as state from '../state.js';
import { wholeEnglish } from '../words/words.js';
import type { Plan } from './plan.js';

/** Fetches the layer of new lines when its place of the sheet is first opened. */
export function routesWhenWanted(plan: Plan): () => void {
  let stopped = false;
  let stopRoutes: () => void = () => undefined;
  let asked = false;
  const stop = effect(() => {
    if (asked || state.sheetPlace.value !== 'route') return;
    asked = true;
    void Promise.all([import('./routes.js'), wholeEnglish()]).then(([{ attachRoutes }]) => {
      if (!stopped) stopRoutes = attachRoutes(plan);
    });
  });
  return () => {
    stopped = true;
    stop();
    stopRoutes();
  };
}
