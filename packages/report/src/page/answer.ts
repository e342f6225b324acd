import { tensOf } from '@rootreach/core';
import { lotPicture } from '../draw/lot-picture.js';
import { tenMarks } from '../draw/ten-marks.js';
import { el, type Markup, text } from '../markup/markup.js';
import { marksSaid, oddsSaid, pipesSaid, rangeSaid } from '../say/odds-said.js';
import type { Words } from '../words/words.js';
import { keyOf } from './key.js';
import type { OwnerInput } from './owner-input.js';
import { isBlocked, knownTrouble, ownerOdds } from './owner-odds.js';

/** What is the matter, in one sentence. */
export function headline(input: OwnerInput, words: Words): Markup {
  const { headlines, seenHeadlines } = words.owner;
  const known = knownTrouble(input);
  const said =
    known === null ? headlines[input.segment.band] : seenHeadlines[known.seen as keyof typeof seenHeadlines];
  return el('h1', {}, text(said));
}

/** `The camera saw roots that fill the pipe in 2026.` */
function sawSaid(input: OwnerInput, words: Words): string {
  const known = knownTrouble(input);
  if (known === null) return '';
  return words.owner.saw(words.seen[known.seen], known.year === null ? '' : String(Math.floor(known.year)));
}

/** A pipe that lets no water through: what that means, without odds. */
const blockedPart = (input: OwnerInput, words: Words): Markup =>
  el(
    'div',
    {},
    el('p', { class: 'big' }, text(words.owner.blocked.short)),
    el('p', {}, text(`${sawSaid(input, words)} ${words.owner.blocked.means}`)),
  );

/** The odds as ten pipes, in words, and what they mean; none where too little is known. */
export function oddsPart(input: OwnerInput, words: Words): Markup {
  const { segment, result } = input;
  const { odds } = words.owner;
  if (segment.band === 'cannot-say') return el('p', {}, text(odds.sayNot));
  if (isBlocked(input)) return blockedPart(input, words);
  const { chance } = ownerOdds(input);
  const known = knownTrouble(input);
  const year = String(Math.floor(Number(result.asOf.slice(0, 4))) + Math.round(result.horizonYears));
  const pipes = pipesSaid(chance, words);
  const meant =
    known === null ? odds.think(pipes, year) : `${sawSaid(input, words)} ${odds.thinkAgain(pipes, year)}`;
  return el(
    'div',
    { class: 'odds' },
    tenMarks(tensOf(chance), marksSaid(chance, words)),
    el(
      'div',
      {},
      el('p', { class: 'big' }, text(oddsSaid(chance, words))),
      el('p', { class: 'under' }, text(`${odds.within(result.horizonYears)} ${rangeSaid(chance, words)}`)),
    ),
    el('p', { class: 'think' }, text(meant)),
  );
}

/** A plan lower than this has room beside it that tells nothing, in the drawing's pixels. */
const LEAST_PLAN = 290;

/** The plan with its key. */
export const planPart = (input: OwnerInput, most: number, words: Words): Markup =>
  el(
    'div',
    { class: 'plan' },
    lotPicture({ ...input, words, heights: { least: Math.min(LEAST_PLAN, most), most } }),
    keyOf(input, words),
  );
