import type { Units } from '@rootreach/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LengthUnit } from '../../../apps/map/src/enter/length-units.js';
import { parseLength } from '../../../apps/map/src/enter/parse-length.js';
import { bareUnit, type Measured, showLength } from '../../../apps/map/src/enter/show-length.js';

const inches = (typed: string, bare: LengthUnit = 'in') =>
  (parseLength(typed, bare)?.lengthM ?? NaN) / 0.0254;

// NIST SP 811, appendix B: 1 ft = 0.3048 m, 1 in = 25.4 mm, both exact.
describe('a length as it is typed', () => {
  it.each([
    [`2' 6"`, 30],
    [`2'6"`, 30],
    [`2'6`, 30],
    ['2’ 6”', 30],
    ['2′ 6″', 30],
    [`2'-6"`, 30],
    ['2 ft 6 in', 30],
    ['2ft 6in', 30],
    ['2 feet and 6 inches', 30],
    [`2' 6 1/2"`, 30.5],
    [`2' 6½"`, 30.5],
    ['30', 30],
    ['30 in', 30],
    ['30"', 30],
    [`30''`, 30],
    ['2.5 ft', 30],
    [`2.5'`, 30],
    ['6 1/2 in', 6.5],
    ['½ in', 0.5],
    ['.5', 0.5],
    ['6½', 6.5],
    ['762 mm', 30],
    ['76.2 cm', 30],
    ['76,2cm', 30],
    ['0.762 m', 30],
    ['0,762 metres', 30],
    ['2 pies 6 pulgadas', 30],
    ['0.762 metros', 30],
  ])('%s is %d inches', (typed, expected) => {
    expect(inches(typed)).toBeCloseTo(expected, 9);
  });

  it('has the unit of the field where it names none', () => {
    expect(parseLength('30', 'cm')).toEqual({ lengthM: 0.3, value: 30, unit: 'cm' });
    expect(parseLength('30', 'ft')?.lengthM).toBeCloseTo(9.144, 12);
    expect(parseLength('-3.5', 'm')?.lengthM).toBe(-3.5);
  });

  it.each([
    '',
    ' ',
    'deep',
    '3 x',
    '3 furlongs',
    `2' 13"`,
    `2.5' 6"`,
    '1,200',
    '1 2',
    '3/0',
    'NaN',
    '1e3',
    '--3',
    '3 4 in',
  ])('%j is not taken for one', (typed) => {
    expect(parseLength(typed, 'in')).toBeNull();
  });

  it('does not hang or throw on anything', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 400 }), (typed) => {
        const length = parseLength(typed, 'in');
        expect(length === null || Number.isFinite(length.lengthM)).toBe(true);
      }),
    );
  });
});

/** Half of the last place that a field shows, metres. */
const ROUNDING: Readonly<Record<Measured, Readonly<Record<Units, number>>>> = {
  ground: { us: 0.005 * 0.3048, metric: 0.0005 },
  depth: { us: 0.005 * 0.0254, metric: 0.0005 },
  trunk: { us: 0.005 * 0.0254, metric: 0.0005 },
  pipe: { us: 0.005 * 0.0254, metric: 0.0005 },
  level: { us: 0.0005 * 0.3048, metric: 0.0005 },
};

describe('a length as its field shows it', () => {
  it('is read back as the same length, and shown the same again', () => {
    const measured = fc.constantFrom<Measured>('ground', 'depth', 'trunk', 'pipe', 'level');
    const units = fc.constantFrom<Units>('us', 'metric');
    fc.assert(
      fc.property(
        measured,
        units,
        fc.double({ min: 0.001, max: 400, noNaN: true }),
        (kind, unit, lengthM) => {
          const shown = showLength(lengthM, kind, unit);
          const back = parseLength(shown, bareUnit(kind, unit));
          expect(Math.abs((back?.lengthM ?? NaN) - lengthM)).toBeLessThanOrEqual(
            ROUNDING[kind][unit] * 1.000001,
          );
          expect(showLength(back?.lengthM ?? NaN, kind, unit)).toBe(shown);
        },
      ),
    );
  });

  it('is said as the trade says it', () => {
    expect(showLength(0.762, 'depth', 'us')).toBe('30 in');
    expect(showLength(1.5748, 'depth', 'us')).toBe(`5' 2"`);
    expect(showLength(1.524, 'depth', 'us')).toBe('5 ft');
    expect(showLength(0.8, 'depth', 'metric')).toBe('80 cm');
    expect(showLength(1.25, 'depth', 'metric')).toBe('1.25 m');
    expect(showLength(0.1016, 'pipe', 'us')).toBe('4 in');
    expect(showLength(0.1, 'pipe', 'metric')).toBe('100 mm');
    expect(showLength(-1.5, 'level', 'metric')).toBe('-1.5 m');
  });
});
