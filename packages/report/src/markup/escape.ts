const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

// controls that neither HTML nor XML allows, halves of a pair, and marks that turn the reading direction
const FORBIDDEN =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069\ufdd0-\ufdef\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** The one way by which a text becomes part of a page or picture, as content or as an attribute's value. */
export const escapeText = (text: string): string =>
  text.replace(FORBIDDEN, ' ').replace(/[&<>"']/g, (sign) => ENTITIES[sign] as string);
