import { useId } from 'preact/hooks';
import * as route from '../../plan-route/route-state.js';
import * as state from '../../state.js';
import { words } from '../../words/words.js';

const w = () => words.value.routes;
const ON_PLAN = '*';

/** What the next tap does, and how to do without one. */
export function Picking({ what }: { readonly what: 'from' | 'to' | 'via' }) {
  return (
    <div class="route-picking">
      <p role="status">{w().tapping[what]}</p>
      <button
        type="button"
        class="button"
        onClick={() => {
          const middle = route.midPlan.value?.();
          if (middle) route.setPicked(middle);
        }}
      >
        {w().midPlan}
      </button>
    </div>
  );
}

/** One end of the line: a fitting of the sketch, or a place tapped on the plan. */
export function PlaceChoice({ end }: { readonly end: 'from' | 'to' }) {
  const id = useId();
  const place = route.ends[end].value;
  const fittings = state.opened.value?.site.fittings ?? [];
  const value = place === null ? '' : 'id' in place ? place.id : ON_PLAN;
  const picking = route.picking.value === end;
  return (
    <div class="route-place">
      <label for={id}>{w()[end]}</label>
      <div class="route-place-row">
        <select
          id={id}
          class="entry"
          value={value}
          onChange={(event) => {
            const chosen = event.currentTarget.value;
            if (chosen !== ON_PLAN) route.ends[end].value = chosen === '' ? null : { id: chosen };
          }}
        >
          <option value="">{w().chooseFitting}</option>
          {value === ON_PLAN && <option value={ON_PLAN}>{w().aPlace}</option>}
          {fittings.map((fitting) => (
            <option key={fitting.id} value={fitting.id}>
              {words.value.fitting[fitting.type]} {fitting.id}
            </option>
          ))}
        </select>
        <button
          type="button"
          class="button"
          aria-pressed={picking}
          onClick={() => {
            route.picking.value = picking ? null : end;
            if (!state.wide.value && state.sheetHeight.value === 'full') state.sheetHeight.value = 'half';
          }}
        >
          {w().tapPlan}
        </button>
      </div>
      {picking && <Picking what={end} />}
    </div>
  );
}
