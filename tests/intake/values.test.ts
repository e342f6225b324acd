import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { headerOf } from '../../packages/intake/src/columns/header.js';
import { speciesOfCode } from '../../packages/intake/src/take/species-of-code.js';
import { isMissing } from '../../packages/intake/src/values/missing.js';
import { pipeSizeOf } from '../../packages/intake/src/values/pipe-size.js';
import { metresOf, sizeOf } from '../../packages/intake/src/values/size.js';
import { whenOf } from '../../packages/intake/src/values/when.js';

const metres = (text: string, unit: 'cm' | 'in') => {
  const size = sizeOf(text);
  return size === null ? null : Number(metresOf(size, unit).toFixed(4));
};

describe('a trunk as written in an inventory', () => {
  it.each([
    ['24', 'in', 0.6096],
    ['12,5 cm', 'in', 0.125],
    ['6-12 in', 'cm', 0.2286],
    ['6 to 12', 'in', 0.2286],
    ['0-6"', 'cm', 0.0762],
    ['15 bis 30', 'cm', 0.225],
    ['>24', 'in', 0.701],
    ['24+', 'in', 0.701],
    ['under 6"', 'cm', 0.0762],
    ['31 - 40 cm', 'in', 0.355],
  ] as const)('%s in a column of %s is %f m', (text, unit, expected) => {
    expect(metres(text, unit)).toBeCloseTo(expected, 3);
  });

  it.each(['large', '12 trees', '', 'A-12', '3-', '12/15/2019'])('%s is no size', (text) => {
    expect(sizeOf(text)).toBeNull();
  });

  it('reads back any number with any unit', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 999, noNaN: true }),
        fc.constantFrom('cm', 'in', 'mm', 'm', 'ft'),
        (value, unit) => {
          const size = sizeOf(`${value.toFixed(2)} ${unit}`);
          expect(size?.unit).toBe(unit);
          expect(size?.low).toBeCloseTo(value, 1);
        },
      ),
    );
  });
});

describe('a pipe size as written in a town file', () => {
  it.each([
    ['12', 'in', 0.3048],
    ['12in', 'mm', 0.3048],
    ['12"', 'mm', 0.3048],
    ['3/4"', 'mm', 0.01905],
    ['1 1/2 in', 'mm', 0.0381],
    ['DN150', 'in', 0.15],
    ['2\'-0"', 'mm', 0.6096],
    ['2\'6"', 'mm', 0.762],
    ['150 mm', 'in', 0.15],
  ] as const)('%s in a column of %s is %f m', (text, unit, expected) => {
    expect(pipeSizeOf(text, unit)).toEqual({ sizeM: expect.closeTo(expected, 5), shape: 'round' });
  });

  it('takes 2\'-0" x 3\'-0" as the circle of the same area', () => {
    const box = pipeSizeOf('2\'-0" x 3\'-0"', 'in');
    expect(box?.shape).toBe('box');
    expect((Math.PI / 4) * (box?.sizeM ?? 0) ** 2).toBeCloseTo(0.6096 * 0.9144, 6);
  });

  it.each(['unknown', '0', 'x', '12 x', '2x3x4'])('%s is no size', (text) => {
    expect(pipeSizeOf(text, 'in')).toBeNull();
  });
});

describe('a date as written in a database', () => {
  it.each([
    [1972, 1972],
    ['1972', 1972],
    ['2015-06-04', '2015-06-04'],
    ['06/04/2015', '2015-06-04'],
    ['25/12/2015', '2015-12-25'],
    ['04.06.2015', '2015-06-04'],
    // 39,312,000,000 ms after 1970-01-01 is 455 days: 1971-04-01
    [39312000000, '1971-04-01'],
    // day 42,159 of a spreadsheet (Office Open XML, 1900 date system)
    [42159, '2015-06-04'],
    ['1972-00-00', 1972],
    ['2015-02-30', '2015-02'],
  ])('%s is %s', (value, expected) => {
    expect(whenOf(value)).toBe(expected);
  });

  it.each([0, -1, 'soon', '99/99/99', 3, '1066-10-14'])('%s is none', (value) => {
    expect(whenOf(value)).toBeNull();
  });
});

describe('nothing known', () => {
  it.each([null, undefined, '', ' ', 'None', 'NA', 'n/a', 'NULL', Number.NaN, '-'])('is %s', (value) => {
    expect(isMissing(value)).toBe(true);
  });
  it.each([0, '0', 'Norway maple', false])('is not %s', (value) => {
    expect(isMissing(value)).toBe(false);
  });
});

describe('a column name', () => {
  it.each([
    ['DBH (cm)', 'dbh', 'cm'],
    ['tree_dbh', 'tree dbh', null],
    ['TrunkDiam_in', 'trunk diam', 'in'],
    ['Stammumfang [cm]', 'stammumfang', 'cm'],
    ['Diamètre', 'diametre', null],
    ['AvgCdia (m)', 'avg cdia', 'm'],
    ['in', 'in', null],
  ])('%s says %s in %s', (column, words, unit) => {
    expect(headerOf(column)).toMatchObject({ words, unit });
  });
});

describe('a species code', () => {
  it('is two letters of genus and species, with a number where two share it', () => {
    expect(speciesOfCode('ACPL')).toBe('Acer platanoides');
    expect(speciesOfCode('acpl2')).toBe('Acer platanoides');
    expect(speciesOfCode('XXXX')).toBeNull();
    expect(speciesOfCode('MAPLE')).toBeNull();
  });
});
