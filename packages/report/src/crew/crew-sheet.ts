import type { LineResult } from '@rootreach/core';
import { lotPicture } from '../draw/lot-picture.js';
import { profilePicture } from '../draw/profile-picture.js';
import { el, join, type Markup, text } from '../markup/markup.js';
import { cautionsPart, signPart } from '../page/closing.js';
import { headLine, part, wholePage } from '../page/frame.js';
import { keyOf } from '../page/key.js';
import { trenchConditions } from '../page/trench-conditions.js';
import { amountSaid } from '../say/amounts.js';
import { clipped } from '../say/clipped.js';
import { dateSaid } from '../say/dates.js';
import { length, small } from '../say/lengths.js';
import { speciesOf } from '../say/trees-said.js';
import { spanSaid, whereSaid } from '../say/where.js';
import { type Words, wordsFor } from '../words/words.js';
import type { CrewInput } from './crew-input.js';
import { treeLimits, utilitiesNear } from './stretch-geometry.js';

const lineOf = ({ result, segment }: CrewInput): LineResult | undefined =>
  result.lines.find(({ drainId }) => drainId === segment.drainId);

/** A table with a heading a column. */
function table(heads: readonly string[], rows: readonly (readonly string[])[]): Markup {
  const cell = (said: string, i: number): Markup =>
    i === 0
      ? el('th', { scope: 'row' }, text(said))
      : el('td', { class: i < heads.length - 1 ? 'keep' : undefined, 'data-name': heads[i] }, text(said));
  return el(
    'div',
    { class: 'wide' },
    el(
      'table',
      {},
      el(
        'thead',
        {},
        el(
          'tr',
          {},
          heads.map((said) => el('th', { scope: 'col' }, text(said))),
        ),
      ),
      el(
        'tbody',
        {},
        rows.map((row) => el('tr', {}, row.map(cell))),
      ),
    ),
  );
}

function factsPart(input: CrewInput, words: Words): Markup {
  const { segment, site, units } = input;
  const { dig } = words.crew;
  const line = lineOf(input);
  const drain = site.drains.find(({ id }) => id === segment.drainId);
  const depthAt = (stationM: number): number =>
    line === undefined
      ? segment.depthM
      : line.depth.outletEndM +
        ((line.depth.upperEndM - line.depth.outletEndM) * stationM) / Math.max(0.01, line.lengthM);
  const cover = dig.coverFromTo(small(depthAt(segment.startM), units), small(depthAt(segment.endM), units));
  const size = drain?.sizeM ?? null;
  const pipe = [words.owner.materials[segment.material], ...(size === null ? [] : [small(size, units)])].join(
    ', ',
  );
  const { known } = segment;
  const rows: readonly [string, string][] = [
    [dig.line, clipped(segment.drainName ?? segment.drainId, 40)],
    [dig.pipe, pipe],
    [dig.from, whereSaid(segment, site, units, words)],
    [dig.stations, dig.stationsFrom(spanSaid(segment.startM, segment.endM, units, words))],
    [dig.length, length(segment.lengthM, units)],
    [dig.cover, line?.depth.assumed === false ? cover : `${cover} (${dig.assumed})`],
    [dig.joints, String(segment.joints.count)],
    [
      dig.fittings,
      segment.fittings.map(({ id, type }) => `${words.fittings[type]} ${id}`).join(', ') || dig.none,
    ],
    [
      dig.seen,
      known === null
        ? dig.notSeen
        : [words.seen[known.seen], ...(known.year === null ? [] : [String(Math.floor(known.year))])].join(
            ', ',
          ),
    ],
  ];
  const half = Math.ceil(rows.length / 2);
  return part(
    dig.title,
    '',
    el('div', { class: 'two' }, facts(rows.slice(0, half)), facts(rows.slice(half))),
  );
}

const facts = (rows: readonly (readonly [string, string])[]): Markup =>
  el(
    'table',
    { class: 'facts' },
    el(
      'tbody',
      {},
      rows.map(([name, value]) =>
        el('tr', {}, el('th', { scope: 'row' }, text(name)), el('td', {}, text(value))),
      ),
    ),
  );

/** Utilities that the sketch shows nearer than this cross the trench, metres. */
const CROSSES_M = 0.3;

function utilitiesPart({ site, segment, units }: CrewInput, words: Words): Markup {
  const { utilities } = words.crew;
  const near = utilitiesNear(site, segment);
  if (near.length === 0) return part(utilities.title, '', el('p', {}, text(utilities.none)));
  const rows = near.map(({ name, nearestM, atM }) => [
    name ?? utilities.unnamed,
    nearestM < CROSSES_M ? utilities.crosses(length(atM, units)) : length(nearestM, units),
  ]);
  return part(
    utilities.title,
    '',
    table([utilities.name, utilities.nearest], rows),
    el('p', { class: 'fine' }, text(utilities.note)),
  );
}

