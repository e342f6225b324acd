import type { Backtest } from '@rootreach/core';
import type { Tried } from '../learning.js';
import { percent } from './chance.js';
import type { Page } from './rank-table.js';
import { wrap } from './wrap.js';

type Bin = Backtest['calibration'][number];

const made = ({ meanChance, count }: Bin): string => (meanChance * count).toFixed(1);
const found = ({ foundShare, count }: Bin): string => String(Math.round(foundShare * count));

const cells = (said: string, makes: string, saw: string): string =>
  said.padStart(7) + makes.padStart(8) + saw.padStart(8);

const binCells = (bin: Bin | undefined): string =>
  bin === undefined ? '' : cells(`${percent(bin.meanChance)} %`, made(bin), found(bin));

/** How to read a row, by the example of the most likely lot. */
function example(bin: Bin | undefined): string[] {
  if (bin === undefined) return [];
  const { count } = bin;
  return [
    `The last lot: odds of ${percent(bin.meanChance)} % over ${count} stretches make ${made(bin)}; ${found(bin)} had roots.`,
  ];
}

/** Were the odds borne out? Ten lots of stretches, from least to most likely. */
export function calibrationTable({ learned, assumed }: Tried, { width, style }: Page): string[] {
  const rows = learned.calibration.map(
    (bin, i) =>
      `${String(i + 1).padStart(3)}${String(bin.count).padStart(12)}   ${binCells(bin)}   ${binCells(assumed.calibration[i])}`,
  );
  const head = cells('said', 'makes', 'found');
  return [
    style.strong(wrap('Were the odds borne out? The same stretches in ten lots, least likely first.', width)),
    style.faint(`${''.padEnd(21)}${'as learned'.padEnd(26)}as assumed`),
    style.faint(`lot   stretches   ${head}   ${head}`),
    ...rows,
    ...example(learned.calibration[learned.calibration.length - 1]).map((line) => wrap(line, width)),
  ];
}
