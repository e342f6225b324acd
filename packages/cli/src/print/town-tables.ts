import type { TownCell, TownLift, TownPart } from '@rootreach/core';
import { type Cell, csv } from './csv.js';
import type { TownSummary } from './town-report.js';

const rounded = (value: number, places: number): number => Number(value.toFixed(places));

const PART = [
  'lines',
  'length_m',
  'act_m',
  'inspect_m',
  'watch_m',
  'leave_m',
  'cannot_say_m',
  'entries',
  'entries_per_km',
];

const cells = ({ lines, lengthM, expected, perKm, byBandM }: TownPart): Cell[] => [
  lines,
  ...[lengthM, byBandM.act, byBandM.inspect, byBandM.watch, byBandM.leave, byBandM['cannot-say']].map((m) =>
    rounded(m, 1),
  ),
  rounded(expected, 4),
  rounded(perKm, 3),
];

const named = (head: string, parts: readonly TownPart[]): string =>
  csv([[head, ...PART], ...parts.map((part) => [part.name, ...cells(part)])]);

function squares(parts: readonly TownCell[]): string {
  const corners = ['west', 'south', 'east', 'north'] as const;
  return csv([
    [...corners, ...PART],
    ...parts.map((part) => [...corners.map((corner) => rounded(part[corner], 6)), ...cells(part)]),
  ]);
}

function lift({ metres, expected }: TownLift): string {
  return csv([
    ['share_of_length', 'share_of_entries'],
    ...metres.map((share, i) => [rounded(share, 5), rounded(expected[i] as number, 5)]),
  ]);
}

/** Names of the files. */
export const TABLES = ['materials.csv', 'squares.csv', 'streets.csv', 'species.csv', 'lift.csv'] as const;

/** The sums of a town as tables to calculate with, by the name of their file; in metres. */
export function townTables({
  materials,
  cells: byCell,
  species,
  streets,
  lift: curve,
}: TownSummary): Partial<Record<(typeof TABLES)[number], string>> {
  return {
    'materials.csv': named('material', materials),
    'squares.csv': squares(byCell),
    ...(streets === null ? {} : { 'streets.csv': named('street', streets.parts) }),
    'species.csv': csv([
      ['species', 'trees', 'entries'],
      ...species.map(({ name, trees, expected }) => [name, trees, rounded(expected, 4)]),
    ]),
    'lift.csv': lift(curve),
  };
}
