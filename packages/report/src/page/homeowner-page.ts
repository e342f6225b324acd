import { el, type Markup } from '../markup/markup.js';
import { dateSaid } from '../say/dates.js';
import { wordsFor } from '../words/words.js';
import { headline, oddsPart, planPart } from './answer.js';
import { choicesPart } from './choices.js';
import { ownerCautions, signPart, unknownsPart, unknownsSaid } from './closing.js';
import { headLine, wholePage } from './frame.js';
import type { OwnerInput } from './owner-input.js';
import { isBlocked } from './owner-odds.js';
import { photosPart } from './photos.js';
import { helpPart, nextPart, wherePart, whyPart, whySaid } from './reasons.js';
import { waitPart } from './wait.js';

const there = (parts: readonly (Markup | null)[]): Markup[] =>
  parts.filter((one): one is Markup => one !== null);

/**
 * What is left for the plan on the first sheet of Letter, in the drawing's pixels, beside so many sentences: measured on
 * prints in a wide face, in which two lines of text take 32 of them and a row of small print 26.
 */
function planHeight(input: OwnerInput, reasons: number, doubts: number): number {
  const odds = input.segment.band === 'cannot-say' || isBlocked(input) ? 0 : 40;
  const left = 396 - odds - 32 * (reasons - 3) - 26 * (Math.ceil(doubts / 2) - 2);
  return Math.max(220, Math.min(400, left));
}

/**
 * The page for the owner of the lot: one HTML file that needs no network and no script, and prints on two sheets of
 * Letter or A4. All texts of the input are escaped; a photo is shown only where it is the data of an image.
 */
export function homeownerPage(input: OwnerInput): string {
  const words = wordsFor(input.language);
  const { result, decided } = input;
  const date = dateSaid(result.asOf, words);
  const why = whySaid(input, words);
  const unknowns = unknownsSaid(input, words);
  const first = el(
    'div',
    { class: 'leaf' },
    headLine(words.owner.title, result, date, words),
    headline(input, words),
    oddsPart(input, words),
    planPart(input, planHeight(input, why.length, unknowns.length), words),
    el(
      'div',
      { class: 'two' },
      el('div', { class: 'stack' }, wherePart(input, words), nextPart(input, words)),
      whyPart(why, words),
    ),
    unknownsPart(unknowns, words),
  );
  const help = decided === undefined ? helpPart(input, words) : null;
  const second = el(
    'div',
    { class: 'leaf' },
    there([
      waitPart(input, words),
      decided === undefined ? null : choicesPart(decided, words),
      photosPart(input, words),
      help,
      ownerCautions(input, words),
      signPart(input.by, result.asOf, result.model.version, words),
    ]),
  );
  return wholePage(words.owner.title, words.language, [first, second]);
}
