/** A text that can be copied into a shell as one word; plain ones stay as they are. */
export const shellWord = (text: string): string =>
  /^[\w/.:+-]+$/.test(text) ? text : `'${text.replaceAll("'", "'\\''")}'`;
