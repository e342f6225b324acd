import { describe, expect, it } from 'vitest';
import { normals, seedFrom } from '../../../packages/core/src/risk/draws.js';

// test vectors of the authors of the hash (Fowler, Noll & Vo), 32 bit FNV-1a, from memory
describe('a number from a text', () => {
  it.each([
    ['', 0x811c9dc5],
    ['a', 0xe40c292c],
    ['foobar', 0xbf9cf968],
  ])('of "%s" is that of the published vectors', (text, hash) => {
    expect(seedFrom(text, 0) >>> 0).toBe(hash);
  });

  it('differs by seed', () => {
    expect(seedFrom('main', 1)).not.toBe(seedFrom('main', 2));
  });
});

describe('normal numbers', () => {
  const take = (seed: number, n: number): number[] => Array.from({ length: n }, normals(seed));

  it('are the same for a seed and others for another', () => {
    expect(take(7, 20)).toEqual(take(7, 20));
    expect(take(7, 20)).not.toEqual(take(8, 20));
  });

  // 20,000 numbers: the mean is off by 0.007, the deviation by 0.005, a share of a tenth by 0.002 at one sigma
  it('have the mean, the deviation and the tails of a standard normal', () => {
    const z = take(3, 20_000);
    const mean = z.reduce((a, b) => a + b, 0) / z.length;
    const sd = Math.sqrt(z.reduce((a, b) => a + (b - mean) ** 2, 0) / z.length);
    expect(Math.abs(mean)).toBeLessThan(0.03);
    expect(Math.abs(sd - 1)).toBeLessThan(0.02);
    expect(Math.abs(z.filter((v) => v > 1.2816).length / z.length - 0.1)).toBeLessThan(0.01);
    expect(Math.abs(z.filter((v) => v < -1.2816).length / z.length - 0.1)).toBeLessThan(0.01);
  });
});
