import { computed, signal } from '@preact/signals';
import {
  type ChoiceId,
  type DecideOptions,
  type DecideResult,
  offersOfChoices,
  type QuoteResult,
  quoteOf,
} from '@rootreach/core';
import { runJob } from '../jobs/jobs.js';
import { toGeoJson } from '../sketch/document.js';
import * as sketch from '../sketch/sketch.js';
import * as state from '../state.js';
import { today } from '../today.js';
import { language } from '../words/words.js';
import { handOver } from './hand-over.js';
import { ownPrices, priceList, priceTerms } from './price-list.js';

/** The stretch that is decided on: the one chosen in the ranking, else the worst. */
export const target = computed(
  () => state.segmentById.value.get(state.chosenStretch.value ?? '') ?? state.segments.value[0] ?? null,
);

/** Years and interest that the choices are reckoned with; the usual ones where empty. */
export const assume = signal<NonNullable<DecideOptions['assume']>>({});
export const mostNow = signal<number | null>(null);

export const decided = signal<DecideResult | null>(null);
/** Stretch and sketch that `decided` belongs to. */
const decidedOn = signal<{ readonly segment: string; readonly site: unknown } | null>(null);
export const deciding = signal(false);
export const problem = signal<string | null>(null);
/** What is to be done, by the user's own will; what is advised where null. */
export const picked = signal<ChoiceId | null>(null);
export const by = signal('');

/** The answer still belongs to what stands on the plan. */
export const isCurrent = computed(
  () =>
    decided.value !== null &&
    decidedOn.value?.segment === target.value?.id &&
    decidedOn.value?.site === sketch.site.value,
);

const options = (): DecideOptions => ({
  asOf: today(),
  prices: priceList.value,
  terms: priceTerms.value,
  assume: assume.value,
  units: state.units.value,
  ...(mostNow.value === null ? {} : { limits: { mostNow: mostNow.value } }),
});

/** Works out what can be done about the stretch. @param again it was, and only a price or a wish has changed. */
export async function decideNow(again = false): Promise<void> {
  const site = sketch.site.value;
  const segment = target.value;
  if (!site || !segment) return;
  deciding.value = true;
  problem.value = null;
  if (!again) picked.value = null;
  try {
    const job = { do: 'decide', site: toGeoJson(site), segmentId: segment.id, options: options() } as const;
    decided.value = await runJob(job);
    decidedOn.value = { segment: segment.id, site };
  } catch (error) {
    problem.value = error instanceof Error ? error.message : String(error);
  }
  deciding.value = false;
}

/** Up to three offers side by side, at the prices as they now are. */
export const quote = computed<QuoteResult | null>(() => {
  const found = decided.value;
  if (!found || !isCurrent.value) return null;
  return quoteOf(offersOfChoices(found), {
    asOf: found.asOf,
    site: found.site,
    cautions: found.cautions,
    prices: priceList.value,
    terms: priceTerms.value,
  });
});

/** Writes the page for the owner or the sheet for the crew, and hands it over as a file. */
export async function writeHandOut(whom: 'owner' | 'crew'): Promise<void> {
  const site = sketch.site.value;
  const segment = target.value;
  if (!site || !segment) return;
  problem.value = null;
  try {
    const html = await runJob({
      do: 'hand-out',
      site: toGeoJson(site),
      ask: {
        for: whom,
        segmentId: segment.id,
        language: language.value,
        units: state.units.value,
        by: by.value.trim(),
        options: options(),
        withChoices: whom === 'crew' || ownPrices.value || site.info['invented'] === true,
        choice: picked.value,
      },
    });
    handOver(`rootreach-${whom}.html`, html, 'text/html');
  } catch (error) {
    problem.value = error instanceof Error ? error.message : String(error);
  }
}
