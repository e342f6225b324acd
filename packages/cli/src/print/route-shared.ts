import type { SharedRoute, SharedRouteResult, Site } from '@rootreach/core';
import { shortCautions } from './cautions.js';
import { depth, length, pipeSize, type Units } from './lengths.js';
import { wholeMoney } from './money.js';
import { datesText, priceNote } from './price-note.js';
import { printable } from './printable.js';
import type { Page } from './rank-table.js';
import { noRouteLines } from './route-notes.js';
import { siteTitle } from './site-title.js';
import { area } from './sizing-line.js';
import { wrap } from './wrap.js';

function lineText(
  { id, from, to, lengthM, sizeM, servesM2, pipe }: SharedRoute['lines'][number],
  units: Units,
): string {
  const laid =
    pipe === null
      ? 'fall not looked at'
      : `${depth(pipe.depthM.min, units)} to ${depth(pipe.depthM.max, units)} deep, fall ${(100 * pipe.fall.min).toFixed(1)} % or more`;
  const carries = servesM2 > 0 ? ` for ${area(servesM2, units)}` : '';
  return `${id}: ${from} to ${to}, ${length(lengthM, units)} of ${pipeSize(sizeM, units)} pipe${carries}, ${laid}`;
}

function routeLines(route: SharedRoute, currency: string, { units, width, style }: Page): string[] {
  const { shape, lines, lengthM, cost, separate } = route;
  const head =
    shape === 'shared' ? 'Lines that share a main' : 'A line for each: sharing would not be cheaper';
  const saved =
    shape === 'shared'
      ? ` (a line for each: ${length(separate.lengthM, units)}, ${wholeMoney(separate.cost.now, currency)})`
      : '';
  return [
    style.strong(head),
    ...lines.map((line) => wrap(lineText(line, units), width, 4)),
    wrap(
      `Together ${length(lengthM, units)}, ${wholeMoney(cost.now, currency)} now, ${wholeMoney(cost.presentValue, currency)} with root repairs${saved}`,
      width,
      4,
    ),
  ];
}

/** Lines of several sources, as a contractor reads them. */
export function sharedRouteText(
  given: SharedRouteResult,
  site: Site,
  dated: Parameters<typeof datesText>[0],
  notes: readonly string[],
  page: Page,
): string {
  const result = printable(given);
  const { units, width, style } = page;
  const { name, invented } = site;
  const title = siteTitle(printable({ name, invented }));
  const { none, route, currency } = result;
  const why =
    none === null
      ? []
      : noRouteLines(
          none.reason === 'blocked'
            ? { ...none, message: 'one of the sources is cut off from every outlet' }
            : { ...none, message: '', atM: 0, geometry: { type: 'LineString', coordinates: [] } },
          units,
        );
  const lines = [
    style.strong(wrap(`${title}: new lines, as of ${result.asOf}`, width)),
    '',
    ...(route === null ? why.map((line) => wrap(line, width)) : routeLines(route, currency, page)),
    '',
    ...notes.map((note) => wrap(printable(note), width)),
    style.faint(wrap(priceNote({ invented: result.pricesInvented, dated: datesText(dated) }), width)),
    wrap(shortCautions(result.cautions), width),
  ];
  return `${lines.join('\n')}\n`;
}
