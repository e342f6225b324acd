import { describe, expect, it } from 'vitest';
import { squash, wordsOf } from '../../../packages/core/src/names/words.js';
import { bibliography } from '../../../packages/core/src/sources/bibliography.js';
import { speciesRow, speciesTable } from '../../../packages/core/src/tables/species.js';
import type { CrownEquation, SpeciesRow } from '../../../packages/core/src/tables/species-row.js';
import { everyCitedValue } from './every-cited-value.js';

const rows = [...speciesTable.values()];
const value = (key: string, field: 'vigour' | 'waterDemand' | 'matureHeightM' | 'matureCrownM'): unknown =>
  speciesRow(key)[field].value;

describe('the species table', () => {
  it('has well over ninety species and genera', () => {
    expect(rows.filter((row) => row.rank === 'species').length).toBeGreaterThan(300);
    expect(rows.filter((row) => row.rank === 'genus').length).toBeGreaterThan(90);
  });

  it('has unknown trees of every form and size', () => {
    const sizes = ['', '-small', '-medium', '-large'];
    const keys = ['broadleaf', 'conifer'].flatMap((form) => sizes.map((size) => `unknown-${form}${size}`));
    for (const key of ['unknown-tree', 'unknown-palm', ...keys]) {
      expect(speciesRow(key)).toMatchObject({ key, rank: 'unknown', botanical: '' });
      // NHBC Standards chapter 4.2: species unknown, assume high demand (from memory)
      expect(speciesRow(key).waterDemand.value).toBe('high');
    }
  });

  it('throws with the key when it is not there', () => {
    expect(() => speciesRow('acer-nonsense')).toThrow(/acer-nonsense/);
  });

  it('keys every row by its botanical name', () => {
    for (const row of rows.filter((each) => each.rank !== 'unknown')) {
      const plain = row.botanical.toLowerCase().replace('×', '× ').replace(/\s+/g, ' ');
      expect(row.key).toBe(plain.replaceAll('×', 'x').replaceAll("'", '').trim().replaceAll(' ', '-'));
    }
  });

  it('cites every value with a known source and says how it is known', () => {
    for (const row of rows) {
      const cited = everyCitedValue(row);
      expect(cited.length).toBeGreaterThanOrEqual(5);
      for (const { cited: each } of cited) {
        expect(Object.keys(bibliography)).toContain(each.source);
        expect(['read', 'quoted', 'calculated', 'memory', 'judgement']).toContain(each.known);
      }
    }
  });

  it('holds sensible sizes', () => {
    for (const row of rows) {
      expect([1, 2, 3, 4, 5]).toContain(row.vigour.value);
      expect(row.matureHeightM.value).toBeGreaterThanOrEqual(3);
      expect(row.matureHeightM.value).toBeLessThanOrEqual(60);
      expect(row.matureCrownM.value).toBeGreaterThanOrEqual(2);
      expect(row.matureCrownM.value).toBeLessThanOrEqual(30);
      expect(row.dbhGrowthCmPerYear.value).toBeGreaterThanOrEqual(0.5);
      expect(row.dbhGrowthCmPerYear.value).toBeLessThanOrEqual(2.5);
      // measured US urban trees: p10 16.0, p90 35.1 (McPherson and others 2016); Ulmus parvifolia reaches 35.9
      if (row.crownRatio !== null) expect(row.crownRatio.value).toBeGreaterThan(13);
      if (row.crownRatio !== null) expect(row.crownRatio.value).toBeLessThan(36);
    }
  });

  it('gives no plain name to two trees', () => {
    const owner = new Map<string, string>();
    for (const row of rows) {
      for (const name of row.common) {
        const key = squash(wordsOf(name));
        expect(owner.get(key) ?? row.key, name).toBe(row.key);
        owner.set(key, row.key);
      }
    }
  });
});

describe('values against the sources', () => {
  // NHBC Standards 2006, appendix 4.2-A, table 12
  it.each([
    ['quercus-robur', 20, 'high'],
    ['quercus-cerris', 24, 'high'],
    ['quercus-ilex', 16, 'high'],
    ['ulmus-procera', 24, 'high'],
    ['ulmus-glabra', 18, 'high'],
    ['populus-x-canadensis', 28, 'high'],
    ['populus-nigra-italica', 25, 'high'],
    ['salix-alba', 24, 'high'],
    ['salix-fragilis', 24, 'high'],
    ['salix-babylonica', 16, 'high'],
    ['x-hesperotropsis-leylandii', 20, 'high'],
    ['hesperocyparis-macrocarpa', 20, 'high'],
    ['fraxinus-excelsior', 23, 'moderate'],
    ['acer-pseudoplatanus', 22, 'moderate'],
    ['prunus-avium', 17, 'moderate'],
    ['prunus-laurocerasus', 8, 'moderate'],
    ['castanea-sativa', 24, 'moderate'],
    ['larix-decidua', 20, 'moderate'],
    ['sequoiadendron-giganteum', 30, 'moderate'],
    ['araucaria-araucana', 18, 'moderate'],
    ['corylus-avellana', 8, 'low'],
    ['sambucus-nigra', 10, 'low'],
    ['laburnum-anagyroides', 12, 'low'],
    ['morus-nigra', 9, 'low'],
    ['ficus-carica', 8, 'low'],
  ] as const)('%s: %d m, %s demand (NHBC 4.2 table 12)', (key, height, demand) => {
    expect(value(key, 'matureHeightM')).toBe(height);
    expect(value(key, 'waterDemand')).toBe(demand);
    expect(speciesRow(key).matureHeightM).toMatchObject({ source: 'nhbc-4.2', known: 'read' });
  });

  // Urban Tree Database: medians of crown over stem and growth, calculated from its table of trees
  it.each([
    ['acer-rubrum', 25.2, 1.79],
    ['quercus-virginiana', 25.8, 1.82],
    ['ginkgo-biloba', 22.8, 1.08],
    ['platanus-x-acerifolia', 27.9, 1.36],
  ] as const)('%s: crown %d stems, growth %d cm a year', (key, ratio, growth) => {
    expect(speciesRow(key).crownRatio?.value).toBe(ratio);
    expect(speciesRow(key).dbhGrowthCmPerYear.value).toBe(growth);
  });

  it('puts the worst of the utility list into the highest class', () => {
    for (const key of ['salix-babylonica', 'populus-alba', 'cinnamomum-camphora', 'ficus-macrophylla']) {
      expect(value(key, 'vigour')).toBe(5);
      expect(speciesRow(key).vigour).toMatchObject({ source: 'utility-root-list', known: 'judgement' });
    }
  });

  it('puts the planting options of the extension sheet into the lowest class', () => {
    for (const key of ['acer-palmatum', 'cercis-canadensis', 'cornus-florida'])
      expect(value(key, 'vigour')).toBe(1);
  });
});

