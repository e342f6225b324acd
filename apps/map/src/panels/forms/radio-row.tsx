import { useId } from 'preact/hooks';

interface RadioRowProps<T extends string> {
  readonly label: string;
  readonly value: T | null;
  readonly choices: readonly (readonly [key: T, name: string])[];
  readonly choose: (key: T) => void;
}

/** A few choices side by side, each large enough for a wet thumb. */
export function RadioRow<T extends string>({ label, value, choices, choose }: RadioRowProps<T>) {
  const name = useId();
  return (
    <fieldset class="radio-row">
      <legend>{label}</legend>
      <div class="radio-choices">
        {choices.map(([key, text]) => (
          <label key={key} class="radio-choice">
            <input
              class="unseen"
              type="radio"
              name={name}
              value={key}
              checked={value === key}
              onChange={() => choose(key)}
            />
            <span>{text}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
