import type { OddsPoint } from '@rootreach/core';
import { el, type Markup, text } from '../markup/markup.js';
import type { Words } from '../words/words.js';
import { ink } from './ink.js';
import { WIDTH } from './view.js';

const HEIGHT = 176;
const LEFT = 66;
const RIGHT = 132;
const TOP = 14;
const BOTTOM = 40;

/** What the curve of odds is drawn from. */
export interface OddsCurveInput {
  /** From today on, in order. */
  readonly odds: readonly OddsPoint[];
  /** Years at which the headline stands; marked. */
  readonly horizonYears: number;
  readonly words: Words;
}

const near = (value: number): string => String(Math.round(value * 10) / 10);

/** Labels at the ends of the three lines, kept apart. */
function apart(ys: readonly number[], gap: number): number[] {
  const placed = [...ys];
  for (let i = 1; i < placed.length; i++) {
    placed[i] = Math.max(placed[i] as number, (placed[i - 1] as number) + gap);
  }
  const over = Math.max(0, (placed.at(-1) as number) - (HEIGHT - BOTTOM + 4));
  return placed.map((y) => y - over);
}

/** The odds over the years in counts of ten: a band from low to high, hatched, and the likely line. */
export function oddsCurve({ odds, horizonYears, words }: OddsCurveInput): Markup {
  const last = odds.at(-1);
  const years = last?.yearsAhead ?? 0;
  const [wide, high] = [WIDTH - LEFT - RIGHT, HEIGHT - TOP - BOTTOM];
  const x = (ahead: number): number => LEFT + (wide * ahead) / Math.max(1, years);
  const y = (share: number): number => TOP + high * (1 - share);
  const line = (part: 'low' | 'likely' | 'high'): string[] =>
    odds.map(({ yearsAhead, chance }) => `${near(x(yearsAhead))} ${near(y(chance[part]))}`);
  const label = (at: { x: number; y: number }, said: string, more: Record<string, string | number> = {}) =>
    el('text', { ...at, 'font-size': 13, fill: ink.soft, ...more }, text(said));
  const levels = [0, 2, 4, 6, 8, 10].flatMap((tens) => [
    el('line', {
      x1: LEFT,
      x2: LEFT + wide,
      y1: y(tens / 10),
      y2: y(tens / 10),
      stroke: tens === 0 ? ink.ink : ink.rule,
      'stroke-width': tens === 0 ? 1.2 : 0.7,
    }),
    label({ x: LEFT - 8, y: y(tens / 10) + 4 }, tens === 10 ? words.owner.wait.inTen('10') : String(tens), {
      'text-anchor': 'end',
    }),
  ]);
  const ticks = Array.from({ length: Math.floor(years / 5) + 1 }, (_, i) => 5 * i).map((ahead) =>
    label({ x: x(ahead), y: TOP + high + 16 }, String(ahead), { 'text-anchor': 'middle' }),
  );
  const marked = odds.find(({ yearsAhead }) => yearsAhead === horizonYears);
  const ends = (['high', 'likely', 'low'] as const).map((part) => y(last?.chance[part] ?? 0));
  const endsAt = apart(ends, 15);
  const hasRange = odds.some(({ chance }) => chance.high > chance.low);
  const names = [words.picture.high, words.picture.likely, words.picture.low];
  return el(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${WIDTH} ${HEIGHT}`,
      role: 'img',
      'aria-label': words.picture.curve,
      class: 'curve',
      'font-family': 'inherit',
    },
    el('defs', {}, [
      el('pattern', { id: 'odds-hatch', width: 5, height: 5, patternUnits: 'userSpaceOnUse' }, [
        el('rect', { width: 5, height: 5, fill: '#efe6ec' }),
        el('path', {
          d: 'M-1 6L6 -1M-1 1L1 -1M4 6L6 4',
          stroke: '#b79aab',
          'stroke-width': 0.6,
          fill: 'none',
        }),
      ]),
    ]),
    hasRange
      ? el('path', {
          d: `M${[...line('high'), ...line('low').reverse()].join('L')}Z`,
          fill: 'url(#odds-hatch)',
        })
      : [],
    levels,
    el('path', {
      d: `M${line('likely').join('L')}`,
      fill: 'none',
      stroke: ink.pen,
      'stroke-width': 2.8,
      'stroke-linejoin': 'round',
    }),
    ticks,
    label({ x: LEFT + wide / 2, y: HEIGHT - 6 }, words.picture.years, { 'text-anchor': 'middle' }),
    names.flatMap((name, i) =>
      hasRange || i === 1
        ? [
            label({ x: LEFT + wide + 8, y: (endsAt[i] as number) + 4 }, name, {
              fill: i === 1 ? ink.pen : ink.soft,
              'font-weight': i === 1 ? 700 : 400,
            }),
          ]
        : [],
    ),
    marked === undefined
      ? []
      : [
          el('line', {
            x1: x(horizonYears),
            x2: x(horizonYears),
            y1: TOP + high,
            y2: y(marked.chance.likely),
            stroke: ink.pen,
            'stroke-width': 1,
            'stroke-dasharray': '3 3',
          }),
          el('circle', {
            cx: x(horizonYears),
            cy: y(marked.chance.likely),
            r: 4.5,
            fill: '#fffdf8',
            stroke: ink.pen,
            'stroke-width': 2.2,
          }),
        ],
  );
}
