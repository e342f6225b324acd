import { describe, expect, it } from 'vitest';
import { wordGroundBasis } from '../../../packages/core/src/explain/ground-words.js';
import { groundFromLevels } from '../../../packages/core/src/route/ground-levels.js';

const metres = (m: number): string => `${m.toFixed(2)} m`;
const words = (...levels: [number, number, number][]): string =>
  wordGroundBasis(groundFromLevels(levels.map(([x, y, elevationM]) => ({ x, y, elevationM }))).basis, metres);

describe('what ground elevations rest on, in words', () => {
  it('counts the levels and says how it goes between them', () => {
    expect(words()).toBe('no ground levels: nothing is said of fall and depth');
    expect(words([0, 0, 1])).toBe('one spot level tells no fall: take one more');
    expect(words([0, 0, 1], [9, 0, 2])).toBe(
      'from 2 spot levels, straight between them, no fall across taken',
    );
    expect(words([0, 0, 1], [9, 0, 2], [0, 9, 2])).toBe(
      'from 3 spot levels, a sloping plane bent to meet them',
    );
    expect(words([0, 0, 1], [9, 0, 2], [0, 9, 2], [9, 9, 3], [5, 4, 2.5])).toMatch(
      /^from 5 spot levels, .*; the others miss each by about 0\.\d\d m$/,
    );
    expect(wordGroundBasis({ kind: 'grid', cellM: 1 }, metres)).toBe('from a grid of heights every 1.00 m');
  });
});
