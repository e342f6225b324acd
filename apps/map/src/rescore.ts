import { effect } from '@preact/signals';
import type { Engine } from './engine.js';
import { toGeoJson } from './sketch/document.js';
import * as sketch from './sketch/sketch.js';
import * as state from './state.js';
import { today } from './today.js';

/** Follows the sketch: every change is ranked again, the latest wins. Returns the stop. */
export function followSketch(engine: Engine): () => void {
  let seen = sketch.site.peek();
  return effect(() => {
    const site = sketch.site.value;
    if (site === null || site === seen) return;
    const sameSite = site.key === seen?.key;
    seen = site;
    if (!sameSite) return;
    void engine.open([{ name: 'sketch', text: toGeoJson(site) }], today()).then((opened) => {
      if (opened && sketch.site.peek()?.key === site.key) state.opened.value = opened;
    });
  });
}
