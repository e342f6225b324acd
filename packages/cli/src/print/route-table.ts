import type { PipeChoice, RouteResult, Site, Units } from '@rootreach/core';
import { aligned } from './aligned.js';
import { shortCautions } from './cautions.js';
import { chanceRange } from './chance.js';
import { count } from './count.js';
import { length, pipeSize, span } from './lengths.js';
import { wholeMoney } from './money.js';
import { datesText, priceNote } from './price-note.js';
import { printable } from './printable.js';
import type { Page } from './rank-table.js';
import { alternativeNotes, assumedLine, noRouteLines } from './route-notes.js';
import { routeRows } from './route-rows.js';
import { siteTitle } from './site-title.js';
import { wrap } from './wrap.js';

/** A crossing flatter than this is said, degrees (common practice: near a right angle). */
const SQUARE_DEGREES = 60;

/** Side by side where that fits, else one below the other. */
function sideBySide(result: RouteResult, { units, width, style }: Page): string[] {
  const rows = routeRows(result.currency, result.horizonYears, units);
  const heads = result.alternatives.map(({ id, name }) => `${id}: ${name}`);
  const table = aligned([
    ['', ...heads],
    ...rows.map(({ label, cell }) => [label, ...result.alternatives.map(cell)]),
  ]);
  if (table.every((line) => line.length <= width)) {
    const [head = '', ...rest] = table;
    return [style.strong(head), ...rest];
  }
  return result.alternatives.flatMap((route, i) => [
    style.strong(heads[i] as string),
    ...aligned(rows.map(({ label, cell }) => [`  ${label}`, cell(route)])),
    '',
  ]);
}

/** Less is not worth telling, metres. */
const LEAST_TOLD_M = 0.3;

/** What guidance says of holes near trees; the key to `too near`. */
const TOO_NEAR =
  'Too near trees: farm drainage guidance keeps pipe with holes 100 ft (30 m) from willow, soft maple, elm, poplar ' +
  'and unknown trees, 50 ft (15 m) from others; where that cannot be, solid pipe within 50 ft of any tree.';

/** How much of a pipe has holes, and how much of that too near trees. */
function holesText({ perforatedM, solid, solidBy, holesNearTreesM }: PipeChoice, units: Units): string {
  if (perforatedM === 0) return '';
  const parts = solid.map(([from, to]) => span(from, to, units)).join(' and ');
  const closed = solidBy === null ? '' : `; solid at ${parts}`;
  const holes =
    holesNearTreesM >= LEAST_TOLD_M
      ? `; ${length(holesNearTreesM, units)} of it with holes too near trees`
      : '';
  return `${closed}${holes}`;
}

function pipeLines({ pipes, currency }: RouteResult, { units, width, style }: Page): string[] {
  if (pipes.length < 2) return [];
  const numbers = ({ joints, chance, cost }: PipeChoice): string =>
    `${count(joints, 'joint')}, roots in 25 years ${chanceRange(chance['25'])}, now ${wholeMoney(cost.now, currency)}, with root repairs ${wholeMoney(cost.presentValue, currency)}`;
  const near = pipes.some(({ holesNearTreesM }) => holesNearTreesM >= LEAST_TOLD_M);
  return [
    '',
    style.strong('The cheapest of them over the years, laid with other pipe'),
    ...pipes.map((pipe, i) =>
      wrap(
        `${pipe.name}${i === 0 ? ' (as asked)' : ''}: ${numbers(pipe)}${holesText(pipe, units)}`,
        width,
        4,
      ),
    ),
    ...(near ? [style.faint(wrap(TOO_NEAR, width))] : []),
  ];
}

/** The alternatives as a contractor reads them. */
export function routeTable(
  given: RouteResult,
  site: Site,
  dated: Parameters<typeof datesText>[0],
  { sizeM, notes: more }: { readonly sizeM: number; readonly notes: readonly string[] },
  page: Page,
): string {
  const result = printable(given);
  const { units, width, style } = page;
  const { name, invented } = site;
  const title = siteTitle(printable({ name, invented }));
  const notes = result.alternatives.flatMap((route) => {
    const lines = alternativeNotes(route, SQUARE_DEGREES, units);
    return lines.length === 0 ? [] : [wrap(`${route.id}: ${lines.join('; ')}.`, width, 3)];
  });
  const assumed = assumedLine(result, units);
  const lines = [
    style.strong(wrap(`${title}: a new ${pipeSize(sizeM, units)} line, as of ${result.asOf}`, width)),
    '',
    ...(result.none === null
      ? sideBySide(result, page)
      : noRouteLines(result.none, units).map((line) => wrap(line, width))),
    ...(notes.length === 0 ? [] : ['', ...notes]),
    ...pipeLines(result, page),
    '',
    ...more.map((note) => wrap(printable(note), width)),
    ...(assumed === null ? [] : [style.faint(wrap(assumed, width))]),
    style.faint(wrap(priceNote({ invented: result.pricesInvented, dated: datesText(dated) }), width)),
    wrap(shortCautions(result.cautions), width),
  ];
  return `${lines.join('\n')}\n`;
}
