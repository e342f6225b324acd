import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isEmptyPatch, listPatch, patchedList } from '../../apps/map/src/list-patch.js';

const rows = fc.array(fc.nat(40), { maxLength: 30 });

describe('patches of lists', () => {
  it('make one list of the other, whatever was moved, put in, taken out or exchanged', () => {
    fc.assert(
      fc.property(rows, rows, (before, now) => {
        const known = new Map<number, { n: number }>();
        const row = (n: number) => {
          const found = known.get(n) ?? { n };
          known.set(n, found);
          return found;
        };
        const [a, b] = [[...new Set(before)].map(row), [...new Set(now)].map(row)];
        const patch = listPatch(a, b);
        expect(patchedList(a, structuredClone(patch))).toEqual(b);
        expect(patch.made.every((one) => !a.includes(one))).toBe(true);
        expect(isEmptyPatch(patch, a)).toBe(a.length === b.length && a.every((one, i) => one === b[i]));
      }),
      { seed: 7, numRuns: 200 },
    );
  });

  it('send one row where one was exchanged', () => {
    const before = Array.from({ length: 1000 }, (_, n) => ({ n }));
    const now = before.map((row) => (row.n === 500 ? { n: -1 } : row));
    expect(listPatch(before, now).made).toEqual([{ n: -1 }]);
  });
});