describe('genus rows', () => {
  const species = (genus: string): SpeciesRow[] =>
    rows.filter((row) => row.rank === 'species' && row.botanical.startsWith(`${genus} `));

  it.each(['Acer', 'Quercus', 'Prunus', 'Ulmus', 'Pinus', 'Salix'])('%s lies within its species', (genus) => {
    const row = speciesRow(genus.toLowerCase());
    const vigours = species(genus).map((each) => each.vigour.value);
    expect(row.vigour.value).toBeGreaterThanOrEqual(Math.min(...vigours));
    expect(row.vigour.value).toBeLessThanOrEqual(Math.max(...vigours));
    // NHBC Standards 4.2, table 12, note 3: the greatest height listed
    expect(row.matureHeightM.value).toBe(Math.max(...species(genus).map((each) => each.matureHeightM.value)));
    expect(row.crownEquation).toBeNull();
  });

  it('takes crown and growth from the measured species, where there are any', () => {
    // medians of Acer campestre .. saccharum as measured: crowns 13.9 15.9 19.0 19.5 19.9 22.4
    expect(value('acer', 'matureCrownM')).toBeCloseTo((19.0 + 19.5) / 2, 9);
    // growth 0.80 1.47 1.60 1.70 1.79 2.19
    expect(speciesRow('acer').dbhGrowthCmPerYear.value).toBeCloseTo((1.6 + 1.7) / 2, 9);
    expect(speciesRow('salix').matureCrownM.known).toBe('judgement');
  });

  it('takes the highest water demand of the genus', () => {
    expect(value('quercus', 'waterDemand')).toBe('high');
    expect(value('ficus', 'waterDemand')).toBe('moderate');
    expect(value('betula', 'waterDemand')).toBe('low');
  });
});

/** The forms as the database's authors give them; c/2 inside the outer logarithm in loglogw1. */
function crownAt({ form, a, b, c }: CrownEquation, dbh: number): number {
  const logged = Math.log(dbh + 1);
  if (form === 'loglogw1') return Math.exp(a + b * Math.log(logged + c / 2));
  if (form === 'loglogw2') return Math.exp(a + b * Math.log(logged) + (Math.sqrt(dbh) * c) / 2);
  if (form === 'loglogw3') return Math.exp(a + b * Math.log(logged) + (dbh * c) / 2);
  if (form === 'expow1') return Math.exp(a + b * dbh + c / 2);
  return a + b * dbh + c * dbh * dbh;
}

describe('crown equations', () => {
  const withEquation = rows.flatMap((row) =>
    row.crownEquation === null ? [] : [{ key: row.key, eq: row.crownEquation.value }],
  );

  it('are there for the species whose published form is safe to use', () => {
    expect(withEquation.length).toBe(38);
  });

  it.each(withEquation)('$key rises from within its fitted range to near the top of it', ({ eq }) => {
    const stems = Array.from({ length: 200 }, (_, i) => 1 + i);
    const crowns = stems.map((stem) => crownAt(eq, stem));
    expect(crownAt(eq, 20)).toBeGreaterThan(eq.fittedMinM);
    expect(crownAt(eq, 20)).toBeLessThan(eq.fittedMaxM);
    expect(crownAt(eq, 40)).toBeGreaterThan(crownAt(eq, 20));
    // both ends of the range that the trees were measured over are crowns the equation gives
    expect(Math.max(...crowns)).toBeGreaterThan(0.97 * eq.fittedMaxM);
    expect(crownAt(eq, 1)).toBeLessThan(eq.fittedMinM + 0.7 + crownAt(eq, 5) - crownAt(eq, 1));
  });

  // worked values of the database's file TS6: crown at the file's own largest and smallest tree
  it('gives the published ends for London plane', () => {
    const eq = speciesRow('platanus-x-acerifolia').crownEquation?.value;
    expect(eq).toBeDefined();
    expect(crownAt(eq as CrownEquation, 61.76)).toBeCloseTo(14.63, 2);
    expect(crownAt(eq as CrownEquation, 2.4)).toBeCloseTo(0.78, 2);
  });

  it.each([
    ['acer-platanoides', 9.876],
    ['quercus-agrifolia', 10.056],
    ['platanus-x-acerifolia', 11.27],
  ] as const)('%s with a stem of 40 cm has a crown of %d m', (key, crown) => {
    const eq = speciesRow(key).crownEquation?.value;
    expect(crownAt(eq as CrownEquation, 40)).toBeCloseTo(crown, 2);
  });
});
