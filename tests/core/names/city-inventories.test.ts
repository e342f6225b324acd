import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { isNotALiveTree } from '../../../packages/core/src/names/not-live.js';
import { resolveSpecies } from '../../../packages/core/src/names/resolve-species.js';
import { speciesRow } from '../../../packages/core/src/tables/species.js';

interface Named {
  readonly botanical: string;
  readonly common: string;
  readonly trees: number;
}

/** Rows as they stand in the open street tree data of two cities, with how often they occur. */
const quoted: readonly Named[] = [
  { botanical: 'Acer platanoides', common: 'Maple, Norway', trees: 3338 },
  { botanical: 'Picea pungens', common: 'Spruce, Colorado blue', trees: 1237 },
  { botanical: "Acer platanoides 'Crimson King'", common: 'Maple, Norway Crimson King', trees: 651 },
  { botanical: 'Thuja occidentalis', common: 'Cedar, white', trees: 526 },
  { botanical: 'Syringa reticulata', common: 'Lilac, Japanese', trees: 416 },
  { botanical: 'Prunus spp.', common: 'Cherry', trees: 292 },
  { botanical: 'Acer negundo', common: 'Maple, Manitoba', trees: 233 },
  { botanical: 'Pinus sylvestris', common: 'Pine scots', trees: 113 },
  { botanical: 'ginkgo biloba', common: 'Ginkgo', trees: 99 },
  { botanical: 'Magnolia x soulngeana (M. denudata x liliiflora)', common: 'Magnolia, saucer', trees: 92 },
  { botanical: 'Allianthus altissima', common: 'Tree of heaven', trees: 65 },
  { botanical: "Sorbus thuringiaca 'Fastigiata'", common: 'Mountain ash, oak leaf', trees: 59 },
  { botanical: 'Abies balsamaea', common: 'Fir, balsam', trees: 52 },
  { botanical: 'Acer tataricum subsp. ginnala', common: 'Maple, Amur', trees: 22 },
  {
    botanical: "Gleditsia triacanthos f. inermis 'Shademaster'",
    common: 'Honey locust Shademaster',
    trees: 15,
  },
  { botanical: 'Platanus x acerifolia', common: 'London planetree', trees: 987 },
  { botanical: 'Gleditsia triacanthos var. inermis', common: 'honeylocust', trees: 924 },
  { botanical: 'Styphnolobium japonicum', common: 'Sophora', trees: 247 },
  { botanical: 'Quercus shumardii', common: "Schumard's oak", trees: 31 },
  { botanical: 'Crataegus crusgalli var. inermis', common: 'cockspur hawthorn', trees: 14 },
  { botanical: 'Taxodium ascendens', common: 'pond cypress', trees: 5 },
];

/** Cells of one CSV line; quotes may hold commas. */
const cells = (line: string): string[] =>
  [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map((match) => match[1] ?? match[2] ?? '');

function readNames(
  file: string,
  botanical: string,
  common: string,
  live: (row: Map<string, string>) => boolean,
): Named[] {
  const [header = '', ...lines] = readFileSync(file, 'utf8')
    .replace(/^\uFEFF/, '')
    .split(/\r?\n/);
  const columns = cells(header);
  return lines
    .filter((line) => line !== '')
    .map((line) => new Map(cells(line).map((cell, i) => [columns[i] ?? '', cell] as const)))
    .filter(live)
    .map((row) => ({ botanical: row.get(botanical) ?? '', common: row.get(common) ?? '', trees: 1 }))
    .filter((row) => row.botanical !== '' || row.common !== '');
}

/** Folder with the cities' open data, where someone has it; the rows quoted above otherwise. */
function inventories(): readonly (readonly [string, readonly Named[]])[] {
  const folder = process.env.ROOTREACH_OPEN_DATA;
  if (folder === undefined || !existsSync(folder)) return [['quoted rows', quoted]];
  const toronto = join(folder, 'toronto-street-trees');
  const newYork = join(folder, 'new-york-2015-street-trees', 'trees.csv');
  return [
    ['quoted rows', quoted],
    [
      'Toronto',
      readdirSync(toronto)
        .filter((name) => name.endsWith('.csv'))
        .flatMap((name) => readNames(join(toronto, name), 'BOTANICAL_NAME', 'COMMON_NAME', () => true)),
    ],
    ['New York', readNames(newYork, 'spc_latin', 'spc_common', (row) => row.get('status') === 'Alive')],
  ];
}

const genusOf = (key: string): string => speciesRow(key).botanical.replace('×', '').split(' ')[0] ?? '';
/** Genera that the cities spell otherwise or that have been renamed. */
const RENAMED: Readonly<Record<string, string>> = { Allianthus: 'Ailanthus', Xanthocyparis: 'Callitropsis' };

describe.each(inventories())('street trees of %s', (_, rows) => {
  const total = rows.reduce((sum, row) => sum + row.trees, 0);
  const share = (pick: (row: Named) => string): number => {
    const named = rows.filter((row) => ['species', 'genus'].includes(resolveSpecies(pick(row)).level));
    return named.reduce((sum, row) => sum + row.trees, 0) / total;
  };

  it('resolve by their botanical names to the genus or better, 97 of 100', () => {
    expect(share((row) => row.botanical)).toBeGreaterThanOrEqual(0.97);
  });

  it('resolve by their plain names to the genus or better, 95 of 100', () => {
    expect(share((row) => row.common)).toBeGreaterThanOrEqual(0.95);
  });

  it('never resolve to another genus than the one written', () => {
    const wrong = rows
      .map((row) => ({
        row,
        written: (row.botanical.split(' ')[0] ?? '').replace(/^./, (first) => first.toUpperCase()),
      }))
      .filter(
        ({ row, written }) => genusOf(resolveSpecies(row.botanical).key) !== (RENAMED[written] ?? written),
      )
      .map(({ row }) => row.botanical);
    expect(wrong).toEqual([]);
  });

  it('are taken for living trees', () => {
    expect(rows.filter((row) => isNotALiveTree(row.botanical) || isNotALiveTree(row.common))).toEqual([]);
  });
});
