import { effect, signal } from '@preact/signals';
import * as state from '../state.js';
import type { Plan } from './plan.js';

/** Draws a site too large to hold; what that takes is loaded when one is opened. Returns the stop. */
export function townWhenWanted(plan: Plan): () => void {
  const sheet = signal<ReturnType<typeof import('./town-sheet.js').townSheet> | null>(null);
  let asked = false;
  return effect(() => {
    const large = state.isLarge.value;
    if (large && !asked) {
      asked = true;
      void import('./town-sheet.js').then(({ townSheet }) => {
        sheet.value = townSheet(plan, (box) => {
          state.viewWanted.value = { box, metresPerPixel: state.metresPerPixel.peek() };
        });
      });
    }
    sheet.value?.lay(large);
    // a new scale is drawn when what is to be drawn of it comes
    sheet.value?.draw(state.view.value, {
      small: state.smallScale.peek(),
      metresPerPixel: state.metresPerPixel.peek(),
      scheme: state.dark.value,
    });
  });
}
