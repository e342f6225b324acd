import { describe, expect, it } from 'vitest';
import { genusFactor } from '../../../packages/core/src/roots/genus-factor.js';
import { protectionRadius, reachOf, zonesOf } from '../../../packages/core/src/roots/zones.js';
import { metres } from '../../../packages/core/src/units/quantity.js';
import { kind } from './kind.js';

const oak = kind();
const palm = kind({ form: 'palm' });
const stem = metres(0.4);
const crown = metres(5);

describe('circles of a tree', () => {
  it('are those of its trunk and crown', () => {
    const zones = zonesOf(oak, stem, crown, 1);
    expect(zones.dripline).toBe(5);
    expect(zones.trunkMultiple).toBeCloseTo(4.8, 12);
    // 0.64 x 20^0.42 (AS 4970-2009)
    expect(zones.structural).toBeCloseTo(2.252, 3);
    // (38 x 0.2 + 15 x 0.2 + 2.9 x 5) / 2 = 12.55 m before the genus
    expect(zones.reach).toBeCloseTo(12.55 * genusFactor(oak), 9);
  });

  it('of a palm go by the crown alone: a metre outside it, and twice as far', () => {
    const { trunkMultiple, reach } = zonesOf(palm, stem, crown, 1);
    expect([trunkMultiple, reach]).toEqual([6, 10]);
  });

  it('reach further or less far with the soil', () => {
    expect(reachOf(oak, stem, crown, 1.1)).toBeCloseTo(1.1 * reachOf(oak, stem, crown, 1), 12);
    expect(reachOf(palm, stem, crown, 0.9)).toBeCloseTo(9, 12);
  });
});

describe('the protection circle by the rule of the site', () => {
  it.each([
    ['trunk-multiple', 0.4, 4.8],
    ['trunk-multiple', 0.1, 1.2],
    ['trunk-multiple-min-2m', 0.4, 4.8],
    ['trunk-multiple-min-2m', 0.1, 2],
    // a foot for each inch is 12 to 1
    ['foot-per-inch', 0.4, 4.8],
    ['foot-per-inch', 1.5, 18],
    ['foot-and-half-per-inch', 0.4, 7.2],
    ['tolerance-and-age', 1.5, 18],
  ] as const)('%s, a trunk of %d m: %d m', (rule, stemM, radiusM) => {
    expect(protectionRadius(rule, oak, metres(stemM), crown)).toBeCloseTo(radiusM, 9);
  });

  it('of a palm is a metre outside the crown by any rule', () => {
    expect(protectionRadius('foot-per-inch', palm, stem, crown)).toBe(6);
  });
});
