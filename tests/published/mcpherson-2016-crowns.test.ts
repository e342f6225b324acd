import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { resolveSpecies } from '../../packages/core/src/names/resolve-species.js';
import { crownByEquation, crownOfAnySpecies, crownRadius } from '../../packages/core/src/roots/crown.js';
import { speciesRow, speciesTable } from '../../packages/core/src/tables/species.js';
import type { CrownEquation } from '../../packages/core/src/tables/species-row.js';
import { fromCentimetres } from '../../packages/core/src/units/length.js';
import { residual } from './residual.js';

/**
 * McPherson, E. G., van Doorn, N. S., Peper, P. J. (2016): Urban Tree Database and Allometric Equations. USDA
 * Forest Service PSW-GTR-253; data RDS-2016-0005 (public domain), table TS6 (equations) and TS3 (measured trees).
 */

/**
 * Every row of TS6 of our species that is not in the cubic form: key, form, crown diameter in metres at stems of
 * 20, 40 and 60 cm worked from its coefficients outside this project, and the largest crown it was fitted on.
 * Cubic rows are left out of the species table, for their last coefficient is rounded too far.
 */
const ROWS: readonly [
  key: string,
  form: CrownEquation['form'],
  at20: number,
  at40: number,
  at60: number,
  most: number,
][] = [
  ['acer-negundo', 'loglogw3', 6.7, 9.7, 11.7, 13.85],
  ['acer-palmatum', 'loglogw1', 5.8, 9.5, 12.2, 10.57],
  ['acer-platanoides', 'quad', 5.8, 9.9, 13.3, 19.19],
  ['acer-rubrum', 'quad', 6.0, 10.6, 14.0, 17.15],
  ['acer-saccharum', 'quad', 5.9, 10.0, 13.0, 15.95],
  ['betula-nigra', 'lin', 6.6, 10.7, 14.8, 17.47],
  ['cinnamomum-camphora', 'quad', 5.5, 9.6, 12.9, 18.72],
  ['cornus-florida', 'quad', 6.5, 10.0, 11.5, 11.1],
  ['fraxinus-americana', 'loglogw1', 6.7, 10.4, 13.0, 15.65],
  ['ginkgo-biloba', 'quad', 5.0, 8.8, 12.0, 15],
  ['gleditsia-triacanthos', 'loglogw1', 8.2, 13.0, 16.5, 18.19],
  ['jacaranda-mimosifolia', 'quad', 7.0, 11.1, 14.1, 15.15],
  ['juglans-nigra', 'quad', 6.4, 10.9, 14.2, 17.26],
  ['liquidambar-styraciflua', 'quad', 5.6, 10.2, 14.2, 17.39],
  ['liriodendron-tulipifera', 'quad', 5.5, 8.6, 11.0, 13.06],
  ['magnolia-grandiflora', 'quad', 4.7, 8.3, 10.9, 12.6],
  ['malus-domestica', 'quad', 5.9, 8.6, 8.5, 8.84],
  ['morus-alba', 'quad', 6.9, 11.2, 14.2, 16.19],
  ['pinus-strobus', 'quad', 5.5, 9.6, 12.7, 15.57],
  ['pinus-taeda', 'lin', 4.5, 8.2, 11.8, 13.74],
  ['platanus-occidentalis', 'loglogw2', 7.5, 11.9, 15.0, 20.93],
  ['platanus-x-acerifolia', 'loglogw1', 7.0, 11.3, 14.4, 14.63],
  ['populus-deltoides', 'quad', 4.8, 8.6, 12.2, 24.87],
  ['pyrus-calleryana', 'lin', 6.1, 11.8, 17.5, 16.08],
  ['quercus-agrifolia', 'quad', 5.5, 10.1, 14.0, 23.7],
  ['quercus-macrocarpa', 'loglogw1', 6.4, 11.2, 15.0, 20.97],
  ['quercus-nigra', 'quad', 7.3, 12.0, 15.8, 21.69],
  ['quercus-phellos', 'quad', 6.0, 10.5, 14.5, 22.61],
  ['quercus-rubra', 'quad', 6.3, 11.0, 14.9, 24.89],
  ['quercus-virginiana', 'loglogw1', 6.8, 11.4, 14.8, 21.57],
  ['robinia-pseudoacacia', 'quad', 5.7, 8.4, 10.4, 11.87],
  ['ulmus-parvifolia', 'quad', 8.0, 14.3, 19.0, 20.03],
  ['ulmus-pumila', 'quad', 6.1, 10.2, 13.8, 21.13],
  ['zelkova-serrata', 'loglogw1', 7.3, 11.8, 15.1, 17.91],
  ['eucalyptus-globulus', 'quad', 5.0, 8.9, 12.4, 22.25],
  ['eucalyptus-sideroxylon', 'expow1', 7.6, 10.6, 14.8, 20.96],
  ['ficus-thonningii', 'lin', 4.0, 7.3, 10.6, 13.81],
  ['ficus-benjamina', 'quad', 6.3, 12.8, 18.4, 28.17],
];
/** Half of the last place of the worked crowns, and a hair for binary fractions. */
const HALF_OF_0_1_M = 0.05 + 1e-3;

