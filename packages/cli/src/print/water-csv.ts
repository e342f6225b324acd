import {
  type LineWater,
  type Range,
  toFeet,
  toGallonsPerMinute,
  toInches,
  toLitresPerSecond,
  toMillimetres,
  toSquareFeet,
  type Units,
  type WaterResult,
  wordWaterGap,
} from '@rootreach/core';
import { type Cell, csv } from './csv.js';

type Column = readonly [name: string, of: (line: LineWater) => Cell];

const rounded = (value: number | null | undefined, places: number): Cell =>
  value === null || value === undefined ? null : Number(value.toFixed(places));

/** A number with its low and its high. */
function ranged(
  name: string,
  of: (line: LineWater) => Range | null,
  convert: (value: number) => number,
  places: number,
): Column[] {
  return (['low', 'mid', 'high'] as const).map((end): Column => {
    const value = (line: LineWater): Cell => {
      const range = of(line);
      return range === null ? null : rounded(convert(range[end]), places);
    };
    return [`${name}_${end}`, value];
  });
}

const same = (value: number): number => value;

function columnsIn(units: Units): Column[] {
  const us = units === 'us';
  const flow = us ? toGallonsPerMinute : toLitresPerSecond;
  const unit = us ? 'gpm' : 'l_s';
  const bore = us ? toInches : toMillimetres;
  const area = us ? toSquareFeet : same;
  const along = us ? toFeet : same;
  const maybe = (value: number | null | undefined, convert: (v: number) => number, places: number): Cell =>
    rounded(value === null || value === undefined ? null : convert(value), places);
  return [
    ['line', (l) => l.drainId],
    ['line_name', (l) => l.name],
    ['material', (l) => l.material],
    [`length_${us ? 'ft' : 'm'}`, (l) => maybe(l.lengthM, along, 2)],
    [`inside_${us ? 'in' : 'mm'}`, (l) => maybe(l.insideDiameterM, bore, us ? 3 : 1)],
    ['slope_pct', (l) => maybe(l.slope, (v) => 100 * v, 3)],
    ['slope_from', (l) => l.slopeFrom],
    ...ranged('n', (l) => l.n, same, 4),
    ...ranged(`full_${unit}`, (l) => l.fullFlowM3s, flow, 3),
    ...ranged(`full_${us ? 'ft' : 'm'}_s`, (l) => l.fullVelocityMs, along, 3),
    ['self_cleansing', (l) => (l.selfCleansing === null ? null : l.selfCleansing ? 'yes' : 'no')],
    ['drains_into', (l) => l.drainsInto],
    [`served_${us ? 'ft2' : 'm2'}`, (l) => maybe(l.servedM2, area, 1)],
    ['lines_not_counted', (l) => l.notCounted.lines],
    ...ranged(`rain_${unit}`, (l) => l.designFlowM3s, flow, 3),
    ...ranged('used_share', (l) => l.usedShare, same, 3),
    ['seen', (l) => l.blockage?.seen ?? null],
    ['blocked_share', (l) => rounded(l.blockage?.share, 3)],
    ...ranged(`with_roots_${unit}`, (l) => l.withRootsM3s, flow, 3),
    ['warnings', (l) => l.warnings.join(' ')],
    ['not_known', (l) => l.unknown.map(({ field, why }) => `${field}: ${wordWaterGap(why)}`).join('; ')],
  ];
}

/** One row a line. @param units the columns' names say which. */
export function waterCsv({ lines }: WaterResult, units: Units): string {
  const columns = columnsIn(units);
  return csv([columns.map(([name]) => name), ...lines.map((line) => columns.map(([, of]) => of(line)))]);
}
