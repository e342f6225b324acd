import { useSignal } from '@preact/signals';
import { resolveSpecies, type SpeciesName, speciesNames, speciesRow } from '@rootreach/core';
import { useId } from 'preact/hooks';
import { searchSpecies } from '../../enter/search-species.js';
import * as sketch from '../../sketch/sketch.js';
import { words } from '../../words/words.js';
import type { Target } from './target.js';
import { UnknownKind } from './unknown-kind.js';

const names = speciesNames();
const w = () => words.value.forms.tree;

/** What the model makes of the text, said at once. */
function takenWords(text: string): string {
  const match = resolveSpecies(text);
  if (match.level === 'unknown') return w().takenNone;
  const name = speciesRow(match.key).common[0];
  return match.level === 'group' || match.certainty === 'guess' ? w().takenGuess(name) : w().taken(name);
}

const optionText = ({ common, botanical }: SpeciesName): string => `${common[0]}, ${botanical}`;

/** Kind of tree by a few letters of either name; a name that is not in the list is kept as typed. */
export function SpeciesField({ target }: { readonly target: Target }) {
  const id = useId();
  const text = typeof target.values['species'] === 'string' ? target.values['species'] : '';
  const draft = useSignal<string | null>(null);
  const open = useSignal(false);
  const at = useSignal(-1);
  const found = draft.value === null ? [] : searchSpecies(names, draft.value);
  const shown = open.value && found.length > 0;
  const optionId = (i: number) => `${id}-option-${i}`;
  const write = (species: string) => {
    draft.value = null;
    open.value = false;
    at.value = -1;
    if (species !== text) {
      const label = words.value.forms.changed(w().species);
      sketch.edit(label, target.set({ species: species === '' ? undefined : species }));
    }
  };
  const key = (event: KeyboardEvent) => {
    if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
      event.preventDefault();
      draft.value ??= text;
      open.value = true;
      const step = event.key === 'ArrowDown' ? 1 : -1;
      const count = searchSpecies(names, draft.value).length;
      if (count > 0) at.value = (Math.max(at.value, step > 0 ? -1 : 0) + step + count) % count;
    } else if (event.key === 'Enter') {
      event.preventDefault();
      write((shown && found[at.value]?.botanical) || (draft.value ?? text).trim());
    } else if (event.key === 'Escape' && shown) {
      event.stopPropagation();
      open.value = false;
      at.value = -1;
    }
  };
  return (
    <div class="field">
      <label for={id}>{w().species}</label>
      <p class="hint" id={`${id}-hint`}>
        {w().speciesHint}
      </p>
      <div class="combobox">
        <input
          id={id}
          class="entry"
          type="text"
          role="combobox"
          autocomplete="off"
          spellcheck={false}
          aria-autocomplete="list"
          aria-expanded={shown}
          aria-controls={`${id}-list`}
          aria-activedescendant={shown && at.value >= 0 ? optionId(at.value) : undefined}
          aria-describedby={`${id}-hint ${id}-taken`}
          value={draft.value ?? text}
          onInput={(event) => {
            draft.value = event.currentTarget.value;
            open.value = true;
            at.value = -1;
          }}
          onKeyDown={key}
          onBlur={() => {
            if (draft.value !== null) write(draft.value.trim());
          }}
        />
        <div class="options" id={`${id}-list`} role="listbox" aria-label={w().species} hidden={!shown}>
          {found.map((species, i) => (
            <button
              type="button"
              key={species.key}
              id={optionId(i)}
              class="option"
              role="option"
              tabIndex={-1}
              aria-label={optionText(species)}
              aria-selected={i === at.value}
              onPointerDown={(event) => event.preventDefault()}
              onClick={() => write(species.botanical)}
            >
              <span class="capital">{species.common[0]}</span> <i>{species.botanical}</i>
            </button>
          ))}
        </div>
      </div>
      <p class="unseen" role="status">
        {draft.value !== null && draft.value.trim() !== '' && w().speciesCount(found.length)}
      </p>
      <p class="hint" id={`${id}-taken`}>
        {draft.value === null && text !== '' && takenWords(text)}
      </p>
      <UnknownKind text={text} write={write} />
    </div>
  );
}
