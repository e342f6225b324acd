import type { LineResult, RankResult, SegmentResult, Units } from '@rootreach/core';
import { toFeet } from '@rootreach/core';
import { el, type Markup, text } from '../markup/markup.js';
import { small } from '../say/lengths.js';
import type { Words } from '../words/words.js';
import { bandStroke, ink } from './ink.js';
import { strokes } from './lot-lines.js';
import { WIDTH } from './view.js';

const HEIGHT = 190;
const LEFT = 14;
const GROUND = 66;
const DEEP = 128;

/** What the side view of a line is drawn from. */
export interface ProfilePictureInput {
  readonly result: RankResult;
  readonly line: LineResult;
  readonly segment?: SegmentResult;
  readonly units: Units;
  readonly words: Words;
  /** Name of a tree as it is to stand over the line. */
  readonly nameOf: (treeId: string) => string;
}

/** Steps of the scale along the bottom, in feet or metres. */
function stepFor(length: number): number {
  const steps = [5, 10, 20, 25, 50, 100, 200, 500];
  return steps.find((step) => length / step <= 8) ?? 1000;
}

/** A name at the edge of the drawing runs inward. */
const anchorAt = (x: number): string => (x < 70 ? 'start' : x > WIDTH - 70 ? 'end' : 'middle');

/** Trees no nearer to each other than their names are wide, the first of each group. */
function apart(trees: LineResult['trees'], lengthM: number): LineResult['trees'] {
  const kept: LineResult['trees'][number][] = [];
  for (const tree of [...trees].sort((a, b) => a.distanceM - b.distanceM)) {
    if (kept.every((other) => Math.abs(other.atM - tree.atM) > 0.2 * lengthM)) kept.push(tree);
  }
  return kept;
}

/**
 * A line from the side: ground on top, the pipe at its depth (drawn larger than it is), joints as ticks, stretches by
 * band, the one in question ringed, and the trees that stand nearest, at their stations.
 */
export function profilePicture({ result, line, segment, units, words, nameOf }: ProfilePictureInput): Markup {
  const wide = WIDTH - 2 * LEFT;
  const x = (stationM: number): number => LEFT + (wide * stationM) / line.lengthM;
  const { outletEndM, upperEndM } = line.depth;
  const deepest = Math.max(outletEndM, upperEndM, 0.3);
  const y = (stationM: number): number => {
    const depthM = outletEndM + ((upperEndM - outletEndM) * stationM) / line.lengthM;
    return GROUND + ((DEEP - GROUND) * depthM) / deepest;
  };
  const pieces = result.segments
    .filter(({ drainId }) => drainId === line.drainId)
    .flatMap(({ startM, endM, band }) =>
      strokes(`M${x(startM)} ${y(startM)}L${x(endM)} ${y(endM)}`, bandStroke[band]),
    );
  const ticks = line.joints.map(({ atM }) =>
    el('line', {
      x1: x(atM),
      x2: x(atM),
      y1: y(atM) - 6,
      y2: y(atM) + 6,
      stroke: ink.ink,
      'stroke-width': 0.9,
    }),
  );
  const trees = apart(line.trees, line.lengthM).map(({ id, atM }) =>
    el('g', {}, [
      el('line', {
        x1: x(atM),
        x2: x(atM),
        y1: GROUND,
        y2: GROUND - 22,
        stroke: ink.tree,
        'stroke-width': 3,
      }),
      el('circle', {
        cx: x(atM),
        cy: GROUND - 30,
        r: 11,
        fill: '#dfe7d8',
        stroke: ink.tree,
        'stroke-width': 1,
      }),
      el(
        'text',
        {
          x: x(atM),
          y: 16,
          'font-size': 11,
          'font-style': 'italic',
          'text-anchor': anchorAt(x(atM)),
          fill: ink.tree,
        },
        text(nameOf(id)),
      ),
    ]),
  );
  const length = units === 'us' ? toFeet(line.lengthM) : line.lengthM;
  const step = stepFor(length);
  const stations = Array.from({ length: Math.floor(length / step) + 1 }, (_, i) => i * step).map((station) =>
    el(
      'text',
      {
        x: LEFT + (wide * station) / length,
        y: HEIGHT - 22,
        'font-size': 11,
        'text-anchor': station === 0 ? 'start' : 'middle',
        fill: ink.soft,
      },
      text(String(station)),
    ),
  );
  const depths = [0, line.lengthM].map((stationM, end) =>
    el(
      'text',
      {
        x: x(stationM) + (end === 0 ? 4 : -4),
        y: y(stationM) + 20,
        'font-size': 11,
        'text-anchor': end === 0 ? 'start' : 'end',
        fill: ink.soft,
      },
      text(small(end === 0 ? outletEndM : upperEndM, units)),
    ),
  );
  const ringed =
    segment === undefined
      ? []
      : [
          el('rect', {
            x: x(segment.startM) - 5,
            y: Math.min(y(segment.startM), y(segment.endM)) - 13,
            width: x(segment.endM) - x(segment.startM) + 10,
            height: Math.abs(y(segment.endM) - y(segment.startM)) + 26,
            rx: 12,
            fill: 'none',
            stroke: ink.pen,
            'stroke-width': 1.8,
          }),
        ];
  return el(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${WIDTH} ${HEIGHT}`,
      role: 'img',
      'aria-label': words.picture.profile,
      class: 'profile',
      'font-family': 'inherit',
    },
    el('rect', { x: LEFT, y: GROUND, width: wide, height: HEIGHT - 38 - GROUND, fill: '#efe8d8' }),
    trees,
    el('line', { x1: LEFT, x2: LEFT + wide, y1: GROUND, y2: GROUND, stroke: ink.tree, 'stroke-width': 1.6 }),
    pieces,
    ticks,
    ringed,
    depths,
    stations,
    el(
      'text',
      { x: WIDTH / 2, y: HEIGHT - 6, 'font-size': 11, 'text-anchor': 'middle', fill: ink.soft },
      text(words.picture.station(units === 'us' ? 'ft' : 'm')),
    ),
  );
}
