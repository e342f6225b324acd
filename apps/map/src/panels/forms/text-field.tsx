import { textOf } from '@rootreach/core';
import type { Target } from './target.js';
import { TypedField } from './typed-field.js';

interface TextFieldProps {
  readonly target: Target;
  readonly label: string;
  readonly property: string;
  readonly hint?: string;
  readonly long?: boolean;
}

/** Free text, kept as typed. */
export function TextField({ target, label, property, hint, long = false }: TextFieldProps) {
  const value = target.values[property];
  return (
    <TypedField
      target={target}
      label={label}
      {...(hint === undefined ? {} : { hint })}
      text={value === undefined || value === null ? '' : textOf(value)}
      read={(typed) => ({ [property]: typed })}
      empty={{ [property]: undefined }}
      wrong=""
      long={long}
    />
  );
}
