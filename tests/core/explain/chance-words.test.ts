import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bandMeaning, wordChance } from '../../../packages/core/src/explain/chance-words.js';

const words = (low: number, likely: number, high: number): string => wordChance({ low, likely, high });

describe('the words for a chance', () => {
  it('count in ten', () => {
    expect(words(0.31, 0.54, 0.78)).toBe('about 5 in 10, could be 3 to 8');
    expect(words(0.46, 0.5, 0.54)).toBe('about 5 in 10');
  });

  it('say no stretch is certain, at either end', () => {
    expect(words(0, 0, 0)).toBe('fewer than 1 in 10');
    expect(words(0.001, 0.01, 0.04)).toBe('fewer than 1 in 10');
    expect(words(0.001, 0.01, 0.2)).toBe('fewer than 1 in 10, could be up to 2');
    expect(words(1, 1, 1)).toBe('nearly 10 in 10');
    expect(words(0.7, 0.97, 1)).toBe('nearly 10 in 10, could be down to 7');
  });

  it('change from the one to the other at a half in ten', () => {
    expect(words(0.049, 0.049, 0.049)).toBe('fewer than 1 in 10');
    expect(words(0.05, 0.05, 0.05)).toBe('about 1 in 10');
    expect(words(0.949, 0.949, 0.949)).toBe('about 9 in 10');
    expect(words(0.951, 0.951, 0.951)).toBe('nearly 10 in 10');
  });

  it('never say none, nor ten of ten, of any chance there is', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(share, share, share, (a, b, c) => {
        const [low, likely, high] = [a, b, c].sort((x, y) => x - y);
        const text = words(low ?? 0, likely ?? 0, high ?? 0);
        expect(text).not.toMatch(/\b0\b|about 10|NaN|undefined/);
        expect(text).toMatch(/ in 10/);
      }),
      { seed: 10, numRuns: 300 },
    );
  });
});

describe('the meaning of a band', () => {
  it('is said for every band', () => {
    expect(Object.keys(bandMeaning).sort()).toEqual(['act', 'cannot-say', 'inspect', 'leave', 'watch']);
    for (const meaning of Object.values(bandMeaning)) expect(meaning.length).toBeGreaterThan(8);
  });
});
