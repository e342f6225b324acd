import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { grouped } from '../../apps/map/src/words/grouped.js';

describe('whole numbers with commas', () => {
  it("are written as the platform's own formatter (CLDR, en-US) writes them", () => {
    const platform = new Intl.NumberFormat('en-US');
    fc.assert(
      fc.property(fc.nat(), (n) => {
        expect(grouped(n)).toBe(platform.format(n));
      }),
    );
    for (const n of [0, 7, 999, 1000, 12_345, 100_000, 1_000_000, 2_147_483_647])
      expect(grouped(n)).toBe(platform.format(n));
  });
});
