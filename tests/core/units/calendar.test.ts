import { describe, expect, it } from 'vitest';
import { yearOf } from '../../../packages/core/src/units/calendar.js';

describe('a date as a fractional year', () => {
  it('takes a bare year at its middle, as number or text', () => {
    expect(yearOf(2019)).toBe(2019.5);
    expect(yearOf('2019')).toBe(2019.5);
    expect(yearOf(' 2019 ')).toBe(2019.5);
  });

  it('takes a bare month at its 15th', () => {
    expect(yearOf('2019-05')).toBe(yearOf('2019-05-15'));
  });

  it('counts days from new year, in leap years too', () => {
    expect(yearOf('2019-01-01')).toBe(2019);
    expect(yearOf('2019-12-31')).toBeCloseTo(2019 + 364 / 365, 12);
    expect(yearOf('2020-12-31')).toBeCloseTo(2020 + 365 / 366, 12);
    expect(yearOf('2020-02-29')).toBeCloseTo(2020 + 59 / 366, 12);
  });

  it('takes a date with a time as that day', () => {
    expect(yearOf('2019-05-03T14:30:00Z')).toBe(yearOf('2019-05-03'));
  });

  it.each([
    '',
    'soon',
    '19',
    '2019-13',
    '2019-00-10',
    '2019-02-30',
    '2021-02-29',
    '3000',
    '0999',
    '2019/05/03',
    '03.05.2019',
    '2019-5-3',
  ])('knows no date in "%s"', (text) => {
    expect(yearOf(text)).toBeUndefined();
  });

  it('knows no date in a number that is no year', () => {
    expect(yearOf(2019.5)).toBeUndefined();
    expect(yearOf(-5)).toBeUndefined();
    expect(yearOf(Number.NaN)).toBeUndefined();
  });

  it('keeps the order of days', () => {
    const days = ['2019', '2019-08', '2019-12-31', '2020-01-01', '2020-02-29', '2020-03-01'].map(yearOf);
    expect(days).toEqual([...days].sort((a, b) => (a ?? 0) - (b ?? 0)));
    expect(new Set(days).size).toBe(days.length);
  });
});
