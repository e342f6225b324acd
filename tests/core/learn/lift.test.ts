import { describe, expect, it } from 'vitest';
import { foundWithin, type Lift, liftOf, type Ranked } from '../../../packages/core/src/learn/lift.js';
import { seeded } from '../../scenes/seeded.js';

const item = (lengthM: number, found: boolean, score: number): Ranked => ({ lengthM, found, score });

function curveOf(items: readonly Ranked[]): Lift {
  const lift = liftOf(items);
  if (lift === null) throw new Error('no curve');
  return lift;
}

describe('lift curve', () => {
  // by hand: 2 of 10 m hold the first find, the next 3 m nothing, the last 5 m the second
  it('runs through the shares of metres and finds, worst first', () => {
    const { metres, found, area } = curveOf([item(3, false, 5), item(5, true, 1), item(2, true, 9)]);
    expect(metres).toEqual([0, 0.2, 0.5, 1]);
    expect(found).toEqual([0, 0.5, 0.5, 1]);
    expect(area).toBeCloseTo(0.2 * 0.25 + 0.3 * 0.5 + 0.5 * 0.75, 12);
  });

  it('is the diagonal where all scores are the same', () => {
    const { metres, found, area } = curveOf([item(3, false, 1), item(5, true, 1), item(2, true, 1)]);
    expect([metres, found]).toEqual([
      [0, 1],
      [0, 1],
    ]);
    expect(area).toBe(0.5);
  });

  it('does not depend on the order of what is tied', () => {
    const items = [item(3, false, 1), item(5, true, 1), item(2, true, 2), item(1, false, 2)];
    expect(curveOf([...items].reverse())).toEqual(curveOf(items));
  });

  it('has no curve where nothing was found or there are no metres', () => {
    expect(liftOf([item(3, false, 1)])).toBeNull();
    expect(liftOf([])).toBeNull();
    expect(liftOf([item(0, true, 1)])).toBeNull();
  });

  // the area is the chance that a find drawn at random stands worse than a metre drawn at random, ties counting half
  it('has for its area the share of pairs of a find and a metre that are in the right order', () => {
    const random = seeded(3);
    const items = Array.from({ length: 60 }, () =>
      item(0.5 + 3 * random(), random() < 0.3, Math.floor(8 * random())),
    );
    let pairs = 0;
    let right = 0;
    for (const find of items.filter((i) => i.found)) {
      for (const { lengthM, score } of items) {
        pairs += lengthM;
        right += lengthM * (find.score > score ? 1 : find.score === score ? 0.5 : 0);
      }
    }
    expect(curveOf(items).area).toBeCloseTo(right / pairs, 12);
  });
});

describe('share found within the worst metres', () => {
  const lift = curveOf([item(2, true, 9), item(3, false, 5), item(5, true, 1)]);

  it.each([
    [0, 0],
    [0.1, 0.25],
    [0.2, 0.5],
    [0.3, 0.5],
    [0.75, 0.75],
    [1, 1],
  ])('of %d is %d', (share, found) => {
    expect(foundWithin(lift, share)).toBeCloseTo(found, 12);
  });

  it('is all of them where the shares of metres come to a rounding below 1', () => {
    expect(foundWithin({ metres: [0, 0.4, 1 - 1e-16], found: [0, 0.5, 1], area: 0.6 }, 1)).toBe(1);
  });
});
