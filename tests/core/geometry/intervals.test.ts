import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lengthWithin, unionOf } from '../../../packages/core/src/geometry/intervals.js';

const interval = fc.tuple(fc.nat(60), fc.nat(20)).map(([from, length]) => [from, from + length] as const);
const lists = fc.array(interval, { maxLength: 12 });

describe('the union of stretches', () => {
  it('joins what overlaps or touches and keeps the rest apart', () => {
    expect(
      unionOf([
        [5, 8],
        [0, 2],
        [2, 3],
        [7, 9],
      ]),
    ).toEqual([
      [0, 3],
      [5, 9],
    ]);
    expect(unionOf([])).toEqual([]);
    expect(
      unionOf([
        [0, 10],
        [2, 3],
      ]),
    ).toEqual([[0, 10]]);
  });

  // whole metres: a unit cell is covered or not
  it('covers just the cells that one of them covers', () => {
    fc.assert(
      fc.property(lists, (list) => {
        const union = unionOf(list);
        for (let cell = 0; cell < 80; cell++) {
          const covered = list.some(([from, to]) => from <= cell && cell + 1 <= to);
          expect(lengthWithin(union, cell, cell + 1)).toBe(covered ? 1 : 0);
        }
        union.forEach(([from], i) => {
          expect(from).toBeGreaterThan(union[i - 1]?.[1] ?? -1);
        });
      }),
      { seed: 4, numRuns: 200 },
    );
  });
});

describe('the length within two stations', () => {
  it('counts parts only as far as they lie inside', () => {
    expect(
      lengthWithin(
        [
          [0, 3],
          [5, 9],
        ],
        2,
        6,
      ),
    ).toBe(2);
    expect(
      lengthWithin(
        [
          [0, 3],
          [5, 9],
        ],
        3,
        5,
      ),
    ).toBe(0);
    expect(
      lengthWithin(
        [
          [0, 3],
          [5, 9],
        ],
        -10,
        20,
      ),
    ).toBe(7);
  });
});
