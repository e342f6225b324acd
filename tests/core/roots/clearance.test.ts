import { describe, expect, it } from 'vitest';
import { clearanceOf, isEager } from '../../../packages/core/src/roots/clearance.js';
import { solidStretches } from '../../../packages/core/src/roots/clearance-stretches.js';
import { drainClearance } from '../../../packages/core/src/tables/drain-clearance.js';
import { speciesRow, speciesTable } from '../../../packages/core/src/tables/species.js';

describe('clearance of a perforated drain', () => {
  it('knows every species that it names', () => {
    const { eagerSpecies, eagerByKin } = drainClearance;
    for (const key of [...eagerSpecies.value, ...eagerByKin.value])
      expect(speciesTable.has(key), key).toBe(true);
  });

  it('takes a tree of unknown kind for an eager one', () => {
    const unknown = [...speciesTable.values()].filter(({ rank }) => rank === 'unknown');
    expect(unknown.length).toBeGreaterThan(0);
    for (const row of unknown) expect(isEager(row)).toBe(true);
  });

  it('does not take a namesake for kin', () => {
    expect(clearanceOf({ key: 'salixoides-nova', rank: 'species' })).toBe(drainClearance.otherM.value);
    expect(isEager(speciesRow('acer-saccharum'))).toBe(false);
  });
});

describe('stretches to be laid without holes', () => {
  it('are those within 50 ft of a stem', () => {
    const line = { x: Float64Array.of(0, 100), y: Float64Array.of(0, 0), s: Float64Array.of(0, 100) };
    const [stretch, ...more] = solidStretches(line, [{ x: 40, y: 9 }]);
    const half = Math.sqrt(15.24 ** 2 - 81);
    expect(more).toEqual([]);
    expect(stretch?.[0]).toBeCloseTo(40 - half, 9);
    expect(stretch?.[1]).toBeCloseTo(40 + half, 9);
    expect(solidStretches(line, [{ x: 40, y: 16 }])).toEqual([]);
  });
});
