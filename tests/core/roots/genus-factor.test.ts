import { describe, expect, it } from 'vitest';
import { genusFactor, genusOf } from '../../../packages/core/src/roots/genus-factor.js';
import { speciesRow, speciesTable } from '../../../packages/core/src/tables/species.js';
import { kind } from './kind.js';

const named = (botanical: string) => ({ ...kind(), botanical });

describe('the genus of a tree', () => {
  it('is the first word of its name, less the sign of a cross', () => {
    expect(genusOf(named('Acer rubrum'))).toBe('Acer');
    expect(genusOf(named('Quercus'))).toBe('Quercus');
    expect(genusOf(named('x Hesperotropsis leylandii'))).toBe('Hesperotropsis');
    expect(genusOf(named('× Hesperotropsis leylandii'))).toBe('Hesperotropsis');
    expect(genusOf(named('×Chitalpa tashkentensis'))).toBe('Chitalpa');
    expect(genusOf(named(''))).toBe('');
  });
});

describe('how far a genus roots', () => {
  // a willow, poplar or birch of the survey (Cutler & Richardson 1989) did damage further than its size explains
  it('is more than 1', () => {
    for (const genus of ['Populus', 'Salix', 'Betula']) {
      expect(genusFactor(named(`${genus} nova`)), genus).toBeGreaterThan(1);
    }
  });

  it('is 1 for what the survey does not hold, and stays between 0.7 and 1.5', () => {
    expect(genusFactor(named('Ginkgo biloba'))).toBe(1);
    const all = [...speciesTable.values()].map((row) => genusFactor({ ...row }));
    expect(Math.min(...all)).toBeGreaterThanOrEqual(0.7);
    expect(Math.max(...all)).toBeLessThanOrEqual(1.5);
  });

  it('is one for all of a genus', () => {
    expect(genusFactor(named('Acer novum'))).toBe(genusFactor(speciesRow('acer-rubrum')));
  });
});
