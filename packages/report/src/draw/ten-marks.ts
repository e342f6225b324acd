import type { Chance } from '@rootreach/core';
import { el, type Markup } from '../markup/markup.js';
import { ink } from './ink.js';

const STEP = 34;
const RADIUS = 12.5;
const TOP = 17;

/** A pipe seen from its end: full of roots, perhaps, or clear. Each reads without its colour. */
function pipeEnd(x: number, state: 'roots' | 'perhaps' | 'clear'): Markup {
  const ring = el('circle', {
    cx: x,
    cy: TOP,
    r: RADIUS,
    fill: state === 'roots' ? ink.pen : '#fffdf8',
    stroke: ink.ink,
    'stroke-width': state === 'clear' ? 1.3 : 2,
    'stroke-dasharray': state === 'perhaps' ? '3.2 2.4' : undefined,
  });
  if (state === 'clear') return ring;
  // three roots that branch, from the joint at the top
  const roots = `M${x} ${TOP - RADIUS}v9M${x} ${TOP - 6}q-5 2 -6 9M${x} ${TOP - 5}q5 3 5 10M${x} ${TOP - 3}q-1 4 -2 9`;
  return el('g', {}, [
    ring,
    el('path', {
      d: roots,
      fill: 'none',
      stroke: state === 'roots' ? '#fffdf8' : ink.pen,
      'stroke-width': state === 'roots' ? 1.7 : 1.1,
      'stroke-linecap': 'round',
    }),
  ]);
}

/**
 * Ten pipes: so many with roots, so many more that could be, the rest clear; under them a bracket from low to high.
 * @param tens counts of ten, as `tensOf` gives them.
 * @param label the same in words, for readers that do not see the picture.
 */
export function tenMarks(tens: Chance, label: string): Markup {
  const stateOf = (i: number) => (i < tens.likely ? 'roots' : i < tens.high ? 'perhaps' : 'clear');
  const middle = (i: number): number => 17 + i * STEP;
  const marks = Array.from({ length: 10 }, (_, i) => pipeEnd(middle(i), stateOf(i)));
  const from = middle(0) - STEP / 2 + tens.low * STEP;
  const to = middle(0) - STEP / 2 + tens.high * STEP;
  const bracket =
    to > from
      ? [
          el('path', {
            d: `M${from + 2} 34v6H${to - 2}v-6`,
            fill: 'none',
            stroke: ink.soft,
            'stroke-width': 1.4,
          }),
        ]
      : [];
  const attributes = {
    xmlns: 'http://www.w3.org/2000/svg',
    viewBox: `0 0 ${10 * STEP} 43`,
    role: 'img',
    'aria-label': label,
    class: 'tens',
  };
  return el('svg', attributes, marks, bracket);
}
