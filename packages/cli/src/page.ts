import type { Site, Units } from '@rootreach/core';
import type { Io } from './io.js';
import type { Page } from './print/rank-table.js';
import { styleFor } from './print/style.js';

/** Width where there is no terminal to ask. */
const USUAL_WIDTH = 100;
const LEAST_WIDTH = 60;
/** Lines longer than this are hard to follow by eye. */
const MOST_WIDTH = 160;

/** Units asked for, else the site's own, else metric. */
export const unitsFor = (asked: Units | undefined, site: Site): Units => asked ?? site.units ?? 'metric';

/** Characters to a line: as the terminal is wide, within what can be read. */
export function lineWidth(onScreen: boolean, io: Io): number {
  const width = onScreen ? (io.columns ?? USUAL_WIDTH) : USUAL_WIDTH;
  return Math.min(MOST_WIDTH, Math.max(LEAST_WIDTH, width));
}

/** What a text is laid out for: the terminal, or a file or pipe. */
export function pageFor(units: Units, out: string | undefined, io: Io): Page {
  const onScreen = io.isTTY && out === undefined;
  return {
    units,
    width: lineWidth(onScreen, io),
    style: styleFor(onScreen && io.styled),
  };
}
