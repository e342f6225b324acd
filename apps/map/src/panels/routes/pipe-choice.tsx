import type { MaterialKey } from '@rootreach/core';
import { useId } from 'preact/hooks';
import * as measure from '../../measure.js';
import * as route from '../../plan-route/route-state.js';
import * as state from '../../state.js';
import { words } from '../../words/words.js';

const w = () => words.value.routes;

/** Pipes that are laid today; the others are only dug up. */
const SOLD = [
  'pvc-sdr35',
  'pvc-sch40',
  'pvc-thin-wall',
  'hdpe-dual-wall',
  'hdpe-corrugated',
  'hdpe-corrugated-heavy',
  'hdpe-welded',
] as const satisfies readonly MaterialKey[];
const FALLS = ['0.005', '0.01', '0.02'] as const;

/** What is to be laid, and with what fall. */
export function PipeChoice() {
  const ids = { pipe: useId(), size: useId(), fall: useId() };
  const us = state.units.value === 'us';
  const sizes = route.sizes.value;
  return (
    <div class="route-pipe">
      <label for={ids.pipe}>{w().pipe}</label>
      <select
        id={ids.pipe}
        class="entry"
        value={route.material.value}
        onChange={(event) => {
          route.material.value = event.currentTarget.value as MaterialKey;
          const same = route.sizes.value.some((size) => Math.abs(size - route.sizeM.value) < 0.004);
          if (!same) route.sizeM.value = route.sizes.value[0] ?? route.sizeM.value;
        }}
      >
        {SOLD.map((key) => (
          <option key={key} value={key}>
            {words.value.forms.drain.materials[key]}
          </option>
        ))}
      </select>
      <label for={ids.size}>{w().size}</label>
      <select
        id={ids.size}
        class="entry"
        value={String(sizes.findIndex((size) => Math.abs(size - route.sizeM.value) < 0.004))}
        onChange={(event) => {
          route.sizeM.value = sizes[Number(event.currentTarget.value)] ?? route.sizeM.value;
        }}
      >
        {sizes.map((size, i) => (
          <option key={size} value={String(i)}>
            {us ? measure.girth(size, 'us') : `${Math.round(size * 1000)}\u00a0mm`}
          </option>
        ))}
      </select>
      <label for={ids.fall}>{w().fall}</label>
      <select
        id={ids.fall}
        class="entry"
        value={String(route.minFall.value)}
        onChange={(event) => {
          route.minFall.value = Number(event.currentTarget.value);
        }}
      >
        {FALLS.map((fall) => (
          <option key={fall} value={fall}>
            {w().falls[fall]}
          </option>
        ))}
      </select>
      <label class="route-check">
        <input
          type="checkbox"
          checked={route.perforated.value}
          onChange={(event) => {
            route.perforated.value = event.currentTarget.checked;
          }}
        />
        {w().perforated}
      </label>
    </div>
  );
}
