import { batch } from '@preact/signals';
import { add, freeId } from '../../sketch/changes.js';
import type { SketchFeature } from '../../sketch/document.js';
import * as sketch from '../../sketch/sketch.js';
import * as state from '../../state.js';
import { today } from '../../today.js';
import { words } from '../../words/words.js';

/**
 * Begins an entry for what a camera saw, dated today, and opens its form. It counts once it says how far in
 * and what was there.
 */
export function addFinding(drain: string, from: string | null): void {
  const site = sketch.site.peek();
  if (!site) return;
  const id = freeId(site, 'finding');
  const properties = { kind: 'finding', id, drain, ...(from === null ? {} : { from }), date: today() };
  const finding = { type: 'Feature', properties, geometry: null } as unknown as SketchFeature;
  batch(() => {
    sketch.edit(words.value.forms.drain.addedFinding, add(finding));
    sketch.chosen.value = { kind: 'finding', id };
    state.sheetPlace.value = 'draw';
  });
}
