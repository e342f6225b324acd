/**
 * What a file's value says, as text: an object or a list as its JSON, since it may have a `toString` of its own; a
 * number that a double cannot hold, or lists nested beyond reason, in words.
 * @param value as it came out of `JSON.parse` or a table.
 */
export function textOf(value: unknown): string {
  if (typeof value === 'number' && !Number.isFinite(value)) return 'a number too large';
  if (typeof value !== 'object' || value === null) return String(value);
  try {
    return JSON.stringify(value) ?? '';
  } catch {
    return 'lists nested too deeply';
  }
}
