import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nthSmallest } from '../../../packages/core/src/risk/nth-smallest.js';

describe('the value at a place', () => {
  it('is that of the sorted values, for any values and any place; they stay as they are', () => {
    const rows = fc.array(fc.oneof(fc.double({ noNaN: true }), fc.constantFrom(0, 1, 1, 2)), {
      minLength: 1,
      maxLength: 200,
    });
    fc.assert(
      fc.property(rows, fc.nat(), (list, pick) => {
        const values = Float64Array.from(list);
        const n = pick % list.length;
        // 0 and -0 are one place
        expect(nthSmallest(values, n) === Float64Array.from(list).sort()[n]).toBe(true);
        expect([...values]).toEqual(list);
      }),
    );
  });

  it('is none outside', () => {
    expect(() => nthSmallest(new Float64Array(0), 0)).toThrow(RangeError);
    for (const n of [3, -1, 0.5]) expect(() => nthSmallest(new Float64Array(3), n)).toThrow(RangeError);
  });
});
