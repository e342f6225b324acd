import { type Unit, unitNamed } from '../values/units.js';

/** A column's name as plain words, with the unit that stands in it. */
export interface Header {
  readonly column: string;
  /** `tree dbh`. */
  readonly words: string;
  readonly unit: Unit | null;
}

/** `DBH (cm)`, `tree_dbh`, `TrunkDiam_in`, `Stammumfang [cm]`: lower case, no accents, unit apart. */
export function headerOf(column: string): Header {
  const words = column
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll('ß', 'ss')
    .replace(/[^a-z0-9"]+/g, ' ')
    .trim()
    .split(' ');
  const last = words.at(-1) ?? '';
  // a lone "in" or "m" at the end is a unit only after another word
  const unit = words.length > 1 ? unitNamed(last) : null;
  return { column, words: (unit === null ? words : words.slice(0, -1)).join(' '), unit };
}

const squashed = (words: string): string => words.replaceAll(' ', '');

/** Whether a column is called so; databases run words together (`INSTALLDATE`). */
export const isCalled = (words: string, name: string): boolean =>
  words === name || (words !== '' && squashed(words) === squashed(name));
