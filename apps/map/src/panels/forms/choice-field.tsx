import { useId } from 'preact/hooks';
import * as sketch from '../../sketch/sketch.js';
import { words } from '../../words/words.js';
import type { Target, Values } from './target.js';

interface ChoiceFieldProps<T extends string> {
  readonly target: Target;
  readonly label: string;
  readonly value: T | null;
  readonly choices: readonly (readonly [key: T, name: string])[];
  /** Properties for a choice; null: nothing said. */
  readonly write: (choice: T | null) => Values;
  /** Name of the choice that says nothing; left out where one must be taken. */
  readonly none?: string;
  readonly hint?: string;
}

/** One of a few. */
export function ChoiceField<T extends string>(props: ChoiceFieldProps<T>) {
  const { target, label, value, choices, write, none, hint } = props;
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{label}</label>
      {hint && (
        <p class="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <select
        id={id}
        class="entry"
        value={value ?? ''}
        aria-describedby={hint ? `${id}-hint` : undefined}
        onChange={(event) => {
          const key = event.currentTarget.value as T | '';
          sketch.edit(words.value.forms.changed(label), target.set(write(key === '' ? null : key)));
        }}
      >
        {(none !== undefined || value === null) && (
          <option value="">{none ?? words.value.forms.choose}</option>
        )}
        {choices.map(([key, name]) => (
          <option key={key} value={key}>
            {name}
          </option>
        ))}
      </select>
    </div>
  );
}

interface NamedChoiceProps<T extends string> {
  readonly target: Target;
  readonly label: string;
  readonly property: string;
  readonly names: Readonly<Record<T, string>>;
  readonly none?: string;
  readonly hint?: string;
}

/** One of a few that is written down by its key. */
export function NamedChoice<T extends string>({ property, names, ...rest }: NamedChoiceProps<T>) {
  const value = rest.target.values[property];
  return (
    <ChoiceField<T>
      {...rest}
      value={typeof value === 'string' && value in names ? (value as T) : null}
      choices={Object.entries(names) as [T, string][]}
      write={(choice) => ({ [property]: choice ?? undefined })}
    />
  );
}

interface FlagFieldProps {
  readonly target: Target;
  readonly label: string;
  readonly property: string;
  readonly hint?: string;
}

/** Yes, no, or not known. */
export function FlagField({ property, ...rest }: FlagFieldProps) {
  const value = rest.target.values[property];
  const { yes, no, notKnown } = words.value.forms;
  return (
    <ChoiceField<'yes' | 'no'>
      {...rest}
      value={value === true ? 'yes' : value === false ? 'no' : null}
      choices={[
        ['yes', yes],
        ['no', no],
      ]}
      write={(choice) => ({ [property]: choice === null ? undefined : choice === 'yes' })}
      none={notKnown}
    />
  );
}
