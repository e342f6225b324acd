/** JSON as it is printed: two spaces, a line feed at the end. */
export const json = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;
