import { describe, expect, it } from 'vitest';
import { rank } from '../../../packages/core/src/risk/rank.js';
import { stretchOdds, withRate } from '../../../packages/core/src/works/stretch-odds.js';
import { AS_OF, unseen } from './corner-lot.js';

const site = unseen();
const scoring = { asOf: AS_OF };

const entriesOf = (horizonYears: number, id: string): number => {
  const found = rank(site, { asOf: AS_OF, horizonYears }).segments.find((segment) => segment.id === id);
  if (!found) throw new Error(`no segment ${id}`);
  const { joints, slots, crush } = found.expectedEntries;
  return joints + slots + crush;
};
const segment = rank(site, scoring).segments.find(({ id }) => id === 'tail/3');
if (!segment) throw new Error('no segment');
const [fromM, toM] = [segment.startM, segment.endM];
const odds = stretchOdds(site, [{ drainId: 'tail', fromM, toM }], scoring);
const by = (year: number): number => odds.expectedBy[year] as number;

describe('entries expected in a stretch', () => {
  it('are those of the ranking over each horizon', () => {
    expect(odds.expectedBy).toHaveLength(51);
    expect(by(0)).toBe(0);
    for (const years of [1, 3, 6, 10, 17, 25, 50]) {
      expect(by(years) / entriesOf(years, 'tail/3'), `${years} years`).toBeCloseTo(1, 9);
    }
  });

  it('lie on straight lines between and never fall', () => {
    for (const [a, b] of [
      [10, 17],
      [25, 50],
    ] as const) {
      const middle = (a + b) / 2;
      const [low, high] = [Math.floor(middle), Math.ceil(middle)];
      expect((by(low) + by(high)) / 2).toBeCloseTo((by(a) + by(b)) / 2, 12);
    }
    for (let year = 1; year <= 50; year++) expect(by(year)).toBeGreaterThanOrEqual(by(year - 1));
  });

  it('are half of them in half a segment, and twice in a stretch told twice', () => {
    const half = stretchOdds(site, [{ drainId: 'tail', fromM, toM: (fromM + toM) / 2 }], scoring);
    expect((half.expectedBy[10] as number) / by(10)).toBeCloseTo(0.5, 9);
    const part = { drainId: 'tail', fromM, toM };
    const twice = stretchOdds(site, [part, part], scoring);
    expect((twice.expectedBy[10] as number) / by(10)).toBeCloseTo(2, 9);
  });

  it('are none of its neighbours, whose borders it touches', () => {
    const lines = rank(site, scoring).segments.filter(({ drainId }) => drainId === 'tail');
    const sum = lines.reduce((all, { id }) => all + entriesOf(10, id), 0);
    const whole = stretchOdds(site, [{ drainId: 'tail', fromM: 0, toM: 1000 }], scoring);
    expect(whole.expectedBy[10]).toBeCloseTo(sum, 9);
    expect(by(10)).toBeLessThan(sum);
  });
});

describe('the chance of a stretch', () => {
  it('is 1 - exp(-entries), inside its range, and larger over a longer time', () => {
    const { '10': ten, '25': later } = odds.chance;
    expect(ten.likely).toBeCloseTo(1 - Math.exp(-by(10)), 9);
    expect(later.likely).toBeCloseTo(1 - Math.exp(-by(25)), 9);
    for (const { low, likely, high } of [ten, later]) {
      expect(low).toBeLessThan(likely);
      expect(high).toBeGreaterThan(likely);
    }
    expect(later.likely).toBeGreaterThan(ten.likely);
  });

  it('is nothing where there is no stretch', () => {
    const none = stretchOdds(site, [], scoring);
    expect(none.chance['10']).toEqual({ low: 0, likely: 0, high: 0 });
    expect(none.expectedBy.every((value) => value === 0)).toBe(true);
  });
});

describe('a certain rate on top of a chance', () => {
  it('leaves what neither brings: 1 - (1 - p) exp(-rate)', () => {
    const { low, likely, high } = withRate({ low: 0, likely: 0.5, high: 1 }, 0.2);
    expect(low).toBeCloseTo(1 - Math.exp(-0.2), 12);
    expect(likely).toBeCloseTo(1 - 0.5 * Math.exp(-0.2), 12);
    expect(high).toBeGreaterThan(0.999999);
    expect(high).toBeLessThanOrEqual(1);
  });
});
