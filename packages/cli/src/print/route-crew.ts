import type { ProtectionSheet, RouteAlternative, SharedRoute, Site } from '@rootreach/core';
import { length, pipeSize } from './lengths.js';
import { printable } from './printable.js';
import { protectionSheetText } from './protection-sheet.js';
import type { Page } from './rank-table.js';
import { siteTitle } from './site-title.js';
import { wrap } from './wrap.js';

/** What a crew digs: the way chosen, and when it was planned. */
export interface CrewSheet {
  readonly asOf: string;
  readonly sizeM: number;
  readonly route: RouteAlternative;
  readonly sheet: ProtectionSheet;
}

/** The tree protection sheet of one way, with what it is for above it. */
export function crewText(given: CrewSheet, site: Site, { units, width, style }: Page): string {
  const { asOf, sizeM, route, sheet } = printable(given);
  const { name, invented } = site;
  const title = siteTitle(printable({ name, invented }));
  const way = `Way ${route.id} (${route.name}): ${length(route.lengthM, units)} of ${pipeSize(sizeM, units)} pipe; stations are measured from its upper end.`;
  const lines = [
    style.strong(wrap(`${title}: trees along the new line, as of ${asOf}`, width)),
    wrap(way, width),
    '',
    protectionSheetText(sheet, units, style, width),
  ];
  return `${lines.join('\n')}\n`;
}

/** The same for a script. */
export const crewPlain = ({ asOf, route, sheet }: CrewSheet) => ({
  schema: 1,
  asOf,
  alternative: route.id,
  name: route.name,
  lengthM: route.lengthM,
  sheet,
  geometry: route.geometry,
});

/** What a crew digs for several sources. */
export interface SharedCrewSheet {
  readonly asOf: string;
  readonly route: SharedRoute;
  readonly sheet: ProtectionSheet;
}

/** The tree protection sheet of lines that are dug together. */
export function sharedCrewText(given: SharedCrewSheet, site: Site, { units, width, style }: Page): string {
  const { asOf, route, sheet } = printable(given);
  const { name, invented } = site;
  const title = siteTitle(printable({ name, invented }));
  const lines = route.lines.map(
    ({ id, lengthM, sizeM }) => `Line ${id}: ${length(lengthM, units)} of ${pipeSize(sizeM, units)} pipe`,
  );
  const text = [
    style.strong(wrap(`${title}: trees along the new lines, as of ${asOf}`, width)),
    ...lines.map((line) => wrap(line, width)),
    wrap('Stations are measured from the upper end of each line.', width),
    '',
    protectionSheetText(sheet, units, style, width),
  ];
  return `${text.join('\n')}\n`;
}

/** The same for a script. */
export const sharedCrewPlain = ({ asOf, route, sheet }: SharedCrewSheet) => ({
  schema: 1,
  asOf,
  lines: route.lines.map(({ id, lengthM, sizeM, geometry }) => ({ id, lengthM, sizeM, geometry })),
  sheet,
});
