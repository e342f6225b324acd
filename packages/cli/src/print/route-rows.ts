import type { RouteAlternative, Units } from '@rootreach/core';
import { chanceRange, percent } from './chance.js';
import { depth, length } from './lengths.js';
import { wholeMoney } from './money.js';

/** A row of the side-by-side table: what it tells, and its cell of one alternative. */
interface Row {
  readonly label: string;
  readonly cell: (route: RouteAlternative) => string;
}

const UNKNOWN = '?';

const fallOf = ({ fall }: RouteAlternative): string =>
  fall === null ? UNKNOWN : `${(100 * fall.min).toFixed(1)} % or more`;

function depthOf({ depthM }: RouteAlternative, units: Units): string {
  if (depthM === null) return UNKNOWN;
  const [low, high] = [depth(depthM.min, units), depth(depthM.max, units)];
  return low === high ? low : `${low} to ${high}`;
}

function nearestTree({ trees }: RouteAlternative, units: Units): string {
  const near = [...trees].sort((a, b) => a.nearestM - b.nearestM)[0];
  return near === undefined ? '-' : `${near.id}, ${length(Math.max(0, near.nearestM), units)}`;
}

function mostSevered({ trees }: RouteAlternative): string {
  const worst = [...trees].sort((a, b) => b.severedShare - a.severedShare)[0];
  if (worst === undefined || worst.severedShare <= 0) return 'none';
  return `${percent(worst.severedShare)} % of ${worst.id}`;
}

function dugBy({ stretches }: RouteAlternative, way: 'hand-dug' | 'bored', units: Units): string {
  const metres = stretches.filter((s) => s.way === way).reduce((sum, { fromM, toM }) => sum + toM - fromM, 0);
  return metres === 0 ? '-' : length(metres, units);
}

/** Rows of the table, in the order in which they are asked about. */
export const routeRows = (currency: string, years: number, units: Units): readonly Row[] => [
  { label: 'length', cell: ({ lengthM }) => length(lengthM, units) },
  { label: 'bends', cell: ({ bends }) => String(bends) },
  { label: 'joints, near roots', cell: ({ joints }) => `${joints.count}, ${joints.nearRoots}` },
  { label: 'roots in 10 years', cell: ({ chance }) => chanceRange(chance['10']) },
  { label: 'roots in 25 years', cell: ({ chance }) => chanceRange(chance['25']) },
  { label: 'nearest tree', cell: (route) => nearestTree(route, units) },
  { label: 'most cut of a root circle', cell: mostSevered },
  { label: 'dug by hand', cell: (route) => dugBy(route, 'hand-dug', units) },
  { label: 'bored', cell: (route) => dugBy(route, 'bored', units) },
  { label: 'depth', cell: (route) => depthOf(route, units) },
  { label: 'fall', cell: fallOf },
  { label: 'utilities crossed', cell: ({ crossings }) => String(crossings.length) },
  { label: 'price now', cell: ({ cost }) => wholeMoney(cost.now, currency) },
  { label: `root repairs, ${years} years`, cell: ({ cost }) => wholeMoney(cost.roots, currency) },
  { label: 'together, today', cell: ({ cost }) => wholeMoney(cost.presentValue, currency) },
];
