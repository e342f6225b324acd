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
import * as sketch from '../sketch/sketch.js';
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

/** Share done while it is being worked out; null at rest. */
export const share = signal<number | null>(null);
export const problem = signal<string | null>(null);
export const chosenId = signal<string | null>(null);
/** The chosen alternative after somebody pulled at it. */
export const drawn = signal<RouteAlternative | null>(null);

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

/** What was found, and the question and sketch that it answers. */
export const answer = signal<{
  readonly result: RouteResult;
  readonly request: RouteRequest;
  readonly site: unknown;
} | null>(null);

/** The ways found, as long as they answer the question that stands and the sketch as it is. */
export const result = computed<RouteResult | null>(() => {
  const found = answer.value;
  return found?.request === request.value && found?.site === sketch.site.value
    ? (found?.result ?? null)
    : null;
});

export const chosen = computed<RouteAlternative | null>(() => {
  const among = result.value?.alternatives;
  return among === undefined ? null : (drawn.value ?? among.find(({ id }) => id === chosenId.value) ?? null);
});

/** Middle of what can be seen of the plan; null until the plan is there. */
export const midPlan = signal<(() => LonLat) | null>(null);

/** What a tap, or a key, on the plan sets; then the other end, where that is still open. */
export function setPicked(place: LonLat): void {
  const what = picking.value;
  if (what === null) return;
  if (what === 'via') via.value = place;
  else ends[what].value = { position: place };
  picking.value = what === 'from' && to.value === null ? 'to' : null;
}

/** Where a place lies: its own position, or that of the fitting it names. */
export function positionOf(place: RoutePlace | null): LonLat | null {
  if (place === null) return null;
  if ('position' in place) return place.position;
  const fitting = state.opened.value?.site.fittings.find(({ id }) => id === place.id);
  return fitting?.position ?? null;
}
