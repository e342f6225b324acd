import { escapeText } from './escape.js';

declare const made: unique symbol;

/** Text that was made by the functions of this file and of no other: safe to stand in a page. */
export type Markup = string & { readonly [made]: true };

type Attributes = Readonly<Record<string, string | number | undefined>>;

/** HTML elements without an end tag. */
const VOID = new Set(['br', 'img', 'meta']);
/** SVG shapes, closed in themselves. */
const SHAPES = new Set(['path', 'circle', 'rect', 'line', 'ellipse', 'stop', 'use']);

/** A hundredth of a pixel is finer than any screen or printer. */
const written = (value: string | number): string =>
  typeof value === 'number' ? String(Math.round(value * 100) / 100) : escapeText(value);

const attributesOf = (attributes: Attributes): string =>
  Object.entries(attributes)
    .map(([name, value]) => (value === undefined ? '' : ` ${name}="${written(value)}"`))
    .join('');

/** A text of any origin, as content. */
export const text = (content: string): Markup => escapeText(content) as Markup;

/** Pieces one after the other. */
export const join = (...pieces: readonly (Markup | readonly Markup[])[]): Markup =>
  pieces.flat().join('') as Markup;

/** An element. Names of elements and attributes are written in the code, never taken from data. */
export function el(
  name: string,
  attributes: Attributes = {},
  ...children: readonly (Markup | readonly Markup[])[]
): Markup {
  const open = `<${name}${attributesOf(attributes)}`;
  if (VOID.has(name)) return `${open}>` as Markup;
  if (SHAPES.has(name)) return `${open}/>` as Markup;
  return `${open}>${join(...children)}</${name}>` as Markup;
}

/** A style sheet of our own, which stands in the code. */
export const styleSheet = (css: string): Markup => `<style>${css}</style>` as Markup;

/** The first line of a page. */
export const DOCTYPE = '<!DOCTYPE html>\n';