function treesPart(input: CrewInput, words: Words): Markup {
  const { site, units } = input;
  const { trees } = words.crew;
  const limits = treeLimits(input);
  if (limits.length === 0) return part(trees.title, '', el('p', {}, text(trees.none)));
  const rows = limits.slice(0, MOST_TREES).map(({ tree, nearestM, insideM }) => {
    const trunks = (times: number): string => length(times * tree.stemDiameterM, units);
    const measured = tree.assumed.every(({ path }) => !path.endsWith('/stemDiameterM'));
    return [
      `${words.tree(tree.name, speciesOf(site, tree.id))} (${tree.id})`,
      `${small(tree.stemDiameterM, units)}${measured ? '' : ` (${trees.assumedTrunk})`}`,
      length(nearestM, units),
      trunks(3),
      trunks(6),
      trunks(12),
      insideM.map(([from, to]) => spanSaid(from, to, units, words)).join('; '),
    ];
  });
  const heads = [trees.tree, trees.trunk, trees.away, trees.three, trees.six, trees.twelve, trees.hand];
  const circles = el('p', { class: 'fine' }, text(trees.circles));
  const stop = limits.some(({ insideNoDig }) => insideNoDig)
    ? [el('p', { class: 'rule' }, text(trees.crosses))]
    : [];
  return part(trees.title, '', ...stop, table(heads, rows), circles);
}

function quantitiesPart({ choice, units }: CrewInput, words: Words): Markup | null {
  if (choice === undefined) return null;
  const { title, none } = words.crew.quantities;
  const heading = `${title}: ${words.owner.choices.names[choice.id]}`;
  if (choice.quantities.length === 0) return part(heading, '', el('p', {}, text(none)));
  const rows = choice.quantities.map((quantity) =>
    el('li', {}, el('span', {}, text(quantity.text)), el('b', {}, text(amountSaid(quantity, units, words)))),
  );
  return part(heading, '', el('ul', { class: 'amounts' }, rows));
}

function checksPart(words: Words): Markup {
  const { checks, written } = words.crew;
  const box = el('span', { class: 'box', 'aria-hidden': 'true' });
  return part(
    checks.title,
    'checks',
    el(
      'ul',
      {},
      checks.list.map((line) => el('li', {}, box, text(line))),
    ),
    el(
      'p',
      { class: 'fill' },
      [written.fall, written.water, written.camera, written.name, written.date].map((name) =>
        el('span', {}, text(name)),
      ),
    ),
  );
}

/** Trees whose limits are told. */
const MOST_TREES = 5;

/** How high the plan stands on the crew's sheet, in the drawing's own pixels. */
const PLAN_HEIGHTS = { least: 230, most: 262 };

/**
 * The sheet that goes into the trench: where to dig and how deep, utilities, limits by the trees, quantities, checks
 * before backfill, cautions. One HTML file like the owner's page.
 */
export function crewSheet(input: CrewInput): string {
  const words = wordsFor(input.language);
  const { result, segment, units } = input;
  const line = lineOf(input);
  const nameOf = (id: string): string =>
    words.tree(result.trees.find((tree) => tree.id === id)?.name ?? '', speciesOf(input.site, id));
  const profile = line === undefined ? [] : [profilePicture({ result, line, segment, units, words, nameOf })];
  const first = el(
    'div',
    { class: 'leaf' },
    headLine(words.crew.title, result, dateSaid(result.asOf, words), words),
    el('h1', {}, text(words.crew.whole(clipped(segment.id)))),
    factsPart(input, words),
    el(
      'div',
      { class: 'plan' },
      lotPicture({
        ...input,
        words,
        heights: PLAN_HEIGHTS,
        close: true,
        limits: treeLimits(input)
          .slice(0, MOST_TREES)
          .map(({ tree }) => tree),
      }),
      keyOf(input, words),
    ),
    el('div', { class: 'plan' }, join(profile)),
  );
  const quantities = quantitiesPart(input, words);
  const second = el(
    'div',
    { class: 'leaf' },
    treesPart(input, words),
    utilitiesPart(input, words),
    ...(quantities === null ? [] : [quantities]),
    el(
      'div',
      { class: 'two' },
      checksPart(words),
      cautionsPart(
        words.crew.cautions.title,
        {
          ...trenchConditions(input),
          sawing: true,
          entry: input.site.fittings.some(({ type }) => type === 'basin'),
        },
        words,
      ),
    ),
    signPart(input.by, result.asOf, result.model.version, words),
  );
  return wholePage(`${words.crew.title} ${segment.id}`, words.language, [first, second]);
}
