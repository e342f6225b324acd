import { describe, expect, it } from 'vitest';
import type { TreeHarm } from '../../../packages/core/src/model/tree-harm.js';
import type { Choice, OwnerLimits } from '../../../packages/core/src/model/works.js';
import { breaksOf } from '../../../packages/core/src/works/limits.js';

interface Given {
  readonly now?: number | null;
  readonly likely?: number | null;
  readonly felled?: string | null;
  readonly digs?: readonly { readonly bored: boolean }[];
  readonly reasons?: TreeHarm['reasons'];
}

function breaks(limits: OwnerLimits, given: Given = {}): string[] {
  const { now = 500, likely = 0.1, felled = null, digs = [], reasons = [] } = given;
  const choice = {
    now,
    chance:
      likely === null ? null : { '10': { low: 0, likely, high: 1 }, '25': { low: 0, likely: 1, high: 1 } },
    tree: { felled },
    digs,
  } as unknown as Choice;
  return breaksOf(limits, choice, [{ reasons } as Partial<TreeHarm> as TreeHarm]);
}

describe('limits of the owner', () => {
  it('are kept up to the limit itself', () => {
    expect(breaks({ mostNow: 500, mostChance10: 0.1 })).toEqual([]);
    expect(breaks({ mostNow: 499.99, mostChance10: 0.0999 })).toEqual(['most-now', 'most-chance-10']);
  });

  it('take a chance that nobody worked out for certain trouble', () => {
    expect(breaks({ mostChance10: 0.9 }, { likely: null })).toEqual(['most-chance-10']);
    expect(breaks({ mostNow: 0 }, { now: null })).toEqual([]);
  });

  it('keep trees unless said otherwise', () => {
    expect(breaks({}, { felled: 'oak' })).toEqual(['keep-trees']);
    expect(breaks({ keepTrees: false }, { felled: 'oak' })).toEqual([]);
  });

  it('dig within three trunk diameters of no tree that must stand (Smiley 2008)', () => {
    expect(breaks({}, { reasons: ['inside-3-diameters'] })).toEqual(['tree-must-stand']);
    expect(breaks({ keepTrees: false }, { reasons: ['inside-3-diameters'] })).toEqual([]);
    expect(breaks({}, { reasons: ['severs-over-25', 'inside-structural'] })).toEqual([]);
  });

  it('allow a bore where no trench is wanted', () => {
    expect(breaks({ noTrench: true }, { digs: [{ bored: true }] })).toEqual([]);
    expect(breaks({ noTrench: true }, { digs: [{ bored: true }, { bored: false }] })).toEqual(['no-trench']);
    expect(breaks({}, { digs: [{ bored: false }] })).toEqual([]);
  });
});
