import { describe, expect, it } from 'vitest';
import { searchSpecies } from '../../../apps/map/src/enter/search-species.js';
import { resolveSpecies } from '../../../packages/core/src/names/resolve-species.js';
import { speciesNames } from '../../../packages/core/src/names/species-names.js';

const names = speciesNames();
const first = (typed: string) => searchSpecies(names, typed)[0]?.key;

describe('the search for a kind of tree', () => {
  it('finds it by a few letters of either name', () => {
    expect(first('acer rub')).toBe('acer-rubrum');
    expect(first('red map')).toBe('acer-rubrum');
    expect(first('RED  MAPLE')).toBe('acer-rubrum');
    expect(searchSpecies(names, 'wil').every(({ common }) => common.some((name) => /wil/i.test(name)))).toBe(
      true,
    );
    expect(searchSpecies(names, 'wil').length).toBeGreaterThan(2);
  });

  it('puts beginnings before later words, and knows words in any order', () => {
    const found = searchSpecies(names, 'elm', 30);
    const begins = found.map(({ botanical, common }) =>
      [botanical, ...common].some((name) => name.toLowerCase().startsWith('elm')),
    );
    expect(begins.lastIndexOf(true)).toBeLessThan(begins.includes(false) ? begins.indexOf(false) : Infinity);
    expect(searchSpecies(names, 'maple red').map(({ key }) => key)).toContain('acer-rubrum');
  });

  it('finds nothing for nothing, and for what no tree is called', () => {
    expect(searchSpecies(names, '')).toEqual([]);
    expect(searchSpecies(names, '   ')).toEqual([]);
    expect(searchSpecies(names, 'zzqx')).toEqual([]);
  });

  it('offers no name that the reader of site files would take for another tree', () => {
    expect(names.length).toBeGreaterThan(150);
    const strayed = names.filter(({ key, botanical }) => resolveSpecies(botanical).key !== key);
    expect(strayed.map(({ key }) => key)).toEqual([]);
  });
});
