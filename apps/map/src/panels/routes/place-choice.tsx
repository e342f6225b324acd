import { useEffect, useId, useRef } from 'preact/hooks';
import * as route from '../../plan-route/route-state.js';
import * as state from '../../state.js';
import { words } from '../../words/words.js';
import * as measure from './water-units.js';

const w = () => words.value.routes;
const ON_PLAN = '*';
/** More starts take long to be joined at their best; more outlets are seldom there. */
const MOST = { from: 8, to: 4 } as const;

/** A number above 0 as typed; null for anything else. */
function numberOf(text: string): number | null {
  const value = Number(text.trim().replace(',', '.'));
  return value > 0 && Number.isFinite(value) ? value : null;
}

const whatOf = (picking: Exclude<route.Picking, null>): 'via' | route.End =>
  picking === 'via' ? 'via' : picking.end;

/** The button that had the focus is gone: then the keys would have to come all the way again. */
const focusIsLost = (): boolean => document.activeElement === document.body;

/** What the next tap does, and how to do without one. */
export function Picking({ picking }: { readonly picking: Exclude<route.Picking, null> }) {
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (focusIsLost()) button.current?.focus({ preventScroll: true });
  }, []);
  return (
    <div class="route-picking">
      <p role="status">{w().tapping[whatOf(picking)]}</p>
      <button ref={button} type="button" class="button" onClick={() => route.setMidPlan.value?.()}>
        {w().midPlan}
      </button>
    </div>
  );
}

/** On a phone the plan must be seen to be tapped. */
function showPlan(): void {
  if (!state.wide.value && state.sheetHeight.value === 'full') state.sheetHeight.value = 'half';
}

/** What drains to one of several starts. */
function AreaEntry({ at }: { readonly at: number }) {
  const id = useId();
  const units = state.units.value;
  const areaM2 = route.areas.value[at] ?? null;
  return (
    <div class="route-area">
      <label for={id}>{w().drains(units)}</label>
      <input
        id={id}
        class="entry"
        inputMode="decimal"
        value={areaM2 === null ? '' : String(Math.round(measure.area(areaM2, units)))}
        onChange={({ currentTarget }) => {
          const value = numberOf(currentTarget.value);
          const typed = value === null ? null : value / measure.area(1, units);
          route.areas.value = route.areas.value.map((one, i) => (i === at ? typed : one));
        }}
      />
    </div>
  );
}

/** One place: a fitting of the sketch, or a place tapped on the plan. */
function PlaceChoice({ end, at }: { readonly end: route.End; readonly at: number }) {
  const id = useId();
  const places = route.ends[end].value;
  const place = places[at] ?? null;
  const taken = places.flatMap((one, i) => (i !== at && one !== null && 'id' in one ? [one.id] : []));
  const fittings = (state.opened.value?.site.fittings ?? []).filter((one) => !taken.includes(one.id));
  const value = place === null ? '' : 'id' in place ? place.id : ON_PLAN;
  const picking = route.picking.value;
  const isPicking = picking !== null && picking !== 'via' && picking.end === end && picking.at === at;
  const label = w().placeLabel(end, at, places.length);
  return (
    <div class="route-place">
      <label for={id}>{label}</label>
      <div class="route-place-row">
        <select
          id={id}
          class="entry"
          value={value}
          onChange={(event) => {
            const chosen = event.currentTarget.value;
            if (chosen === ON_PLAN) return;
            route.setPlace(end, at, chosen === '' ? null : { id: chosen });
            if (isPicking) route.picking.value = null;
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
          aria-pressed={isPicking}
          onClick={() => {
            route.picking.value = isPicking ? null : { end, at };
            showPlan();
          }}
        >
          {w().tapPlan}
        </button>
        {places.length > 1 && (
          <button
            type="button"
            class="button"
            aria-label={w().removePlace(label)}
            onClick={() => route.removePlace(end, at)}
          >
            {w().remove}
          </button>
        )}
      </div>
      {isPicking && picking && <Picking picking={picking} />}
      {end === 'from' && places.length > 1 && <AreaEntry at={at} />}
    </div>
  );
}

/** All places of one end, and one more. */
export function Places({ end }: { readonly end: route.End }) {
  const places = route.ends[end].value;
  const isFull = places.length >= MOST[end];
  const list = useRef<HTMLDivElement>(null);
  const before = useRef(places.length);
  useEffect(() => {
    const isFewer = places.length < before.current;
    before.current = places.length;
    if (isFewer && focusIsLost()) [...(list.current?.querySelectorAll('select') ?? [])].at(-1)?.focus();
  }, [places.length]);
  return (
    <div class="route-places" ref={list}>
      {places.map((_, at) => (
        <PlaceChoice key={`${end}${at}`} end={end} at={at} />
      ))}
      {!isFull && places.every((place) => place !== null) && (
        <button
          type="button"
          class="button"
          onClick={() => {
            route.addPlace(end);
            showPlan();
          }}
        >
          {w().another[end]}
        </button>
      )}
    </div>
  );
}

/** Rain that the pipes of several starts are sized by. */
export function RainEntry() {
  const id = useId();
  const units = state.units.value;
  const given = state.opened.value?.site.rainMmPerHour ?? null;
  const mm = route.rainMmPerHour.value ?? given;
  return (
    <div class="route-area">
      <label for={id}>{w().rain(units)}</label>
      <input
        id={id}
        class="entry"
        inputMode="decimal"
        value={mm === null ? '' : String(Number(measure.rain(mm, units).toPrecision(3)))}
        onChange={({ currentTarget }) => {
          const value = numberOf(currentTarget.value);
          route.rainMmPerHour.value = value === null ? null : value / measure.rain(1, units);
        }}
      />
      <p class="quiet">{w().sizing}</p>
    </div>
  );
}
