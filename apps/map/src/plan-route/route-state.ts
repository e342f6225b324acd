import { batch, computed, signal } from '@preact/signals';
import {
  type LonLat,
  type MaterialKey,
  pipeRow,
  type RouteAlternative,
  type RoutePlace,
  type RouteRequest,
  type RouteResult,
  type SharedRouteRequest,
} from '@rootreach/core';
import * as sketch from '../sketch/sketch.js';
import * as state from '../state.js';
import { today } from '../today.js';
import { changedPrices, priceList } from '../works/price-list.js';

export type End = 'from' | 'to';

/** What the next tap on the plan sets: a place of one end by its number, or the point to pass. */
export type Picking = { readonly end: End; readonly at: number } | 'via' | null;

export const picking = signal<Picking>(null);
/** Places that water comes from, and where it may come out; null for one that is still to be chosen. */
export const ends = {
  from: signal<readonly (RoutePlace | null)[]>([null]),
  to: signal<readonly (RoutePlace | null)[]>([null]),
} as const;
/** What drains to each place that water comes from, in the same order; square metres, null where not known. */
export const areas = signal<readonly (number | null)[]>([null]);
/** Rain that shared pipe is sized by, as typed; the site's own where nothing is. */
export const rainMmPerHour = signal<number | null>(null);
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

/** Places of one end that are chosen. */
export const placesOf = (end: End): RoutePlace[] => ends[end].value.filter((place) => place !== null);

/** What is asked of every line, whatever its start. */
const common = computed(() => ({
  asOf: today(),
  to: placesOf('to'),
  pipe: { material: material.value, sizeM: sizeM.value, perforated: perforated.value },
  limits: { minFall: minFall.value },
  ...(changedPrices.value ? { prices: priceList.value } : {}),
}));

/** The question for one start; null for none or several, or without an outlet. */
export const request = computed<RouteRequest | null>(() => {
  const [from, ...more] = placesOf('from');
  if (from === undefined || more.length > 0 || common.value.to.length === 0) return null;
  return { ...common.value, from, ...(via.value === null ? {} : { via: via.value }) };
});

/** The question for several starts; null for fewer. */
export const sharedRequest = computed<SharedRouteRequest | null>(() => {
  const from = ends.from.value.flatMap((place, i) =>
    place === null ? [] : [{ place, servesM2: areas.value[i] ?? 0 }],
  );
  return from.length < 2 || common.value.to.length === 0 ? null : { ...common.value, from };
});

/** Rain that sizes the pipes of several starts: only where all that drains to them is known. */
export const sizingRain = computed<number | null>(() => {
  const known = sharedRequest.value?.from.every(({ servesM2 }) => servesM2 > 0);
  return known ? (rainMmPerHour.value ?? state.opened.value?.site.rainMmPerHour ?? null) : null;
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

/** Sets what a tap would, in the middle of what can be seen of the plan; null until the plan is there. */
export const setMidPlan = signal<(() => void) | null>(null);

/** Puts a place in the list of one end. */
export function setPlace(end: End, at: number, place: RoutePlace | null): void {
  ends[end].value = ends[end].value.map((one, i) => (i === at ? place : one));
}

/** One more place of an end, to be tapped next. */
export function addPlace(end: End): void {
  batch(() => {
    const at = ends[end].value.length;
    ends[end].value = [...ends[end].value, null];
    if (end === 'from') areas.value = [...areas.value, null];
    picking.value = { end, at };
  });
}

export function removePlace(end: End, at: number): void {
  const without = <T>(list: readonly T[]): T[] => list.filter((_, i) => i !== at);
  batch(() => {
    ends[end].value = without(ends[end].value);
    if (end === 'from') areas.value = without(areas.value);
    picking.value = null;
  });
}

/** No place chosen at either end. */
export function forgetPlaces(): void {
  ends.from.value = [null];
  ends.to.value = [null];
  areas.value = [null];
}

/** What a tap, or a key, on the plan sets; then the outlet, where that is still open. */
export function setPicked(place: LonLat): void {
  const what = picking.value;
  if (what === null) return;
  batch(() => {
    if (what === 'via') via.value = place;
    else setPlace(what.end, what.at, { position: place });
    const isStart = what !== 'via' && what.end === 'from';
    picking.value = isStart && placesOf('to').length === 0 ? { end: 'to', at: 0 } : null;
  });
}

/** The number that a place has among those of its end on the page; of all that are asked for, the one at `i`. */
export const numberOf = (end: End, i: number): number =>
  ends[end].value.indexOf(placesOf(end)[i] ?? null) + 1;

/** Where a place lies: its own position, or that of the fitting it names. */
export function positionOf(place: RoutePlace | null): LonLat | null {
  if (place === null) return null;
  if ('position' in place) return place.position;
  const fitting = state.opened.value?.site.fittings.find(({ id }) => id === place.id);
  return fitting?.position ?? null;
}
