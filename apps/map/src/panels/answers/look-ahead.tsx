import { useId } from 'preact/hooks';
import * as state from '../../state.js';
import { today } from '../../today.js';
import { words } from '../../words/words.js';
import { backToToday, isWhatIf, unfolded, yearShown } from './ahead.js';

/** Beyond this the growth of trees is anybody's guess (judgement). */
const MOST_YEARS = 25;
const TICKS = [0, 5, 10, 15, 20, 25];

/** The year that the ranking speaks for, and what if every line were cleared now. */
export function LookAhead() {
  const id = useId();
  const w = words.value.answers.time;
  const ahead = state.yearsAhead.value;
  const thisYear = Number(today().slice(0, 4));
  return (
    <details
      class="fold ahead"
      open={unfolded.value}
      onToggle={(event) => {
        unfolded.value = event.currentTarget.open;
      }}
    >
      <summary>{w.title}</summary>
      <div class="ahead-row">
        <label for={id} class="unseen">
          {w.slider}
        </label>
        <input
          id={id}
          class="ahead-slider"
          type="range"
          min={0}
          max={MOST_YEARS}
          step={1}
          value={ahead}
          aria-valuetext={w.valueText(thisYear + ahead, ahead)}
          onInput={(event) => {
            state.yearsAhead.value = Number(event.currentTarget.value);
          }}
        />
        <output class="ahead-year" for={id}>
          {ahead === 0 ? w.today : w.inYear(thisYear + ahead)}
        </output>
      </div>
      <div class="ahead-ticks" aria-hidden="true">
        {TICKS.map((years) => (
          <span key={years}>{years === 0 ? thisYear : `+${years}`}</span>
        ))}
      </div>
      <label class="ahead-cleared">
        <input
          type="checkbox"
          checked={state.clearedNow.value}
          onChange={(event) => {
            state.clearedNow.value = event.currentTarget.checked;
          }}
        />
        <span>{w.cleared}</span>
      </label>
    </details>
  );
}

/** Says aloud that the numbers speak for another time or case, with the way back. */
export function WhatIfNotice() {
  const w = words.value.answers.time;
  return (
    <div role="status" class="what-if-place">
      {isWhatIf.value && (
        <div class="what-if">
          <p>{w.speaks(yearShown.value, state.clearedNow.value)}</p>
          <button type="button" class="button" onClick={backToToday}>
            {yearShown.value === null ? w.stop : w.back}
          </button>
        </div>
      )}
    </div>
  );
}
