import { describe, expect, it } from 'vitest';
import { isTileAddress, pictureSources } from '../../../apps/map/src/draw/tile-address.js';

describe('an address of map tiles', () => {
  it('is a secure one with the three parts', () => {
    expect(isTileAddress('https://tiles.invalid/{z}/{x}/{y}.png')).toBe(true);
    for (const wrong of [
      'http://tiles.invalid/{z}/{x}/{y}.png',
      'https://tiles.invalid/{z}/{x}.png',
      'javascript:{z}{x}{y}',
      'https://a.invalid;script-src *//{z}/{x}/{y}',
      'https://{s}.tiles.invalid/{z}/{x}/{y}.png',
    ]) {
      expect(isTileAddress(wrong)).toBe(false);
    }
  });

  it('opens the rule for pictures to that one server, and without it to none', () => {
    const own = "img-src 'self' data: blob:";
    expect(pictureSources(null)).toBe(own);
    const tiles = { address: 'https://tiles.invalid/a/{z}/{x}/{y}.png', attribution: 'us' };
    expect(pictureSources(tiles)).toBe(`${own} https://tiles.invalid`);
  });
});
