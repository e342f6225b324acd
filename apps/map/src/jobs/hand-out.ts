import {
  type ChoiceId,
  type DecideOptions,
  decide,
  oddsOverYears,
  rank,
  type Site,
  workStretch,
} from '@rootreach/core';
import { crewSheet, homeownerPage, type Language } from '@rootreach/report';

/** What is to be put on paper about one stretch. */
export interface HandOut {
  readonly for: 'owner' | 'crew';
  readonly segmentId: string;
  readonly language: Language;
  readonly units: 'us' | 'metric';
  /** Whose estimate it is; empty for nobody named. */
  readonly by: string;
  readonly options: DecideOptions;
  /** False where there are no prices that an owner may see. */
  readonly withChoices: boolean;
  /** What the crew is to do; what is advised where not given. */
  readonly choice: ChoiceId | null;
}

/** The page for the owner, or the sheet for the crew. @throws RangeError where the stretch is gone. */
export function handOut(site: Site, ask: HandOut): string {
  const { asOf } = ask.options;
  const result = rank(site, { asOf });
  const segment = result.segments.find(({ id }) => id === ask.segmentId);
  if (!segment) throw new RangeError(`there is no stretch ${ask.segmentId}`);
  const decided = ask.withChoices
    ? decide(site, workStretch(site, segment.id, ask.options), ask.options)
    : null;
  const { language, units } = ask;
  const common = { site, result, segment, language, units, ...(ask.by === '' ? {} : { by: ask.by }) };
  if (ask.for === 'owner') {
    const odds = oddsOverYears(site, segment.id, { asOf }) ?? [];
    return homeownerPage({ ...common, odds, ...(decided === null ? {} : { decided }) });
  }
  const wanted = ask.choice ?? decided?.recommended ?? null;
  const choice = decided?.choices.find(({ id }) => id === wanted);
  return crewSheet({ ...common, ...(choice === undefined ? {} : { choice }) });
}