/** Past its peak the parabola of the apples would shrink a growing crown; ours stays at the largest fitted one. */
const HELD_AT_PEAK = new Map([['malus-domestica', 60]]);

const equationOf = (key: string): CrownEquation => {
  const cited = speciesRow(key).crownEquation;
  if (cited === null) throw new Error(`no crown equation in the row of ${key}`);
  return cited.value;
};

describe('crown equations of the Urban Tree Database', () => {
  it('are in the species table as far as they are not cubic, and no others', () => {
    const own = [...speciesTable.values()].filter((row) => row.crownEquation !== null).map((row) => row.key);
    expect(own.sort()).toEqual(ROWS.map(([key]) => key).sort());
  });

  it.each(ROWS)('%s (%s) has the crowns of its row', (key, form, at20, at40, at60, most) => {
    const equation = equationOf(key);
    expect(equation.form).toBe(form);
    expect(equation.fittedMaxM).toBe(most);
    for (const [cm, printed] of [
      [20, at20],
      [40, at40],
      [60, at60],
    ] as const) {
      // beyond the crowns it was fitted on an equation is not followed, so the fitted limit counts there
      const published = HELD_AT_PEAK.get(key) === cm ? most : Math.min(most, printed);
      const got = crownByEquation(equation, fromCentimetres(cm));
      residual({ what: `${key}, ${cm} cm`, got, published, tolerance: HALF_OF_0_1_M });
    }
  });

  // half of the last place shown; the first two are the file's own largest and smallest crown of its row
  it.each([
    ['platanus-x-acerifolia', 61.76, 14.63],
    ['platanus-x-acerifolia', 2.4, 0.78],
    ['platanus-x-acerifolia', 40, 11.27],
    ['acer-platanoides', 40, 9.876],
    ['quercus-agrifolia', 40, 10.056],
  ])('%s of %f cm has a crown of %f m', (key, cm, crownM) => {
    const decimals = String(crownM).split('.')[1]?.length ?? 0;
    const left = residual({
      what: `${key}, ${cm} cm`,
      got: crownByEquation(equationOf(key), fromCentimetres(cm)),
      published: crownM,
      tolerance: 0.5001 * 10 ** -decimals,
    });
    console.info(`McPherson 2016, ${key} of ${cm} cm: residual ${left.toFixed(4)} m`);
  });

  // least squares in logs on 13,297 trees, worked outside this project: half of the last place
  it.each([
    [20, 5.76],
    [40, 9.5],
    [80, 15.66],
  ])('the fit of all species gives %f cm a crown of %f m', (cm, crownM) => {
    const got = crownOfAnySpecies(fromCentimetres(cm));
    residual({ what: `all species, ${cm} cm`, got, published: crownM, tolerance: 0.005 });
  });
});

/** A measured tree of TS3. */
interface Measured {
  readonly name: string;
  readonly stemCm: number;
  readonly crownM: number;
}

/**
 * Each 237th measured tree with a stem of 5 cm and more, a crown and a species name: number in the database, name,
 * stem in centimetres, mean crown diameter in metres.
 */
const QUOTED: readonly [number, string, number, number][] = [
  [141, "Fraxinus velutina 'Modesto'", 55.4, 13.5],
  [383, 'Gleditsia triacanthos', 42.5, 12.4],
  [628, "Fraxinus angustifolia 'Raywood'", 51.5, 11.5],
  [1528, 'Liquidambar styraciflua', 38.8, 6.1],
  [1773, 'Brachychiton populneum', 30.6, 3.8],
  [2012, 'Pinus brutia', 39.0, 7.7],
  [3169, 'Washingtonia filifera', 75.6, 4.1],
  [3417, 'Pinus halepensis', 21.5, 5.2],
  [3655, 'Washingtonia robusta', 36.2, 3.1],
  [3932, 'Populus sargentii', 13.4, 4.8],
  [4177, 'Tilia americana', 62.9, 12.7],
  [4422, 'Tilia cordata', 40.1, 11],
  [4661, 'Ulmus pumila', 76.6, 14.8],
  [4935, 'Gleditsia triacanthos', 8.9, 3.8],
  [5179, 'Tilia americana', 75.2, 15.9],
  [5429, 'Fraxinus pennsylvanica', 14.7, 4.2],
  [5679, 'Catalpa speciosa', 82.6, 11.7],
  [5918, 'Juglans nigra', 35.3, 12.7],
  [6161, "Pyrus calleryana 'Bradford'", 25.4, 7.8],
  [7080, 'Acer platanoides', 59.7, 9.9],
  [7327, 'Ginkgo biloba', 64.3, 13.4],
  [7571, 'Pyrus calleryana', 14.2, 6.3],
  [7816, 'Ulmus americana', 27.9, 8.3],
  [8054, 'Platanus x acerifolia', 50.8, 14.6],
  [8291, 'Pyrus calleryana', 14.0, 4.7],
  [8531, 'Tilia americana', 9.9, 3.5],
  [8786, 'Pinus sylvestris', 52.1, 11.5],
  [11649, 'Quercus rubra', 99.8, 24.4],
  [11887, 'Pinus echinata', 18.0, 1.6],
  [12134, 'Ulmus alata', 70.4, 24.8],
];

