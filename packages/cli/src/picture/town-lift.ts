import type { TownLift } from '@rootreach/core';
import { type Frame, heading, levels, marks, xIn, yIn } from './frame.js';
import { ink } from './ink.js';
import { element, path, textAt } from './svg.js';

const FRAME: Frame = { left: 70, top: 70, width: 520, height: 320, mostX: 1, mostY: 1 };
const WIDTH = 640;
const HEIGHT = 470;

/** How much of a town's expected trouble its worst metres hold, as a picture. */
export function townLiftPicture({ metres, expected, halfShare }: TownLift, half: string): string {
  const curve = metres.map((m, i) => [xIn(FRAME, m), yIn(FRAME, expected[i] as number)] as const);
  const x = xIn(FRAME, halfShare);
  const y = yIn(FRAME, 0.5);
  const inside = [
    element('rect', { width: WIDTH, height: HEIGHT, fill: ink.paper }),
    heading(
      FRAME,
      'Where the trouble lies',
      'share of the expected entries, against share of all metres, worst first',
    ),
    ...levels(FRAME, 0.25),
    ...marks(FRAME, 0.25),
    path(
      [
        [xIn(FRAME, 0), yIn(FRAME, 0)],
        [xIn(FRAME, 1), yIn(FRAME, 1)],
      ],
      { stroke: ink.faint, 'stroke-width': 1, 'stroke-dasharray': '4 4' },
    ),
    path(
      [
        [x, yIn(FRAME, 0)],
        [x, y],
        [xIn(FRAME, 0), y],
      ],
      { stroke: ink.rust, 'stroke-width': 1.5, 'stroke-dasharray': '6 3' },
    ),
    path(curve, { stroke: ink.dark, 'stroke-width': 3, 'stroke-linejoin': 'round' }),
    textAt(x + 10, y + 22, half, { fill: ink.rust, 'font-weight': 600 }),
    textAt(FRAME.left - 48, HEIGHT - 22, 'Dashed grey: if every metre were alike.', { fill: ink.faint }),
  ];
  const svg = element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${WIDTH} ${HEIGHT}`,
      width: WIDTH,
      height: HEIGHT,
      role: 'img',
      'font-family': 'Seravek, Ubuntu, Calibri, "Open Sans", "Noto Sans", sans-serif',
      'font-size': 14,
    },
    inside,
  );
  return `<?xml version="1.0" encoding="UTF-8"?>\n${svg}\n`;
}
