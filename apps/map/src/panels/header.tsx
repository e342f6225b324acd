import type { Units } from '@rootreach/core';
import { type DemoKey, demos } from '../demos.js';
import { desk } from '../keep/desk.js';
import * as keep from '../keep/keep-state.js';
import type { Opener } from '../open.js';
import * as state from '../state.js';
import { words } from '../words/words.js';
import { UndoButtons } from './draw/undo-buttons.js';
import { Notices } from './sites/notices.js';

const OWN = 'own';
const w = () => words.value.header;

/** Sites of this device for the menu; the open one stands first if it is not kept. */
function KeptOptions() {
  const kept = (keep.keptSites.value ?? []).filter((site) => site.deleted === null);
  if (kept.length === 0) return null;
  return (
    <optgroup label={words.value.keep.picker.kept}>
      {kept.map((site) => (
        <option key={site.id} value={site.id}>
          {site.name}
        </option>
      ))}
    </optgroup>
  );
}

function SitePicker() {
  const demo = state.siteKey.value;
  const names = state.fileNames.value;
  const isKept = keep.keptSites.value?.some((site) => site.id === keep.keptId.value) ?? false;
  const value = demo ?? (isKept ? (keep.keptId.value ?? OWN) : OWN);
  return (
    <select
      class="site-picker"
      aria-label={w().site}
      value={value}
      onChange={(event) => {
        const { value: chosen } = event.currentTarget;
        if (chosen !== OWN) void desk().sites.openPicked(chosen);
      }}
    >
      {value === OWN && <option value={OWN}>{names.length === 0 ? w().none : w().ownFile(names)}</option>}
      <KeptOptions />
      <optgroup label={words.value.keep.picker.examples}>
        {(Object.keys(demos) as DemoKey[]).map((key) => (
          <option key={key} value={key}>
            {w().demos[key]}
          </option>
        ))}
      </optgroup>
    </select>
  );
}

/** Whether the open site is kept, in words. */
function SaveState() {
  const saveState = keep.saveState.value;
  // its place is kept from the start, or the plan would be laid out again when the first site comes
  const text = state.opened.value ? words.value.keep.saveState[saveState] : '\u00a0';
  return <p class={`save-state save-state-${saveState}`}>{text}</p>;
}

/** What the buttons that open files open; it stands here so that it is there whatever the sheet shows. */
function FilePicker({ opener }: { readonly opener: Opener }) {
  return (
    <input
      hidden
      id="open-files"
      type="file"
      multiple
      accept=".geojson,.json,.csv,.tsv,.txt,.zip,.kml,.kmz,.gpx,.ndjson,.geojsonl,application/geo+json,application/json,text/csv"
      aria-label={w().openHint}
      onChange={(event) => {
        const input = event.currentTarget;
        void opener.openFiles([...(input.files ?? [])]);
        input.value = '';
      }}
    />
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
      <div class="header-row">
        <div class="site-cell">
          <SitePicker />
          <SaveState />
        </div>
        <FilePicker opener={opener} />
        <div class="header-tools">
          <UndoButtons />
        </div>
        <UnitsSwitch />
      </div>
      <Notices />
    </header>
  );
}
