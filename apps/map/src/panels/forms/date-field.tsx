import { textOf } from '@rootreach/core';
import { parseDate } from '../../enter/parse-date.js';
import { today } from '../../today.js';
import { words } from '../../words/words.js';
import type { Target } from './target.js';
import { TypedField } from './typed-field.js';

interface DateFieldProps {
  readonly target: Target;
  readonly label: string;
  /** `installed`; the mark of an estimate is `installed_about`. */
  readonly property: string;
  readonly hint?: string;
}

/** A date as a year, a day, or `about 20 years ago`. */
export function DateField({ target, label, property, hint }: DateFieldProps) {
  const value = target.values[property];
  const about = `${property}_about`;
  const read = (typed: string) => {
    const date = parseDate(typed, Number(today().slice(0, 4)));
    return (
      date && { [property]: date.value, [about]: date.about || target.values[about] === true || undefined }
    );
  };
  return (
    <TypedField
      target={target}
      label={label}
      {...(hint === undefined ? {} : { hint })}
      text={value === undefined ? '' : textOf(value)}
      read={read}
      empty={{ [property]: undefined, [about]: undefined }}
      wrong={words.value.forms.wrong.date}
      about={about}
    />
  );
}
