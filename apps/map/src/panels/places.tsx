import type { SheetPlace } from '../state.js';
import * as state from '../state.js';
import { words } from '../words/words.js';

const PLACES: readonly SheetPlace[] = ['find', 'draw', 'route', 'work', 'sites'];

/** What the sheet can show, one word each. */
export function Places() {
  return (
    <nav class="places" aria-label={words.value.sheet.label}>
      {PLACES.map((place) => (
        <button
          key={place}
          type="button"
          class="place"
          aria-current={state.sheetPlace.value === place ? 'page' : undefined}
          onClick={() => {
            state.sheetPlace.value = place;
            if (state.sheetHeight.value === 'low') state.sheetHeight.value = 'half';
          }}
        >
          {words.value.sheet.places[place]}
        </button>
      ))}
    </nav>
  );
}
