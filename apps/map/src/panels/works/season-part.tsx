import { useSignal } from '@preact/signals';
import { type SeasonResult, seasonCsv, seasonIcs } from '@rootreach/core';
import { useId } from 'preact/hooks';
import { runJob } from '../../jobs/jobs.js';
import { desk } from '../../keep/desk.js';
import * as measure from '../../measure.js';
import * as state from '../../state.js';
import { today } from '../../today.js';
import { words } from '../../words/words.js';
import { handOver } from '../../works/hand-over.js';
import { workingDays } from '../../works/working-days.js';
import { NumberInput } from './number-input.js';

const w = () => words.value.works;
const MOST_SHOWN = 40;

function Looks({ season }: { readonly season: SeasonResult }) {
  const units = state.units.value;
  const save = (name: string, text: string, type: string) => handOver(name, text, type);
  if (season.looks.length === 0) return <p role="status">{w().noLooks}</p>;
  return (
    <>
      <ul class="works-looks">
        {season.looks.slice(0, MOST_SHOWN).map((look) => (
          <li key={look.uid}>
            <b>{look.day ?? w().due(look.due)}</b>{' '}
            {w().look(
              look.site,
              look.fromName,
              w().direction[look.direction],
              measure.length(look.toM, units),
            )}
            , {w().expect(measure.length(look.expectM[0], units), measure.length(look.expectM[1], units))}
          </li>
        ))}
      </ul>
      {season.unplaced > 0 && <p>{w().unplaced(season.unplaced)}</p>}
      <div class="works-buttons">
        <button
          type="button"
          class="button"
          onClick={() => save('looks.ics', seasonIcs(season, units), 'text/calendar')}
        >
          {w().saveCalendar}
        </button>
        <button
          type="button"
          class="button"
          onClick={() => save('looks.csv', seasonCsv(season, units), 'text/csv')}
        >
          {w().saveSeason}
        </button>
      </div>
    </>
  );
}

/** Next looks for all sites on this device, spread over the working days. */
export function SeasonPart() {
  const until = useSignal(`${Number(today().slice(0, 4)) + 1}-12`);
  const firstDay = useSignal('');
  const dayCount = useSignal<number | null>(10);
  const season = useSignal<SeasonResult | null>(null);
  const problem = useSignal<string | null>(null);
  const ids = { until: useId(), first: useId() };
  const make = async () => {
    problem.value = null;
    const sites = await desk().sites.texts();
    if (sites.length === 0) {
      problem.value = w().noSites;
      return;
    }
    const days = firstDay.value === '' ? [] : workingDays(firstDay.value, dayCount.value ?? 10);
    const options = { asOf: today(), until: until.value, ...(days.length === 0 ? {} : { days }) };
    try {
      season.value = await runJob({ do: 'season', sites, options });
    } catch (error) {
      problem.value = w().failed(error instanceof Error ? error.message : String(error));
    }
  };
  return (
    <section class="works-section">
      <h2>{w().season}</h2>
      <p class="quiet">{w().seasonHint}</p>
      <div class="works-numbers">
        <div class="works-number">
          <label for={ids.until}>{w().until}</label>
          <input
            id={ids.until}
            class="entry"
            type="month"
            value={until.value}
            onChange={(event) => {
              until.value = event.currentTarget.value || until.value;
            }}
          />
        </div>
        <div class="works-number">
          <label for={ids.first}>{w().days}</label>
          <input
            id={ids.first}
            class="entry"
            type="date"
            value={firstDay.value}
            onChange={(event) => {
              firstDay.value = event.currentTarget.value;
            }}
          />
        </div>
        <NumberInput
          label={w().dayCount}
          value={dayCount.value}
          least={1}
          most={250}
          step={1}
          set={(value) => {
            dayCount.value = value;
          }}
        />
      </div>
      <button type="button" class="button" onClick={() => void make()}>
        {w().makeSeason}
      </button>
      {problem.value && <p class="known">{problem.value}</p>}
      {season.value && <Looks season={season.value} />}
    </section>
  );
}