/** Folder of open data with all trees of nine cities, where there is one. */
const folder = process.env['ROOTREACH_OPEN_DATA'];
const file = folder === undefined ? null : join(folder, 'us-urban-tree-allometry', 'trees.csv');

/** Cells of a line of CSV; a cell in double quotes may hold commas. */
function cellsOf(line: string): string[] {
  return Array.from(line.matchAll(/(?:^|,)(?:"([^"]*)"|([^,]*))/g), (m) => m[1] ?? m[2] ?? '');
}

function treesFrom(csv: string): Measured[] {
  const [header, ...lines] = csv.trim().split(/\r?\n/);
  const columns = cellsOf(header as string);
  const [name, stem, crown] = ['ScientificName', 'DBH (cm)', 'AvgCdia (m)'].map((c) => columns.indexOf(c));
  return lines.map((line) => {
    const cells = cellsOf(line);
    return {
      name: cells[name as number] as string,
      stemCm: Number(cells[stem as number]),
      crownM: Number(cells[crown as number]),
    };
  });
}

const whole = file !== null && existsSync(file);
const trees: readonly Measured[] = whole
  ? treesFrom(readFileSync(file, 'utf8'))
  : QUOTED.map(([, name, stemCm, crownM]) => ({ name, stemCm, crownM }));

/** Trees whose species is in the table, with measured stem and crown (-1 stands for missing): ours over measured. */
const compared = trees
  .filter(({ stemCm, crownM }) => stemCm > 0 && crownM > 0)
  .map((tree) => ({ ...tree, match: resolveSpecies(tree.name) }))
  .filter(({ match }) => match.level === 'species')
  .map(({ stemCm, crownM, match }) => {
    const radius = crownRadius(speciesRow(match.key), fromCentimetres(stemCm));
    return { stemCm, ratio: (2 * radius) / crownM };
  });

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] as number;
const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;

/** Scatter of single trees about the fit of all species: standard deviation of the logarithm. */
const TREE_LOG_SD = 0.27;

describe(`crowns of ${whole ? 'all' : 'thirty'} measured city trees`, () => {
  // Not an independent check of the coefficients, which were fitted on trees of the same survey; it is one of the
  // use of one region's equation for all, of the fit for the other species, of the caps and of the names.
  const grown = compared.filter(({ stemCm }) => stemCm >= 5);

  it('finds most of the trees in the species table', () => {
    expect(compared.length).toBeGreaterThan(0.75 * trees.length);
  });

  // a single tree is off by 17 % either way in the middle case where nothing but the scatter (0.27) speaks:
  // 0.674 x 0.27 = 0.18; the species' own equations must do better than that
  it('have a median relative error of the radius below 17 %', () => {
    const error = median(grown.map(({ ratio }) => Math.abs(ratio - 1)));
    console.info(
      `McPherson 2016, ${grown.length} trees from 5 cm: median relative error ${(100 * error).toFixed(1)} %`,
    );
    expect(error).toBeLessThan(0.17);
  });

  // 5 % of bias, and on the quoted sample twice the standard error of its mean besides. Saplings have been pruned
  // in the nursery, and below 5 cm the fits end at their smallest crown: 12 % there, a few centimetres.
  const CLASSES: readonly (readonly [lowCm: number, highCm: number, biasOf: number])[] = whole
    ? [
        [0, 5, 0.12],
        [5, 10, 0.05],
        [10, 20, 0.05],
        [20, 30, 0.05],
        [30, 45, 0.05],
        [45, 60, 0.05],
        [60, 90, 0.05],
        [90, 400, 0.05],
      ]
    : [
        [5, 30, 0.05],
        [30, 60, 0.05],
        [60, 400, 0.05],
      ];

  it('fall into the classes below, none left out', () => {
    const inClasses = CLASSES.map(
      ([low, high]) => compared.filter(({ stemCm }) => stemCm >= low && stemCm < high).length,
    );
    expect(inClasses.reduce((a, b) => a + b, 0)).toBe(compared.length);
  });

  it.each(CLASSES)('have little bias from %d to %d cm of stem', (low, high, biasOf) => {
    const ratios = compared.filter(({ stemCm }) => stemCm >= low && stemCm < high).map(({ ratio }) => ratio);
    const bias = Math.exp(mean(ratios.map(Math.log))) - 1;
    const chance = whole ? 0 : (2 * TREE_LOG_SD) / Math.sqrt(ratios.length);
    console.info(
      `McPherson 2016, ${low} to ${high} cm, ${ratios.length} trees: bias ${(100 * bias).toFixed(1)} %`,
    );
    expect(ratios.length).toBeGreaterThan(5);
    expect(Math.abs(bias), `bias ${bias}`).toBeLessThan(biasOf + chance);
  });
});
