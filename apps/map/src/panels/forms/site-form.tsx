import { fromInchesPerHour, toInchesPerHour } from '@rootreach/core';
import { parseNumber } from '../../enter/parse-number.js';
import * as state from '../../state.js';
import { words } from '../../words/words.js';
import { ChoiceField, NamedChoice } from './choice-field.js';
import { siteTarget, type Target } from './target.js';
import { TextField } from './text-field.js';
import { TypedField } from './typed-field.js';

const RAIN = /^(.*?)\s*(mm|in|inch|inches|"|pulg)?\s*(?:\/\s*h(?:r|our)?|an hour|per hour)?$/i;

function RainField({ target }: { readonly target: Target }) {
  const w = words.value.forms;
  const units = state.units.value;
  const mmPerHour = target.values['rain_mm_h'];
  const shown =
    typeof mmPerHour !== 'number'
      ? ''
      : units === 'us'
        ? `${Number(toInchesPerHour(mmPerHour).toFixed(2))} in/h`
        : `${Number(mmPerHour.toFixed(1))} mm/h`;
  const read = (typed: string) => {
    const [, number = '', unit] = RAIN.exec(typed.trim()) ?? [];
    const value = parseNumber(number);
    if (value === null || value <= 0) return null;
    const metric = unit === undefined ? units === 'metric' : unit.toLowerCase() === 'mm';
    return { rain_mm_h: metric ? value : Number(fromInchesPerHour(value).toFixed(3)) };
  };
  return (
    <TypedField
      target={target}
      label={w.site.rain}
      hint={w.site.rainHint}
      text={shown}
      read={read}
      empty={{ rain_mm_h: undefined }}
      wrong={w.wrong.rain[units]}
      keyboard="decimal"
    />
  );
}

/** What a site says of itself. */
export function SiteForm() {
  const w = words.value.forms;
  const target = siteTarget();
  const given = target.values['units'];
  return (
    <details class="fold">
      <summary>{w.site.title}</summary>
      <form class="form" aria-label={w.site.title} onSubmit={(event) => event.preventDefault()}>
        <TextField target={target} label={w.site.name} property="name" />
        <ChoiceField<'us' | 'metric'>
          target={target}
          label={w.site.units}
          value={given === 'us' || given === 'metric' ? given : null}
          choices={Object.entries(w.site.unitNames) as ['us' | 'metric', string][]}
          write={(choice) => {
            state.switchedUnits.value = choice;
            return { units: choice ?? undefined };
          }}
          none={w.notSaid}
        />
        <NamedChoice
          target={target}
          label={w.site.soil}
          property="soil"
          names={w.site.soils}
          none={w.notKnown}
        />
        <NamedChoice
          target={target}
          label={w.site.protection}
          hint={w.site.protectionHint}
          property="protection"
          names={w.site.protections}
          none={w.site.protectionUsual}
        />
        <RainField target={target} />
        <NamedChoice
          target={target}
          label={w.site.biome}
          property="biome"
          names={w.site.biomes}
          none={w.notKnown}
        />
        <TextField target={target} label={w.site.notes} property="notes" long />
      </form>
    </details>
  );
}
