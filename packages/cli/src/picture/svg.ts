const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&apos;',
};
// what XML 1.0 does not allow at all
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
const FORBIDDEN = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g;

const escaped = (text: string): string =>
  text.replace(FORBIDDEN, ' ').replace(/[&<>"']/g, (sign) => ENTITIES[sign] as string);

type Attributes = Readonly<Record<string, string | number>>;

/** A tenth of a pixel is finer than any screen. */
const written = (value: string | number): string =>
  typeof value === 'number' ? String(Math.round(value * 10) / 10) : escaped(value);

const attributesOf = (attributes: Attributes): string =>
  Object.entries(attributes)
    .map(([name, value]) => ` ${name}="${written(value)}"`)
    .join('');

/** An element around others. */
export const element = (name: string, attributes: Attributes, inside: readonly string[] = []): string =>
  inside.length === 0
    ? `<${name}${attributesOf(attributes)}/>`
    : `<${name}${attributesOf(attributes)}>${inside.join('')}</${name}>`;

/** A text at a place. */
export const textAt = (x: number, y: number, text: string, attributes: Attributes = {}): string =>
  element('text', { x, y, ...attributes }, [escaped(text)]);

/** Text as the inside of an element. */
export const inner = (text: string): string => escaped(text);

/** A line through points. */
export const path = (points: readonly (readonly [number, number])[], attributes: Attributes): string =>
  element('path', {
    d: points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${written(x)} ${written(y)}`).join(''),
    fill: 'none',
    ...attributes,
  });
