import type * as L from 'leaflet';
import * as sketch from '../sketch/sketch.js';
import { cancelDraft, layDown, pointAt, takeBack } from './draw-with.js';
import * as drawing from './drawing-state.js';
import { deleteThing, stepOf } from './edit-chosen.js';
import { shifted } from './flat.js';

/** The cross moves by this many steps of a thing, so that it gets across a lot. */
const STRIDE = { us: 1, metric: 5 } as const;

function leaveOff(): void {
  if (drawing.draft.value) cancelDraft();
  else if (drawing.tool.value !== 'pick') layDown();
  else if (drawing.aiming.value) drawing.aiming.value = false;
  else sketch.chosen.value = null;
}

/** Keys while the plan itself has the focus: aim, put, take back, leave off. True where the key was taken. */
export function planKey(event: KeyboardEvent, units: 'us' | 'metric', middle: () => L.LatLng): boolean {
  if (event.ctrlKey || event.metaKey || event.altKey) return false;
  const step = stepOf(event);
  if (step) {
    const { lng, lat } = middle();
    const from = drawing.aim.value ?? [lng, lat];
    drawing.aim.value = shifted(from, step[0] * STRIDE[units], step[1] * STRIDE[units]);
    drawing.aiming.value = true;
    return true;
  }
  switch (event.key) {
    case 'Enter':
    case ' ':
      if (!drawing.aiming.value) drawing.aiming.value = true;
      else if (drawing.aim.value) pointAt(drawing.aim.value);
      return true;
    case 'Backspace':
      takeBack();
      return true;
    case 'Delete':
      if (sketch.chosen.value) deleteThing(sketch.chosen.value);
      return true;
    case 'Escape':
      leaveOff();
      return true;
    default:
      return false;
  }
}
