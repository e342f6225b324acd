import type { RankResult, Site } from '@rootreach/core';
import { bandStroke, ink } from '../draw/ink.js';
import { fittingMark, strokes } from '../draw/lot-lines.js';
import { el, type Markup, text } from '../markup/markup.js';
import type { Words } from '../words/words.js';

const swatch = (inside: readonly Markup[]): Markup =>
  el('svg', { viewBox: '0 0 28 14', 'aria-hidden': 'true' }, inside);

/** What the marks of the plan mean: only those that stand in it. */
export function keyOf(
  { site, result }: { readonly site: Site; readonly result: RankResult },
  words: Words,
): Markup {
  const entry = (mark: readonly Markup[], said: string): Markup => el('li', {}, swatch(mark), text(said));
  const bands = (['act', 'inspect', 'watch', 'leave', 'cannot-say'] as const)
    .filter((band) => result.segments.some((segment) => segment.band === band))
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
  const barrier = el('path', {
    d: 'M1 7H27',
    stroke: ink.tree,
    'stroke-width': 2.6,
    'stroke-dasharray': '2 2',
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
  const barriers = site.barriers.length > 0 ? [entry([barrier], key.barrier)] : [];
  return el('ul', { class: 'key' }, bands, trees, ways, utilities, barriers);
}
