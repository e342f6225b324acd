import type { Backtest } from '@rootreach/core';
import { type Frame, heading, levels, xIn, yIn } from './frame.js';
import { ink } from './ink.js';
import { element, path, textAt } from './svg.js';

type Bin = Backtest['calibration'][number];

const STEP = 0.2;
const BAR_SHARE = 0.56;

/** Height that both plots share, so that they can be laid side by side. */
export function highestShare(bins: readonly Bin[]): number {
  const most = Math.max(STEP, ...bins.flatMap(({ meanChance, foundShare }) => [meanChance, foundShare]));
  return Math.ceil(most / STEP - 1e-9) * STEP;
}

function lot(frame: Frame, bin: Bin, i: number, of: number): string {
  const slot = frame.width / of;
  const middle = frame.left + slot * (i + 0.5);
  const half = (slot * BAR_SHARE) / 2;
  const [found, said] = [yIn(frame, bin.foundShare), yIn(frame, bin.meanChance)];
  const floor = yIn(frame, 0);
  return element('g', {}, [
    element('rect', {
      x: middle - half,
      y: found,
      width: 2 * half,
      height: Math.max(0, floor - found),
      fill: ink.stone,
      stroke: ink.text,
      'stroke-width': 1,
    }),
    path(
      [
        [middle - half - 4, said],
        [middle + half + 4, said],
      ],
      { stroke: ink.dark, 'stroke-width': 3 },
    ),
    textAt(middle, floor + 18, String(Math.round(bin.foundShare * bin.count)), {
      'text-anchor': 'middle',
      fill: ink.text,
    }),
    textAt(middle, floor + 34, String(bin.count), { 'text-anchor': 'middle', fill: ink.faint }),
  ]);
}

/** What was said against what was found, in ten lots of stretches from least to most likely. */
export function calibrationPlot(
  title: string,
  under: string,
  bins: readonly Bin[],
  place: Omit<Frame, 'mostX'>,
): string {
  const frame: Frame = { ...place, mostX: 1 };
  const floor = yIn(frame, 0);
  const edge = xIn(frame, 0) - 8;
  return element('g', {}, [
    heading(frame, title, under),
    ...levels(frame, STEP),
    ...bins.map((bin, i) => lot(frame, bin, i, bins.length)),
    textAt(edge, floor + 18, 'roots', { 'text-anchor': 'end', fill: ink.text, 'font-size': 12 }),
    textAt(edge, floor + 34, 'of', { 'text-anchor': 'end', fill: ink.faint, 'font-size': 12 }),
  ]);
}
