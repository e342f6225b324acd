import { type DemoKey, demos, isDemo } from '../demos.js';
import type { Units } from '../measure.js';
import type { Opener } from '../open.js';
import * as state from '../state.js';
import { words } from '../words/words.js';

const OWN = 'own';
const w = () => words.value.header;

function SitePicker({ opener }: { readonly opener: Opener }) {
  const key = state.siteKey.value;
  const names = state.fileNames.value;
  return (
    <select
      class="site-picker"
      aria-label={w().site}
      value={key ?? OWN}
      onChange={(event) => {
        const chosen = event.currentTarget.value;
        if (isDemo(chosen)) void opener.openDemo(chosen);
      }}
    >
      {key === null && <option value={OWN}>{names.length === 0 ? w().none : w().ownFile(names)}</option>}
      {(Object.keys(demos) as DemoKey[]).map((demo) => (
        <option key={demo} value={demo}>
          {w().demos[demo]}
        </option>
      ))}
    </select>
  );
}

function OpenButton({ opener }: { readonly opener: Opener }) {
  return (
    <label class="button open-button" title={w().openHint}>
      {w().open}
      <input
        class="unseen"
        type="file"
        multiple
        accept=".geojson,.json,application/geo+json,application/json"
        aria-label={w().openHint}
        onChange={(event) => {
          const input = event.currentTarget;
          void opener.openFiles([...(input.files ?? [])]);
          input.value = '';
        }}
      />
    </label>
  );
}

function UnitsSwitch() {
  const choice = (units: Units, short: string, long: string) => (
    <label class="units-choice">
      <input
        class="unseen"
        type="radio"
        name="units"
        value={units}
        checked={state.units.value === units}
        aria-label={long}
        onChange={() => {
          state.switchedUnits.value = units;
        }}
      />
      <span class="units-word">{short}</span>
    </label>
  );
  return (
    <fieldset class="units-switch">
      <legend class="unseen">{w().units}</legend>
      {choice('us', w().us, w().usLong)}
      {choice('metric', w().metric, w().metricLong)}
    </fieldset>
  );
}

export function Header({ opener }: { readonly opener: Opener }) {
  return (
    <header class="header">
      <SitePicker opener={opener} />
      <OpenButton opener={opener} />
      <UnitsSwitch />
    </header>
  );
}
