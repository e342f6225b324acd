import { wordCaution } from '@rootreach/core';
import { useEffect, useId } from 'preact/hooks';
import * as measure from '../../measure.js';
import * as sketch from '../../sketch/sketch.js';
import * as state from '../../state.js';
import { language, words } from '../../words/words.js';
import { priceList, priceTerms } from '../../works/price-list.js';
import * as works from '../../works/works-state.js';
import { ChoiceCard, choiceWords } from './choice-card.js';
import { AssumptionsPart, PricesPart } from './prices-part.js';
import { QuotePart } from './quote-part.js';
import { SeasonPart } from './season-part.js';

const w = () => words.value.works;
/** Stretches offered to decide on: worst first, the rest is a tap away on the plan. */
const MOST_OFFERED = 30;

function TargetChoice() {
  const id = useId();
  const offered = state.segments.value.slice(0, MOST_OFFERED);
  const target = works.target.value;
  const rows = target && !offered.includes(target) ? [target, ...offered] : offered;
  return (
    <div class="route-place">
      <label for={id}>{w().about}</label>
      <select
        id={id}
        class="entry"
        value={target?.id ?? ''}
        onChange={(event) => {
          state.chosenStretch.value = event.currentTarget.value;
        }}
      >
        {rows.map((segment) => (
          <option key={segment.id} value={segment.id}>
            {words.value.band[segment.band]}: {words.value.list.row(segment, state.units.value)}
          </option>
        ))}
      </select>
    </div>
  );
}

function Switches() {
  const rows = (works.decided.value?.switches ?? []).filter(
    ({ at, becomes }) => at !== null && becomes !== null,
  );
  return (
    <details class="works-part">
      <summary>{w().switches}</summary>
      {rows.length === 0 && <p>{w().steady}</p>}
      <ul>
        {rows.map(({ what, at, becomes }) => (
          <li key={what}>
            {w().switchRow(
              what,
              at as number,
              choiceWords().names[becomes as keyof ReturnType<typeof choiceWords>['names']],
            )}
          </li>
        ))}
      </ul>
    </details>
  );
}

function Choices() {
  const decided = works.decided.value;
  if (!decided || !works.isCurrent.value) return decided ? <p>{w().stale}</p> : null;
  const { drainId, drainName, fromM, toM } = decided.target;
  const name = drainName ?? drainId;
  const said = choiceWords();
  const order = (id: string, value: number | null) =>
    id === decided.recommended ? -2 : id === decided.runnerUp ? -1 : (value ?? Number.MAX_VALUE);
  const possible = decided.choices
    .filter((one) => one.possible)
    .sort((a, b) => order(a.id, a.presentValue) - order(b.id, b.presentValue));
  const impossible = decided.choices.filter((one) => !one.possible);
  return (
    <>
      <h2>{w().choices}</h2>
      <p class="quiet">{w().weighed(name, measure.span(fromM, toM, state.units.value))}</p>
      <ul class="choices">
        {possible.map((choice) => (
          <ChoiceCard key={choice.id} choice={choice} decided={decided} />
        ))}
      </ul>
      {impossible.length > 0 && (
        <details class="works-part">
          <summary>{w().notPossible(impossible.length)}</summary>
          <ul>
            {impossible.map(({ id, reasons }) => (
              <li key={id}>
                {said.names[id]}:{' '}
                {reasons.map((code) => said.reasons[code]).find((one) => one !== undefined) ?? ''}
              </li>
            ))}
          </ul>
        </details>
      )}
      <Switches />
    </>
  );
}

function HandOut() {
  const id = useId();
  return (
    <section class="works-section">
      <h2>{w().handOut}</h2>
      <p class="quiet">{w().handOutHint}</p>
      <label for={id}>{w().by}</label>
      <input
        id={id}
        class="entry"
        value={works.by.value}
        onInput={(event) => {
          works.by.value = event.currentTarget.value;
        }}
      />
      <div class="works-buttons">
        <button type="button" class="button" onClick={() => void works.writeHandOut('owner')}>
          {w().owner}
        </button>
        <button type="button" class="button" onClick={() => void works.writeHandOut('crew')}>
          {w().crew}
        </button>
      </div>
    </section>
  );
}

/** From a ranked stretch to a choice, an offer, a page and a date. */
export function Works() {
  const site = sketch.site.value;
  const [prices, terms, assume, most] = [priceList, priceTerms, works.assume, works.mostNow].map(
    (s) => s.value,
  );
  // the choices follow each price and assumption
  useEffect(() => {
    if (works.isCurrent.value) void works.decideNow(true);
  }, [prices, terms, assume, most]);
  if (!site) return <p class="loading">{w().tooLarge}</p>;
  const cautions = works.decided.value?.cautions ?? state.opened.value?.result.cautions ?? [];
  return (
    <div class="works">
      <h1>{w().title}</h1>
      {works.target.value ? (
        <>
          <TargetChoice />
          <button
            type="button"
            class="button button-first"
            disabled={works.deciding.value}
            onClick={() => void works.decideNow()}
          >
            {works.deciding.value ? w().working : works.isCurrent.value ? w().again : w().decide}
          </button>
          {works.problem.value && <p class="known">{w().failed(works.problem.value)}</p>}
          <Choices />
          <AssumptionsPart />
          <PricesPart />
          {works.quote.value && <QuotePart quote={works.quote.value} />}
          <HandOut />
        </>
      ) : (
        <p>{w().none}</p>
      )}
      <SeasonPart />
      <details class="works-part">
        <summary>{words.value.cautions.title}</summary>
        <ul>
          {cautions.map(({ code }) => (
            <li key={code}>{wordCaution(code, language.value)}</li>
          ))}
        </ul>
      </details>
    </div>
  );
}
