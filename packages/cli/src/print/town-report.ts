import type { RankResult, TownCell, TownLift, TownPart, TownStreets } from '@rootreach/core';
import { shortCautions } from './cautions.js';
import { length } from './lengths.js';
import { printable } from './printable.js';
import type { Page } from './rank-table.js';
import { siteTitle } from './site-title.js';
import { bandTotals, extent } from './totals.js';
import { wrap } from './wrap.js';

export interface TownSummary {
  readonly result: RankResult;
  readonly lift: TownLift;
  readonly materials: readonly TownPart[];
  readonly cells: readonly TownCell[];
  readonly cellM: number;
  readonly streets: TownStreets | null;
  readonly species: readonly { readonly name: string; readonly trees: number; readonly expected: number }[];
}

/** Rows of each table on the screen; the file holds them all. */
const ROWS = 8;

const KM_PER_MILE = 1.609344;

const percent = (share: number): string => `${(100 * share).toFixed(share < 0.1 ? 1 : 0)} %`;

function table(rows: readonly (readonly string[])[]): string[] {
  const widths = (rows[0] ?? []).map((_, i) => Math.max(...rows.map((row) => (row[i] ?? '').length)));
  return rows.map((row) =>
    row
      .map((cell, i) => (i === 0 ? cell.padEnd(widths[i] ?? 0) : cell.padStart(widths[i] ?? 0)))
      .join('  ')
      .trimEnd(),
  );
}

function parts(list: readonly TownPart[], what: string, all: number, { units }: Page): string[] {
  const rows = list
    .slice(0, ROWS)
    .map(({ name, lengthM, expected, perKm, byBandM }) => [
      `  ${printable(name)}`,
      length(lengthM, units),
      length(byBandM.act + byBandM.inspect, units),
      expected.toFixed(1),
      (units === 'us' ? perKm * KM_PER_MILE : perKm).toFixed(1),
      percent(all > 0 ? expected / all : 0),
    ]);
  return table([
    [`  ${what}`, 'length', 'inspect or act', 'entries', units === 'us' ? 'per mile' : 'per km', 'of all'],
    ...rows,
  ]);
}

function byStreet({ parts: streets, linesNamedByTree }: TownStreets, all: number, page: Page): string[] {
  const named = streets.map((part) => (part.key === '' ? { ...part, name: 'no street given' } : part));
  const note = `  ${linesNamedByTree.toLocaleString('en')} lines name no street: theirs is that of the nearest tree.`;
  return [...parts(named, '', all, page), ...(linesNamedByTree > 0 ? [note] : [])];
}

/** The half of the trouble in words. */
export const halfWords = ({ halfM, halfShare }: TownLift, units: Page['units']): string =>
  `half of it lies in ${length(halfM, units)}, ${percent(halfShare)} of all`;

/** A town at a glance: how much, where, what of, because of which trees. */
export function townReport(
  { result, lift, materials, cells, cellM, streets, species }: TownSummary,
  page: Page,
): string {
  const { totals } = result;
  const { style, width, units } = page;
  const all = totals.expectedEntries;
  const trees = species
    .slice(0, ROWS)
    .map(({ name, trees: count, expected }) => [
      `  ${name}`,
      count.toLocaleString('en'),
      expected.toFixed(1),
      percent(all > 0 ? expected / all : 0),
    ]);
  return [
    style.strong(wrap(printable(siteTitle(result.site)), width)),
    wrap(`As of ${result.asOf}, looking ${result.horizonYears} years ahead: ${extent(totals, units)}`, width),
    wrap(`To do: ${bandTotals(totals, units)}`, width),
    wrap(`Expected: ${all.toFixed(1)} places where roots get in; ${halfWords(lift, units)}.`, width),
    '',
    style.strong('By material'),
    ...parts(materials, '', all, page),
    '',
    style.strong(`By square of ${length(cellM, units)} (middle: longitude, latitude)`),
    ...parts(cells, '', all, page),
    '',
    ...(streets === null ? [] : [style.strong('By street'), ...byStreet(streets, all, page), '']),
    style.strong('By kind of tree'),
    ...table([['  ', 'trees', 'entries', 'of all'], ...trees]),
    '',
    wrap(shortCautions(result.cautions), width),
    '',
  ].join('\n');
}
