import { parseLength } from '../../enter/parse-length.js';
import { aboutName, type QuantityKey, readLength, without, writeLength } from '../../enter/quantity.js';
import { bareUnit, type Measured, showLength } from '../../enter/show-length.js';
import { takeAbout } from '../../enter/take-about.js';
import * as state from '../../state.js';
import { words } from '../../words/words.js';
import type { Target } from './target.js';
import { TypedField } from './typed-field.js';

interface LengthFieldProps {
  readonly target: Target;
  readonly label: string;
  readonly quantity: QuantityKey;
  readonly measured: Measured;
  readonly hint?: string;
  /** Usual lengths to choose from, metres. */
  readonly usualM?: readonly number[];
  /** Least length that makes sense, metres; levels may be below zero. */
  readonly leastM?: number;
  /** Other properties that this one replaces. */
  readonly instead?: Readonly<Record<string, undefined>>;
}

/** A length in the units of the trade; the file keeps the unit it was typed in. */
export function LengthField(props: LengthFieldProps) {
  const { target, label, quantity, measured, hint, usualM, leastM = 0, instead = {} } = props;
  const units = state.units.value;
  const lengthM = readLength(target.values, quantity);
  const about = aboutName(quantity);
  const read = (typed: string) => {
    const said = takeAbout(typed);
    const length = parseLength(said.text, bareUnit(measured, units));
    if (length === null || length.lengthM < leastM) return null;
    return { ...instead, ...writeLength(quantity, length, said.about || target.values[about] === true) };
  };
  return (
    <TypedField
      target={target}
      label={label}
      {...(hint === undefined ? {} : { hint })}
      text={lengthM === null ? '' : showLength(lengthM, measured, units)}
      read={read}
      empty={without(quantity)}
      wrong={words.value.forms.wrong.length[measured][units]}
      keyboard={measured === 'depth' ? 'text' : 'decimal'}
      {...(usualM ? { choices: usualM.map((m) => showLength(m, measured, units)) } : {})}
      about={about}
    />
  );
}
