import type { Backtest } from '@rootreach/core';
import { rankingNames } from '../print/backtest-table.js';
import { type Frame, heading, levels, marks, xIn, yIn } from './frame.js';
import { ink } from './ink.js';
import { element, path, textAt } from './svg.js';

type Curve = Backtest['curve'];

interface Drawn {
  readonly name: string;
  readonly area: number;
  readonly curve: Curve;
  readonly stroke: string;
  readonly width: number;
  readonly dash: string;
}

/** Each way of ranking has a pattern of its own, so that grey paper shows it as well. */
function curvesOf({ curve, auc, baselines }: Backtest): Drawn[] {
  const { unlearned, nearestTree, age } = baselines;
  return [
    { name: rankingNames.learned, area: auc, curve, stroke: ink.dark, width: 3, dash: 'none' },
    {
      name: rankingNames.assumed,
      area: unlearned.auc,
      curve: unlearned.curve,
      stroke: ink.rust,
      width: 2,
      dash: '9 4',
    },
    {
      name: rankingNames.nearestTree,
      area: nearestTree.auc,
      curve: nearestTree.curve,
      stroke: ink.ochre,
      width: 2,
      dash: '2 4',
    },
    {
      name: rankingNames.age,
      area: age.auc,
      curve: age.curve,
      stroke: ink.text,
      width: 1.5,
      dash: '10 4 2 4',
    },
    {
      name: 'by luck',
      area: 0.5,
      curve: { metres: [0, 1], found: [0, 1], area: 0.5 },
      stroke: ink.faint,
      width: 1,
      dash: 'none',
    },
  ];
}

/** Nobody looks at more than the worse half first, and there the curves lie apart. */
const MOST_METRES = 0.5;

/** Points of a curve up to the edge of the plot, the last one on it. */
function pointsUpTo({ metres, found }: Curve, most: number): [number, number][] {
  const points: [number, number][] = [];
  for (let i = 0; i < metres.length; i++) {
    const [x, y] = [metres[i] as number, found[i] as number];
    if (x <= most) {
      points.push([x, y]);
      continue;
    }
    const [x0, y0] = points[points.length - 1] as [number, number];
    points.push([most, y0 + ((y - y0) * (most - x0)) / (x - x0)]);
    break;
  }
  return points;
}

const LABEL_APART = 34;

/** Heights of labels beside ends of lines, in the order given, pushed apart where they would cover each other. */
function spreadOut(wanted: readonly number[], top: number, bottom: number): number[] {
  const order = wanted
    .map((_, i) => i)
    .sort((a, b) => (wanted[a] as number) - (wanted[b] as number) || a - b);
  const placed = [...wanted];
  let above = top - LABEL_APART;
  for (const i of order) {
    placed[i] = Math.max(wanted[i] as number, above + LABEL_APART);
    above = placed[i] as number;
  }
  let below = bottom + LABEL_APART;
  for (const i of [...order].reverse()) {
    placed[i] = Math.min(placed[i] as number, below - LABEL_APART);
    below = placed[i] as number;
  }
  return placed;
}

/** Share of the roots found against share of the metres looked at, each line named where it ends. */
export function liftPlot(backtest: Backtest, place: Omit<Frame, 'mostX' | 'mostY'>): string {
  const frame: Frame = { ...place, mostX: MOST_METRES, mostY: 1 };
  const { left, top, width, height } = frame;
  const drawn = curvesOf(backtest).map((one) => ({ ...one, points: pointsUpTo(one.curve, MOST_METRES) }));
  const ends = drawn.map(({ points }) => yIn(frame, (points[points.length - 1] as [number, number])[1]));
  const labels = spreadOut(ends, top, top + height - 12);
  const right = left + width;
  const curves = [...drawn].reverse().map(({ points, stroke, width: thick, dash }) =>
    path(
      points.map(([x, y]) => [xIn(frame, x), yIn(frame, y)] as const),
      { stroke, 'stroke-width': thick, 'stroke-dasharray': dash, 'stroke-linejoin': 'round' },
    ),
  );
  const names = drawn.map(({ name, area, stroke }, i) => {
    const [from, to] = [ends[i] as number, labels[i] as number];
    const lead = path(
      [
        [right + 2, from],
        [right + 14, to],
        [right + 20, to],
      ],
      { stroke: ink.faint, 'stroke-width': 1 },
    );
    const text = textAt(right + 25, to + 2, name, { fill: stroke, 'font-weight': i === 0 ? 600 : 400 });
    const under = textAt(right + 25, to + 16, `area ${area.toFixed(2)}`, {
      fill: ink.faint,
      'font-size': 12,
    });
    return lead + text + under;
  });
  const { low, high } = backtest.aucInterval;
  return element('g', {}, [
    heading(
      frame,
      'How soon would the roots have been found?',
      `share of ${backtest.found} stretches with roots, against share of all ${Math.round(backtest.metres).toLocaleString('en')} m, worst first`,
    ),
    ...levels(frame, 0.2),
    ...marks(frame, 0.1),
    ...curves,
    ...names,
    textAt(
      left - 48,
      top + height + 44,
      'of all metres looked at, worst first. Area: under the whole curve, 1 at best;',
      {
        fill: ink.faint,
      },
    ),
    textAt(
      left - 48,
      top + height + 62,
      `as learned it lies between ${low.toFixed(2)} and ${high.toFixed(2)} in 8 of 10 such histories.`,
      { fill: ink.faint },
    ),
  ]);
}
