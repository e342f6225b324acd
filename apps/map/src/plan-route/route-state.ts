import { computed, signal } from '@preact/signals';
import {
  type LonLat,
  type MaterialKey,
  pipeRow,
  type RouteAlternative,
  type RoutePlace,
  type RouteRequest,
  type RouteResult,
} from '@rootreach/core';
import * as state from '../state.js';
import { today } from '../today.js';

/** What the next tap on the plan sets. */
export type Picking = 'from' | 'to' | 'via' | null;

export const picking = signal<Picking>(null);
export const from = signal<RoutePlace | null>(null);
export const to = signal<RoutePlace | null>(null);
/** Both ends by name. */
export const ends = { from, to } as const;
export const via = signal<LonLat | null>(null);

export const material = signal<MaterialKey>('pvc-sdr35');
/** Nominal, metres. */
export const sizeM = signal(0.1016);
export const perforated = signal(false);
/** Least fall, metre per metre: an eighth of an inch a foot is the usual least (common practice). */
export const minFall = signal(0.01);

export const result = signal<RouteResult | null>(null);
/** Share done while it is being worked out; null at rest. */
export const share = signal<number | null>(null);
export const problem = signal<string | null>(null);
export const chosenId = signal<string | null>(null);
/** The chosen alternative after somebody pulled at it. */
export const drawn = signal<RouteAlternative | null>(null);

export const chosen = computed<RouteAlternative | null>(
  () => drawn.value ?? result.value?.alternatives.find(({ id }) => id === chosenId.value) ?? null,
);

/** Sizes that the chosen pipe is sold in, metres, by the units in use. */
export const sizes = computed(() =>
  pipeRow(material.value).sizes.map(({ nominalIn, nominalMm }) =>
    state.units.value === 'us' ? nominalIn * 0.0254 : nominalMm / 1000,
  ),
);

export const request = computed<RouteRequest | null>(() => {
  if (from.value === null || to.value === null) return null;
  return {
    asOf: today(),
    from: from.value,
    to: [to.value],
    ...(via.value === null ? {} : { via: via.value }),
    pipe: { material: material.value, sizeM: sizeM.value, perforated: perforated.value },
    limits: { minFall: minFall.value },
  };
});

/** Where a place lies: its own position, or that of the fitting it names. */
export function positionOf(place: RoutePlace | null): LonLat | null {
  if (place === null) return null;
  if ('position' in place) return place.position;
  const fitting = state.opened.value?.site.fittings.find(({ id }) => id === place.id);
  return fitting?.position ?? null;
}
