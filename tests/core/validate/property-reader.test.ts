import { describe, expect, it } from 'vitest';
import { IssueList } from '../../../packages/core/src/read/issue-list.js';
import {
  checkProperties,
  PropertyReader,
  tidy,
} from '../../../packages/core/src/validate/property-reader.js';
import { namesOf, quantities } from '../../../packages/core/src/validate/quantity-names.js';
import { featureSchemas } from '../../../packages/core/src/validate/schemas.js';

function read<T>(values: Readonly<Record<string, unknown>>, get: (reader: PropertyReader) => T) {
  const issues = new IssueList();
  const value = get(new PropertyReader(values, { file: 'f', index: 3 }, 'a', issues));
  return { value, issues: issues.all() };
}

describe('tidied properties', () => {
  it('drop blanks and make numbers of numbers that travelled as text', () => {
    expect(tidy({ dbh_cm: '30', canopy_radius_m: ' 4.5 ', height_m: '', note: '  ', a: null, b: 7 })).toEqual(
      {
        dbh_cm: 30,
        canopy_radius_m: 4.5,
        b: 7,
      },
    );
    expect(tidy({ depth_start_m: '-1e-1', at_m: '+2.5E+0' })).toEqual({ depth_start_m: -0.1, at_m: 2.5 });
  });

  it('leave names, dates and words as they are', () => {
    const values = {
      id: '007',
      name: '12',
      installed: '2004',
      note: '3',
      material: '4',
      wet: 'dry',
      at_m: '5 m',
    };
    expect(tidy(values)).toEqual(values);
  });
});

describe('a quantity', () => {
  it('is SI whatever unit it came in', () => {
    expect(read({ dbh_cm: 30 }, (r) => r.quantity(quantities.dbh)).value).toBeCloseTo(0.3, 12);
    expect(read({ dbh_in: 12 }, (r) => r.quantity(quantities.dbh)).value).toBeCloseTo(0.3048, 12);
    expect(read({ size_mm: 110 }, (r) => r.quantity(quantities.size)).value).toBeCloseTo(0.11, 12);
    expect(read({ serves_ft2: 100 }, (r) => r.quantity(quantities.serves)).value).toBeCloseTo(9.290304, 9);
    expect(read({}, (r) => r.quantity(quantities.dbh))).toEqual({ value: null, issues: [] });
  });

  it('may be given twice where both agree within a hundredth', () => {
    expect(read({ piece_m: 3, piece_ft: 9.9 }, (r) => r.quantity(quantities.piece))).toEqual({
      value: 3,
      issues: [],
    });
  });

  it('is the first of two that disagree, which is said', () => {
    const { value, issues } = read({ piece_m: 3, piece_ft: 9 }, (r) => r.quantity(quantities.piece));
    expect(value).toBe(3);
    expect(issues).toEqual([
      {
        code: 'units-disagree',
        severity: 'warning',
        first: 'piece_m',
        second: 'piece_ft',
        place: { file: 'f', index: 3, feature: 'a', path: 'properties.piece_ft' },
      },
    ]);
  });

  it('may be a list that is made one', () => {
    const sum = (r: PropertyReader) => r.list(quantities.stems, (v) => v.reduce((a, b) => a + b, 0));
    expect(read({ stems_cm: [10, 20] }, sum).value).toBeCloseTo(0.3, 12);
    expect(read({ stems_in: [10] }, sum).value).toBeCloseTo(0.254, 12);
    expect(read({}, sum).value).toBeNull();
  });

  // the site file's rule: _m or _ft, _cm or _in, _mm or _in, _m2 or _ft2
  it('always has a metric name and one of feet or inches', () => {
    for (const quantity of Object.values(quantities)) {
      const units = namesOf(quantity).map((name) => name.slice(name.lastIndexOf('_') + 1));
      expect(units.some((unit) => ['m', 'cm', 'mm', 'm2'].includes(unit))).toBe(true);
      expect(units.some((unit) => ['ft', 'in', 'ft2'].includes(unit))).toBe(true);
    }
  });
});

describe('a year', () => {
  it('is read from a date or a number', () => {
    expect(read({ installed: '2004-07-02' }, (r) => r.year('installed')).value).toBeCloseTo(2004.5, 2);
    expect(read({ installed: 2004 }, (r) => r.year('installed')).value).toBe(2004.5);
  });

  it('that is none is an issue and missing', () => {
    const { value, issues } = read({ installed: '2004-02-31' }, (r) => r.year('installed'));
    expect(value).toBeNull();
    expect(issues).toMatchObject([
      { code: 'bad-value', got: '2004-02-31', expected: 'an ISO date or a year' },
    ]);
  });
});

describe('checked properties', () => {
  function check(kind: keyof typeof featureSchemas, values: Readonly<Record<string, unknown>>) {
    const issues = new IssueList();
    const place = { file: 'f', index: 0, feature: 'a', path: '' };
    return { passed: checkProperties(featureSchemas[kind], values, place, issues), issues: issues.all() };
  }

  it('say what was expected and what stood there', () => {
    expect(check('tree', { dbh_cm: 'thick' }).issues).toMatchObject([
      { code: 'bad-value', expected: 'a number', got: '"thick"', place: { path: 'properties.dbh_cm' } },
    ]);
    expect(check('tree', { dbh_cm: -3 }).issues).toMatchObject([{ expected: 'more than 0', got: '-3' }]);
    expect(check('drain', { depth_start_m: -1 }).issues).toMatchObject([{ expected: 'at least 0' }]);
    expect(check('finding', { drain: 'a', seen: 'fine', blocked_pct: 101 }).issues).toMatchObject([
      { expected: 'at most 100' },
    ]);
    expect(check('drain', { wet: 'damp' }).issues).toMatchObject([
      { expected: 'one of dry, often, standing' },
    ]);
    expect(check('tree', { stems_cm: [10, 'x'] }).issues).toMatchObject([
      { place: { path: 'properties.stems_cm.1' } },
    ]);
  });

  it('do not take a sliver for a piece of pipe', () => {
    expect(check('drain', { piece_m: 1e-6 })).toMatchObject({
      passed: false,
      issues: [{ code: 'bad-value', expected: 'at least 0.1', place: { path: 'properties.piece_m' } }],
    });
    expect(check('drain', { piece_m: 0.3 }).passed).toBe(true);
  });

  it('say what is missing', () => {
    expect(check('fitting', {}).issues).toMatchObject([
      { code: 'missing-value', place: { path: 'properties.type' } },
    ]);
    expect(check('finding', { seen: 'fine' }).issues).toMatchObject([{ code: 'missing-value' }]);
  });

  it('let through what they do not know', () => {
    expect(check('tree', { colour: 'green', nested: { a: [1] } })).toEqual({ passed: true, issues: [] });
  });
});
