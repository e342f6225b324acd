import type { LineResult, Units } from '@rootreach/core';
import { inUnit, roundStep, unitM } from '../measure.js';

/** Heights of the drawing's parts, pixels from the top. */
export const rows = {
  labels: [14, 31] as const,
  crownTop: 40,
  ground: 96,
  pipeBottom: 158,
  oddsTop: 196,
  oddsBottom: 288,
  axis: 308,
  height: 334,
};

const LEFT = 30;
const RIGHT = 14;
const PIXELS_A_TICK = 64;
/** Room under the deepest point, so that pipe and depth can be read. */
const DEPTH_HEADROOM = 1.3;

export interface ProfileScale {
  readonly left: number;
  readonly right: number;
  readonly pixelsPerMetre: number;
  readonly x: (stationM: number) => number;
  readonly depthY: (depthM: number) => number;
  readonly scoreY: (score: number) => number;
  readonly depthAt: (stationM: number) => number;
  readonly ticks: readonly { readonly atM: number; readonly text: string }[];
}

/** Where things stand on a profile of the given width. */
export function profileScale(line: LineResult, width: number, units: Units): ProfileScale {
  const right = width - RIGHT;
  const pixelsPerMetre = (right - LEFT) / line.lengthM;
  const { outletEndM, upperEndM } = line.depth;
  const deepest = Math.max(outletEndM, upperEndM, 0.1) * DEPTH_HEADROOM;
  const step = roundStep(PIXELS_A_TICK / pixelsPerMetre / unitM(units));
  const count = Math.floor(inUnit(line.lengthM, units) / step);
  return {
    left: LEFT,
    right,
    pixelsPerMetre,
    x: (stationM) => LEFT + stationM * pixelsPerMetre,
    depthY: (depthM) => rows.ground + (depthM / deepest) * (rows.pipeBottom - rows.ground),
    scoreY: (score) => rows.oddsBottom - (score / 100) * (rows.oddsBottom - rows.oddsTop),
    depthAt: (stationM) => outletEndM + (upperEndM - outletEndM) * (stationM / line.lengthM),
    ticks: Array.from({ length: count + 1 }, (_, i) => ({
      atM: i * step * unitM(units),
      text: String(i * step),
    })),
  };
}

export interface PlacedLabel {
  readonly x: number;
  readonly row: number;
}

/** Puts labels into as few rows as there are, the first ones first; undefined where one finds no room. */
export function placeLabels(
  wanted: readonly { readonly x: number; readonly width: number }[],
  left: number,
  right: number,
  rowCount: number,
): (PlacedLabel | undefined)[] {
  const taken: (readonly [number, number])[][] = Array.from({ length: rowCount }, () => []);
  return wanted.map(({ x, width }) => {
    const middle = Math.min(Math.max(x, left + width / 2), right - width / 2);
    const from = middle - width / 2 - 4;
    const to = middle + width / 2 + 4;
    const row = taken.findIndex((spans) => spans.every(([a, b]) => to <= a || from >= b));
    if (row < 0) return undefined;
    taken[row]?.push([from, to]);
    return { x: middle, row };
  });
}
