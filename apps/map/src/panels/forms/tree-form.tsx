import { words } from '../../words/words.js';
import { ChoiceField } from './choice-field.js';
import { DateField } from './date-field.js';
import { LengthField } from './length-field.js';
import { SpeciesField } from './species-field.js';
import type { Target } from './target.js';
import { TextField } from './text-field.js';
import { TrunkFields } from './trunk-fields.js';

function ConditionField({ target }: { readonly target: Target }) {
  const w = words.value.forms;
  const value = target.values['condition'];
  const known = Object.entries(w.tree.conditions);
  const own = typeof value === 'string' && !(value in w.tree.conditions) ? [[value, value] as const] : [];
  return (
    <ChoiceField<string>
      target={target}
      label={w.tree.condition}
      value={typeof value === 'string' ? value : null}
      choices={[...known, ...own]}
      write={(condition) => ({ condition: condition ?? undefined })}
      none={w.notSaid}
    />
  );
}

export function TreeForm({ target }: { readonly target: Target }) {
  const w = words.value.forms;
  return (
    <>
      <SpeciesField target={target} />
      <TrunkFields target={target} />
      <LengthField
        target={target}
        label={w.tree.canopy}
        hint={w.tree.canopyHint}
        quantity="canopyRadius"
        measured="ground"
        leastM={0.01}
      />
      <details class="fold">
        <summary>{w.more}</summary>
        <LengthField
          target={target}
          label={w.tree.height}
          quantity="height"
          measured="ground"
          leastM={0.01}
        />
        <ConditionField target={target} />
        <DateField target={target} label={w.tree.planted} property="planted" />
        <DateField target={target} label={w.tree.felled} property="felled" />
        <TextField target={target} label={w.note} property="note" long />
      </details>
    </>
  );
}
