import { describe, expect, it } from 'vitest';
import { oddsOverYears, rank, readSite } from '../../../packages/core/src/index.js';
import { smallSite } from '../../cli/small-site.js';

const { site } = readSite([{ name: 'yard', text: smallSite() }]);
const options = { asOf: '2026-11-25' };
const worst = rank(site, { ...options, top: 1 }).segments[0]?.id as string;

describe('odds over the years', () => {
  const points = oddsOverYears(site, worst, options) ?? [];

  it('start at nought and run to 25 years', () => {
    expect(points[0]).toEqual({ yearsAhead: 0, chance: { low: 0, likely: 0, high: 0 } });
    expect(points.at(-1)?.yearsAhead).toBe(25);
  });

  it('rise with the years, low, likely and high', () => {
    for (const part of ['low', 'likely', 'high'] as const) {
      const run = points.map(({ chance }) => chance[part]);
      expect(run).toEqual([...run].sort((a, b) => a - b));
      expect(run.at(-1)).toBeGreaterThan(run[1] as number);
    }
  });

  it('are those of the ranking at its own horizon', () => {
    const ranked = rank(site, { ...options, horizonYears: 10, only: worst }).segments[0];
    expect(points.find(({ yearsAhead }) => yearsAhead === 10)?.chance).toEqual(ranked?.chance);
  });

  it('are none where there is no such segment', () => {
    expect(oddsOverYears(site, 'main/999', options)).toBeNull();
  });

  it('refuse years that are none', () => {
    expect(() => oddsOverYears(site, worst, options, [-1])).toThrow(RangeError);
  });
});
