import { type Band, tensOf } from '@rootreach/core';
import { bandStroke, ink } from '../draw/ink.js';
import { fittingMark, strokes } from '../draw/lot-lines.js';
import { lotPicture } from '../draw/lot-picture.js';
import { tenMarks } from '../draw/ten-marks.js';
import { el, type Markup, text } from '../markup/markup.js';
import { marksSaid, oddsSaid, pipesSaid, rangeSaid } from '../say/odds-said.js';
import type { Words } from '../words/words.js';
import type { OwnerInput } from './owner-input.js';

const knownTrouble = ({ segment }: OwnerInput) => (segment.known?.seen === 'clear' ? null : segment.known);

/** What is the matter, in one sentence. */
export function headline(input: OwnerInput, words: Words): Markup {
  const { headlines, seenHeadlines } = words.owner;
  const known = knownTrouble(input);
  const said =
    known === null ? headlines[input.segment.band] : seenHeadlines[known.seen as keyof typeof seenHeadlines];
  return el('h1', {}, text(said));
}

/** The odds as ten pipes, in words, and what they mean; none where too little is known. */
export function oddsPart(input: OwnerInput, words: Words): Markup {
  const { segment, result } = input;
  const { odds, saw } = words.owner;
  if (segment.band === 'cannot-say') return el('p', {}, text(odds.sayNot));
  const known = knownTrouble(input);
  const year = String(Math.floor(Number(result.asOf.slice(0, 4))) + Math.round(result.horizonYears));
  const pipes = pipesSaid(segment.chance, words);
  const seen =
    known === null
      ? ''
      : `${saw(words.seen[known.seen], known.year === null ? '' : String(Math.floor(known.year)))} `;
  return el(
    'div',
    { class: 'odds' },
    tenMarks(tensOf(segment.chance), marksSaid(segment.chance, words)),
    el(
      'div',
      {},
      el('p', { class: 'big' }, text(oddsSaid(segment.chance, words))),
      el(
        'p',
        { class: 'under' },
        text(`${odds.within(result.horizonYears)}. ${rangeSaid(segment.chance, words)}`),
      ),
    ),
    el(
      'p',
      { class: 'think' },
      text(`${seen}${known === null ? odds.think(pipes, year) : odds.thinkAgain(pipes, year)}`),
    ),
  );
}

const swatch = (inside: readonly Markup[]): Markup =>
  el('svg', { viewBox: '0 0 28 14', 'aria-hidden': 'true' }, inside);

/** What the marks of the plan mean: only those that stand in it. */
function keyOf({ site, result }: OwnerInput, words: Words): Markup {
  const entry = (mark: readonly Markup[], said: string): Markup => el('li', {}, swatch(mark), text(said));
  const bands = (['act', 'inspect', 'watch', 'leave', 'cannot-say'] as const)
    .filter((band: Band) => result.segments.some((segment) => segment.band === band))
    .map((band) => entry(strokes('M4 7H24', bandStroke[band]), words.bands[band]));
  const { key } = words.picture;
  const wash = el('circle', { cx: 14, cy: 7, r: 7, fill: ink.root, 'fill-opacity': 0.35 });
  const canopy = el('circle', { cx: 14, cy: 7, r: 6, fill: 'none', stroke: ink.tree, 'stroke-width': 1.2 });
  const guard = el('circle', {
    cx: 14,
    cy: 7,
    r: 6,
    fill: 'none',
    stroke: ink.tree,
    'stroke-width': 1,
    'stroke-dasharray': '1 2.4',
    'stroke-linecap': 'round',
  });
  const utility = el('path', {
    d: 'M1 7H27',
    stroke: ink.utility,
    'stroke-width': 1.4,
    'stroke-dasharray': '7 3 1.5 3 1.5 3',
  });
  const trees =
    result.trees.length === 0
      ? []
      : [entry([wash], key.wash), entry([canopy], key.canopy), entry([guard], key.protection)];
  const ways = (['basin', 'cleanout', 'downspout', 'outlet'] as const)
    .filter((type) => site.fittings.some((fitting) => fitting.type === type))
    .map((type) => entry([fittingMark(type, 14, 7)], words.fittings[type]));
  const utilities = site.obstacles.some(({ type }) => type === 'utility')
    ? [entry([utility], words.ground.utility)]
    : [];
  return el('ul', { class: 'key', 'aria-label': key.title }, bands, trees, ways, utilities);
}

/** The plan with its key. */
export const planPart = (input: OwnerInput, words: Words): Markup =>
  el('div', { class: 'plan' }, lotPicture({ ...input, words }), keyOf(input, words));
