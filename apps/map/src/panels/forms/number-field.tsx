import { parseNumber } from '../../enter/parse-number.js';
import { words } from '../../words/words.js';
import type { Target } from './target.js';
import { TypedField } from './typed-field.js';

interface NumberFieldProps {
  readonly target: Target;
  readonly label: string;
  readonly property: string;
  readonly hint?: string;
  readonly least: number;
  readonly most: number;
  readonly whole?: boolean;
  /** Sign after the number that may be typed too: `%`. */
  readonly sign?: string;
}

/** A bare number between two limits. */
export function NumberField(props: NumberFieldProps) {
  const { target, label, property, hint, least, most, whole = false, sign = '' } = props;
  const value = target.values[property];
  const read = (typed: string) => {
    const number = parseNumber(sign === '' ? typed : typed.replace(sign, ''));
    const fits = number !== null && number >= least && number <= most && (!whole || Number.isInteger(number));
    return fits ? { [property]: number } : null;
  };
  return (
    <TypedField
      target={target}
      label={label}
      {...(hint === undefined ? {} : { hint })}
      text={typeof value === 'number' ? `${value}${sign && ` ${sign}`}` : ''}
      read={read}
      empty={{ [property]: undefined }}
      wrong={words.value.forms.wrong.number(least, most)}
      keyboard={whole ? 'numeric' : 'decimal'}
    />
  );
}
