import { type CautionConditions, cautionsFor, wordCaution } from '@rootreach/core';
import { el, type Markup, text } from '../markup/markup.js';
import { assumedSaid } from '../say/assumed-said.js';
import { clipped } from '../say/clipped.js';
import { dateSaid } from '../say/dates.js';
import type { Words } from '../words/words.js';
import { part, sentences } from './frame.js';
import type { OwnerInput } from './owner-input.js';
import { trenchConditions } from './trench-conditions.js';

/** Guesses that are told one by one (judgement). */
const MOST_GUESSES = 4;

/** What was guessed, and that the answer is a sum and not a look. */
export function unknownsSaid({ segment, site, units }: OwnerInput, words: Words): string[] {
  const { unknowns } = words.owner;
  const guesses = assumedSaid(segment, site, units, words);
  const rest = guesses.length - MOST_GUESSES;
  return [
    unknowns.model,
    ...guesses.slice(0, MOST_GUESSES),
    ...(guesses.length > 0 ? [[...(rest > 0 ? [unknowns.more(rest)] : []), unknowns.unsure].join(' ')] : []),
  ];
}

export const unknownsPart = (said: readonly string[], words: Words): Markup =>
  part(words.owner.unknowns.title, 'small', sentences(said));

/** Cautions in the reader's language, and apart from them, once, who decides. */
export function cautionsPart(title: string, conditions: CautionConditions, words: Words): Markup {
  const language = words.language === 'es' ? 'es' : 'en';
  const codes = cautionsFor(conditions).map(({ code }) => code);
  return part(
    title,
    'small',
    sentences(codes.filter((code) => code !== 'local-code').map((code) => wordCaution(code, language))),
    el('p', { class: 'rule' }, text(wordCaution('local-code', language))),
  );
}

/** Cautions for an owner: somebody may dig, or pour something in. */
export const ownerCautions = (input: OwnerInput, words: Words): Markup =>
  cautionsPart(words.owner.cautions.title, { ...trenchConditions(input), chemicals: true }, words);

/** When, by whom, with what; a line to write on where nobody is named. */
export function signPart(by: string | undefined, asOf: string, version: string, words: Words): Markup {
  const { sign } = words.owner;
  const who =
    by === undefined
      ? [text(`${sign.blank} `), el('span', { class: 'blank' }, text('\u00a0'))]
      : [text(`${sign.by(clipped(by, 120))}.`)];
  return el(
    'footer',
    { class: 'sign' },
    el('p', { class: 'who' }, text(`${sign.on(dateSaid(asOf, words))}${by === undefined ? '. ' : ' '}`), who),
    el('p', { class: 'fine' }, text(sign.model(version))),
  );
}
