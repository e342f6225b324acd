import { tensOf } from '@rootreach/core';
import { oddsCurve } from '../draw/odds-curve.js';
import { el, type Markup, text } from '../markup/markup.js';
import { shareSaid } from '../say/odds-said.js';
import type { Words } from '../words/words.js';
import { part } from './frame.js';
import type { OwnerInput } from './owner-input.js';
import { isBlocked, ownerOdds } from './owner-odds.js';

/** What happens if nothing is done: the curve, and the same in a sentence or two. */
export function waitPart(input: OwnerInput, words: Words): Markup | null {
  const { wait, blocked } = words.owner;
  const { result, segment } = input;
  if (isBlocked(input)) return part(wait.title, '', el('p', {}, text(blocked.wait)));
  const { chance, points } = ownerOdds(input);
  const last = points.at(-1);
  if (last === undefined || segment.band === 'cannot-say') return null;
  const now = shareSaid(chance.likely, words);
  const then = shareSaid(last.chance.likely, words);
  const said =
    tensOf(chance).likely === tensOf(last.chance).likely
      ? wait.level(then, last.yearsAhead)
      : wait.rise(now, result.horizonYears, then, last.yearsAhead);
  return part(
    wait.title,
    '',
    el(
      'div',
      { class: 'wait' },
      oddsCurve({ odds: points, horizonYears: result.horizonYears, words }),
      el('p', {}, text(said)),
    ),
  );
}
