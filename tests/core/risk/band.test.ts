import { describe, expect, it } from 'vitest';
import type { Band, KnownTrouble } from '../../../packages/core/src/model/result.js';
import type { Seen } from '../../../packages/core/src/model/site.js';
import { bandOf } from '../../../packages/core/src/risk/band.js';

const seen = (what: Seen): KnownTrouble => ({
  seen: what,
  year: 2025,
  blockedShare: null,
  reel: { from: 'B1', direction: 'upstream', atM: 3, toM: 4 },
});

describe('the band of a segment', () => {
  it.each<[number, Band]>([
    [0, 'leave'],
    [4.49, 'leave'],
    [4.5, 'watch'],
    [5, 'watch'],
    [19.49, 'watch'],
    [20, 'inspect'],
    [49.49, 'inspect'],
    [49.5, 'act'],
    [50, 'act'],
    [100, 'act'],
  ])('at a score of %d is %s where nothing was seen', (score, band) => {
    expect(bandOf(score, null, false)).toBe(band);
  });

  it.each<[Seen, Band, Band, Band]>([
    ['mass', 'act', 'act', 'act'],
    ['full', 'act', 'act', 'act'],
    ['crushed', 'act', 'act', 'act'],
    ['fine', 'inspect', 'inspect', 'act'],
    ['sag', 'inspect', 'inspect', 'act'],
    ['offset', 'inspect', 'inspect', 'act'],
  ])('with %s seen is %s at 1, %s at 30 and %s at 60', (what, at1, at30, at60) => {
    expect([1, 30, 60].map((score) => bandOf(score, seen(what), false))).toEqual([at1, at30, at60]);
    expect(bandOf(1, seen(what), true)).toBe(at1);
  });

  it('cannot be told where too little is known, short of what would be dug anyway', () => {
    expect([0, 10, 30].map((score) => bandOf(score, null, true))).toEqual([
      'cannot-say',
      'cannot-say',
      'cannot-say',
    ]);
    expect(bandOf(60, null, true)).toBe('act');
  });
});
