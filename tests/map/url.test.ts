import { describe, expect, it } from 'vitest';
import { readHash, type Shared, writeHash } from '../../apps/map/src/url.js';

describe('the address of the page', () => {
  it('comes back as it was written, for every mix of site, stretch and units', () => {
    const sites = [null, 'corner-lot', 'small-campus'];
    const stretches = [null, 'main/4', 'a & b=c/12', 'Zulauf süd/3', '100 %/1'];
    const units = [null, 'us', 'metric'] as const;
    for (const site of sites) {
      for (const stretch of stretches) {
        for (const unit of units) {
          const shared: Shared = { site, stretch, units: unit };
          expect(readHash(writeHash(shared))).toEqual(shared);
        }
      }
    }
  });

  it('is empty where there is nothing to share', () => {
    expect(writeHash({ site: null, stretch: null, units: null })).toBe('');
  });

  it('keeps the slash of a stretch readable', () => {
    expect(writeHash({ site: 'corner-lot', stretch: 'tail/3', units: null })).toBe(
      '#site=corner-lot&stretch=tail/3',
    );
  });

  it('takes nothing from an address that makes no sense', () => {
    const nothing = { site: null, stretch: null, units: null };
    expect(readHash('')).toEqual(nothing);
    expect(readHash('#')).toEqual(nothing);
    expect(readHash('#units=furlongs&site=&%%%')).toEqual(nothing);
  });
});
