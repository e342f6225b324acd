/** Words that stand for nothing known. */
const WORDS = new Set([
  '',
  'none',
  'na',
  'n/a',
  'n.a.',
  'nan',
  'null',
  '-',
  '--',
  '?',
  '<null>',
  '#n/a',
  'nil',
]);

const LONGEST = Math.max(...[...WORDS].map(({ length }) => length));

/** Nothing, a space, or a word for nothing. */
export function isMissing(value: unknown): boolean {
  if (value === null || value === undefined) return true;
  if (typeof value === 'number') return !Number.isFinite(value);
  if (typeof value !== 'string') return false;
  const text = value.trim();
  return text.length <= LONGEST && WORDS.has(text.toLowerCase());
}

/** A size that cannot be: 0, -1, -9999 stand for "not measured" in inventories. */
export const isNoSize = (value: number): boolean => !(value > 0);
