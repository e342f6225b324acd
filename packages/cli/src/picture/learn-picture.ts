import type { Learning, Tried } from '../learning.js';
import { calibrationPlot, highestShare } from './calibration-plot.js';
import { ink } from './ink.js';
import { liftPlot } from './lift-plot.js';
import { element, inner, textAt } from './svg.js';

const WIDTH = 1080;
const HEIGHT = 620;
const TYPE = "ui-sans-serif, 'Segoe UI', 'Helvetica Neue', Arial, sans-serif";

function titleOf({ sites, model }: Learning): string {
  const invented = sites.every((site) => site.invented) ? ' (invented example)' : '';
  return `What the camera findings of ${sites.length} sites are worth${invented} - model ${model.data.fingerprint}`;
}

/** The back-test as one picture: how soon roots would have been found, and whether the odds were borne out. */
export function learnPicture(learning: Learning, { learned, assumed }: Tried): string {
  const title = titleOf(learning);
  const mostY = highestShare([...learned.calibration, ...assumed.calibration]);
  const small = { left: 690, width: 350, height: 150, mostY };
  const inside = [
    element('title', {}, [inner(title)]),
    element('rect', { width: WIDTH, height: HEIGHT, fill: ink.paper }),
    textAt(28, 40, title, { 'font-size': 20, 'font-weight': 600, fill: ink.text }),
    textAt(28, 62, 'Each site judged by what the others taught. Screening estimates, not a survey.', {
      fill: ink.faint,
    }),
    liftPlot(learned, { left: 76, top: 140, width: 376, height: 380 }),
    calibrationPlot(
      'Were the odds borne out? As learned',
      'bar: had roots; stroke: what was said',
      learned.calibration,
      {
        ...small,
        top: 140,
      },
    ),
    calibrationPlot('As assumed before', 'ten lots of stretches, least likely first', assumed.calibration, {
      ...small,
      top: 400,
    }),
  ];
  const svg = element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${WIDTH} ${HEIGHT}`,
      width: WIDTH,
      height: HEIGHT,
      role: 'img',
      'font-family': TYPE,
      'font-size': 14,
      style: 'font-variant-numeric: tabular-nums',
    },
    inside,
  );
  return `<?xml version="1.0" encoding="UTF-8"?>\n${svg}\n`;
}
