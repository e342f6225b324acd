import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import { words } from '../../words/words.js';
import type { Target, Values } from './target.js';
import { useEntry } from './use-entry.js';

export interface TypedFieldProps {
  readonly target: Target;
  readonly label: string;
  /** What to type, always beneath the label. */
  readonly hint?: string;
  /** The value as it stands; empty where there is none. */
  readonly text: string;
  /** Properties for what was typed, or null where it is not understood. Never asked for empty text. */
  readonly read: (typed: string) => Values | null;
  /** Properties when the field is emptied. */
  readonly empty: Values;
  /** Said beside the field when it is not understood: what to type instead. */
  readonly wrong: string;
  readonly keyboard?: 'text' | 'decimal' | 'numeric';
  /** Usual values to choose from. */
  readonly choices?: readonly string[];
  /** Property that marks the value as an estimate. */
  readonly about?: string;
  readonly long?: boolean;
}

function AboutBox({
  target,
  about,
  of,
}: {
  readonly target: Target;
  readonly about: string;
  readonly of: string;
}) {
  const entry = useEntry(words.value.forms.changed(of));
  return (
    <label class="about">
      <input
        type="checkbox"
        checked={target.values[about] === true}
        aria-label={words.value.forms.aboutOf(of)}
        onChange={(event) => {
          entry.write(target.set({ [about]: event.currentTarget.checked || undefined }));
          entry.done();
        }}
      />
      <span aria-hidden="true">{words.value.forms.about}</span>
    </label>
  );
}

/** A field one types in. What is understood is in the sketch as it is typed; what is not is said beside it. */
export function TypedField(props: TypedFieldProps) {
  const { target, label, hint, text, read, empty, wrong, keyboard = 'text', choices, about, long } = props;
  const id = useId();
  /** What is being typed; null when nobody types. */
  const draft = useSignal<string | null>(null);
  const failed = useSignal(false);
  const entry = useEntry(words.value.forms.changed(label));
  const valuesOf = (typed: string) => (typed.trim() === '' ? empty : read(typed));
  const typed = (value: string) => {
    draft.value = value;
    const values = valuesOf(value);
    if (values) {
      failed.value = false;
      entry.write(target.set(values));
    }
  };
  const left = () => {
    if (draft.value === null) return;
    failed.value = valuesOf(draft.value) === null;
    if (failed.value) {
      entry.cancel();
      return;
    }
    entry.done();
    draft.value = null;
  };
  const described = [hint && `${id}-hint`, failed.value && `${id}-wrong`].filter(Boolean).join(' ');
  const common = {
    id,
    class: 'entry',
    value: draft.value ?? text,
    'aria-describedby': described || undefined,
    'aria-invalid': failed.value,
    autocomplete: 'off' as const,
    onInput: (event: { currentTarget: { value: string } }) => typed(event.currentTarget.value),
    onBlur: left,
  };
  return (
    <div class={failed.value ? 'field field-wrong' : 'field'}>
      <label for={id}>{label}</label>
      {hint && (
        <p class="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <div class="field-row">
        {long ? (
          <textarea {...common} rows={3} />
        ) : (
          <input
            {...common}
            type="text"
            inputMode={keyboard}
            onKeyDown={(event) => {
              if (event.key === 'Enter') left();
            }}
          />
        )}
        {about && text !== '' && <AboutBox target={target} about={about} of={label} />}
      </div>
      {choices && choices.length > 0 && (
        <fieldset class="usual">
          <legend>{words.value.forms.usual}</legend>
          {choices.map((choice) => (
            <button
              key={choice}
              type="button"
              class="button usual-choice"
              aria-pressed={choice === text}
              onClick={() => {
                typed(choice);
                left();
              }}
            >
              {choice}
            </button>
          ))}
        </fieldset>
      )}
      {failed.value && (
        <p class="wrong" id={`${id}-wrong`} role="alert">
          {wrong}
        </p>
      )}
    </div>
  );
}
