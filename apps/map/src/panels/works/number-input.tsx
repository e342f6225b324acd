import { useId } from 'preact/hooks';

interface NumberInputProps {
  readonly label: string;
  readonly value: number | null;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  readonly set: (value: number | null) => void;
}

/** A number that may be left empty. */
export function NumberInput({ label, value, least, most, step, set }: NumberInputProps) {
  const id = useId();
  return (
    <div class="works-number">
      <label for={id}>{label}</label>
      <input
        id={id}
        class="entry"
        type="number"
        inputMode="decimal"
        min={least}
        max={most}
        step={step}
        value={value ?? ''}
        onChange={({ currentTarget: { value: typed } }) => {
          const number = Number(typed);
          set(typed === '' || !Number.isFinite(number) ? null : Math.min(most, Math.max(least, number)));
        }}
      />
    </div>
  );
}
