// control characters, line and paragraph separators, and marks that turn the direction of writing
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
const UNPRINTABLE = /[\u0000-\u001f\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069]/g;

/**
 * The same value with nothing in its texts that a terminal would obey: a name in a file must not move the
 * cursor, set a colour or start a line.
 */
export function printable<T>(value: T): T {
  if (typeof value === 'string') return value.replace(UNPRINTABLE, ' ') as T;
  if (Array.isArray(value)) return value.map(printable) as T;
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([key, inside]) => [key, printable(inside)])) as T;
}
