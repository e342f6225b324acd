import { describe, expect, it } from 'vitest';
import { speciesRow } from '../../../packages/core/src/tables/species.js';
import { surveyTable } from '../../../packages/core/src/tables/survey.js';

describe('the survey of root damage', () => {
  it('names for every genus a species of the table that stands for it', () => {
    for (const row of surveyTable) {
      const reference = speciesRow(row.referenceSpecies);
      expect(reference.rank).toBe('species');
      expect(reference.botanical).toContain(row.genus);
    }
  });

  // distances within which 75 % of the cases lay, as a householders' reprint of the survey gives them
  it.each([
    ['Quercus', 13],
    ['Populus', 15],
    ['Salix', 11],
    ['Ulmus', 12],
    ['Tilia', 8],
    ['Acer', 9],
    ['Platanus', 7.5],
    ['Fagus', 9],
    ['Betula', 7],
    ['Chamaecyparis', 3.5],
  ] as const)('%s: %d m', (genus, metres) => {
    expect(surveyTable.find((row) => row.genus === genus)?.distance75M.value).toBe(metres);
  });

  it('has each genus once and says which distances are from memory', () => {
    expect(new Set(surveyTable.map((row) => row.genus)).size).toBe(surveyTable.length);
    const remembered = surveyTable
      .filter((row) => row.distance75M.known === 'memory')
      .map((row) => row.genus);
    expect(remembered).toEqual(['Fraxinus', 'Malus', 'Pyrus', 'Robinia']);
  });
});
