import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseDate } from '../../../apps/map/src/enter/parse-date.js';

describe('a date as it is typed', () => {
  it.each([
    ['2004', { value: 2004, about: false }],
    ['2004-05', { value: '2004-05', about: false }],
    ['2004-05-31', { value: '2004-05-31', about: false }],
    ['about 2004', { value: 2004, about: true }],
    ['~2004', { value: 2004, about: true }],
    ['c. 1990', { value: 1990, about: true }],
    ['about 20 years ago', { value: 2006, about: true }],
    ['20 years ago', { value: 2006, about: true }],
    ['2 years ago', { value: 2024, about: false }],
    ['15 yrs old', { value: 2011, about: true }],
    ['1990s', { value: 1995, about: true }],
    ["1990's", { value: 1995, about: true }],
    ['hace unos 20 años', { value: 2006, about: true }],
    ['hace 20 años', { value: 2006, about: true }],
  ])('%s', (typed, expected) => {
    expect(parseDate(typed, 2026)).toEqual(expected);
  });

  it.each(['', 'long ago', '5/6/2004', '2004-13-01', '2004-02-30', '2031', '99', '20040', 'about'])(
    '%j is not taken for one',
    (typed) => {
      expect(parseDate(typed, 2026)).toBeNull();
    },
  );

  it('counts back as many years as were said', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 150 }), fc.integer({ min: 1990, max: 2090 }), (years, now) => {
        expect(parseDate(`about ${years} years ago`, now)).toEqual({ value: now - years, about: true });
      }),
    );
  });
});
