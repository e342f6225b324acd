/**
 * What a file's value says, as text: an object or a list as its JSON, since it may have a `toString` of its own.
 * @param value as it came out of `JSON.parse` or a table.
 */
export function textOf(value: unknown): string {
  return typeof value === 'object' && value !== null ? (JSON.stringify(value) ?? '') : String(value);
}
