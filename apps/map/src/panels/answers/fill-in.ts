import { batch } from '@preact/signals';
import type { MissingInput } from '@rootreach/core';
import * as sketch from '../../sketch/sketch.js';
import * as state from '../../state.js';

/** Takes up the thing that lacks something, to be filled in. */
export function fillIn({ of, id }: Pick<MissingInput, 'of' | 'id'>): void {
  batch(() => {
    sketch.chosen.value = { kind: of === 'line' ? 'drain' : 'tree', id };
    state.sheetPlace.value = 'draw';
  });
}
