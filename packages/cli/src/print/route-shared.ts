import type { LaidPipe, SharedRoute, SharedRouteResult, SharedWay, Site, Units } from '@rootreach/core';
import { aligned } from './aligned.js';
import { shortCautions } from './cautions.js';
import { chanceRange } from './chance.js';
import { depth, length, pipeSize } from './lengths.js';
import { wholeMoney } from './money.js';
import { datesText, priceNote } from './price-note.js';
import { printable } from './printable.js';
import type { Page } from './rank-table.js';
import { everyTree, noRouteLines } from './route-notes.js';
import { siteTitle } from './site-title.js';
import { area } from './sizing-line.js';
import { flow } from './water-numbers.js';
import { wrap } from './wrap.js';

/** Steeper than this a line drops rather than falls (judgement). */
const DROP = 0.25;

function fallText({ fall, invertM }: LaidPipe, units: Units): string {
  if (fall.min < DROP) return `fall ${(100 * fall.min).toFixed(1)} % or more`;
  return `dropping ${depth((invertM[0] as number) - (invertM.at(-1) as number), units)}`;
}

function lineText(
  { id, from, to, lengthM, sizeM, sized, servesM2, pipe }: SharedRoute['lines'][number],
  units: Units,
): string {
  const laid =
    pipe === null
      ? 'fall not looked at'
      : `${depth(pipe.depthM.min, units)} to ${depth(pipe.depthM.max, units)} deep, ${fallText(pipe, units)}`;
  const comes = sized === null ? '' : `, ${flow(sized.flowM3s, units)}`;
  const carries = servesM2 > 0 ? ` for ${area(servesM2, units)}${comes}` : '';
  return `${id}: ${from} to ${to}, ${length(lengthM, units)} of ${pipeSize(sizeM, units)} pipe${carries}, ${laid}`;
}

/** Length, price and roots of lines together, for a table of two columns. */
const ROWS = (currency: string, units: Units) =>
  [
    ['length', (way: SharedWay) => length(way.lengthM, units)],
    ['price now', ({ cost }: SharedWay) => wholeMoney(cost.now, currency)],
    ['root repairs to come', ({ cost }: SharedWay) => wholeMoney(cost.roots, currency)],
    ['together, today', ({ cost }: SharedWay) => wholeMoney(cost.presentValue, currency)],
    ['joints near roots', ({ joints }: SharedWay) => `${joints.nearRoots} of ${joints.count}`],
    ['roots within 10 years', ({ chance }: SharedWay) => chanceRange(chance['10'])],
    ['roots within 25 years', ({ chance }: SharedWay) => chanceRange(chance['25'])],
  ] as const;

function figures(route: SharedRoute, currency: string, units: Units): string[] {
  const ways: readonly (readonly [string, SharedWay])[] =
    route.shape === 'shared'
      ? [
          ['shared', route],
          [
            route.separate.falls === false ? 'a line for each (cannot fall)' : 'a line for each',
            route.separate,
          ],
        ]
      : [['a line for each', route]];
  return aligned([
    ['', ...ways.map(([name]) => name)],
    ...ROWS(currency, units).map(([label, cell]) => [label, ...ways.map(([, way]) => cell(way))]),
  ]);
}

function routeLines(route: SharedRoute, currency: string, { units, width, style }: Page): string[] {
  const head =
    route.shape === 'shared' ? 'Lines that share a main' : 'A line for each: sharing would not be cheaper';
  const trees = everyTree(route, units);
  return [
    style.strong(head),
    ...route.lines.map((line) => wrap(lineText(line, units), width, 4)),
    '',
    ...figures(route, currency, units),
    ...(trees.length === 0 ? [] : ['', style.strong('Trees along the lines')]),
    ...trees.map((note) => wrap(note, width, 4)),
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
