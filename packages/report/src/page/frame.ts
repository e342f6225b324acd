import type { RankResult } from '@rootreach/core';
import { DOCTYPE, el, join, type Markup, styleSheet, text } from '../markup/markup.js';
import { clipped } from '../say/clipped.js';
import type { Words } from '../words/words.js';
import { pageStyle } from './page-style.js';

/** Nothing from anywhere, no script, no form: only what the file holds. */
const POLICY =
  "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'";

/** Name of the site without the mark that it is invented, which is shown as a stamp. */
export const siteName = ({ name }: RankResult['site']): string => {
  const bare = (name ?? '').replace(/^invented:\s*/i, '');
  return clipped(bare.charAt(0).toUpperCase() + bare.slice(1));
};

/** Line over a sheet: what it is, of which place, and whether that place is invented. */
export function headLine(what: string, { site }: RankResult, date: string, words: Words): Markup {
  const place = [siteName(site), date].filter((part) => part !== '').join(', ');
  return el(
    'header',
    { class: 'top' },
    el('p', {}, el('span', { class: 'what' }, text(what)), text(` · ${place}`)),
    site.invented ? el('p', { class: 'stamp' }, text(words.invented)) : [],
  );
}

/** A whole page in one file. */
export function wholePage(title: string, language: string, body: readonly Markup[]): string {
  const head = el(
    'head',
    {},
    el('meta', { charset: 'utf-8' }),
    el('meta', { 'http-equiv': 'Content-Security-Policy', content: POLICY }),
    el('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
    el('title', {}, text(title)),
    styleSheet(pageStyle),
  );
  return `${DOCTYPE}${el('html', { lang: language }, head, el('body', {}, el('main', {}, join(body))))}\n`;
}

/** A part with its heading. */
export const part = (
  title: string,
  kind: string,
  ...children: readonly (Markup | readonly Markup[])[]
): Markup => el('section', kind === '' ? {} : { class: kind }, el('h2', {}, text(title)), ...children);

/** Sentences as a list. */
export const sentences = (said: readonly string[]): Markup =>
  el(
    'ul',
    { class: 'said' },
    said.map((line) => el('li', {}, text(line))),
  );
