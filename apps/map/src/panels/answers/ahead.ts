import { computed, signal } from '@preact/signals';
import * as state from '../../state.js';
import { today } from '../../today.js';

/** The controls are unfolded; the same in the list and on every card. */
export const unfolded = signal(false);

/** Year that the ranking speaks for; null: today. */
export const yearShown = computed<number | null>(() =>
  state.yearsAhead.value === 0 ? null : Number(today().slice(0, 4)) + state.yearsAhead.value,
);

/** The ranking speaks for another time or another case than the one that is. */
export const isWhatIf = computed(() => yearShown.value !== null || state.clearedNow.value);

export function backToToday(): void {
  state.yearsAhead.value = 0;
  state.clearedNow.value = false;
}
