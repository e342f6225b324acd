import { describe, expect, it } from 'vitest';
import {
  bibliography,
  type CautionConditions,
  cautionsFor,
  cautionTable,
  wordCaution,
} from '../../../packages/core/src/index.js';

const FOOT_M = 0.3048;
const codes = (conditions: CautionConditions) => cautionsFor(conditions).map(({ code }) => code);
const inTrench = (feet: number, more: CautionConditions = {}) =>
  codes({ digging: true, trenchDepthM: feet * FOOT_M, unstableGround: false, ...more });

// 29 CFR 1926.652(a)(1)(ii): no protective system only where a trench is less than 5 ft deep and a competent
// person sees no sign of a cave-in; 651(c)(2): a way out from 4 ft; 651(j)(2): spoil 2 ft back
describe('a trench', () => {
  it('needs a protective system at exactly 5 ft, and not at 4.9 ft in sound ground', () => {
    expect(inTrench(5)).toContain('trench-walls');
    expect(inTrench(4.9)).not.toContain('trench-walls');
  });

  it('needs one at any depth in ground that may cave in', () => {
    expect(inTrench(2, { unstableGround: true })).toContain('trench-walls');
  });

  it('needs a ladder from 4 ft', () => {
    expect(inTrench(4)).toContain('trench-ladder');
    expect(inTrench(3.9)).not.toContain('trench-ladder');
  });

  it('keeps its spoil back and starts with a locate request however shallow it is', () => {
    expect(inTrench(0.5)).toEqual(expect.arrayContaining(['spoil-back', 'locate-utilities']));
  });

  it('of unknown depth counts as deep', () => {
    for (const conditions of [{ digging: true }, { digging: true, trenchDepthM: null }]) {
      expect(codes(conditions)).toEqual(expect.arrayContaining(['trench-walls', 'trench-ladder']));
    }
  });

  it('that nobody digs raises nothing', () => {
    expect(codes({ trenchDepthM: 3, unstableGround: true })).toEqual(['screening-only', 'local-code']);
  });
});

// Smiley 2008: no trench within three trunk diameters; ANSI A300 Part 8's guide: three to six; BS 5837: twelve
describe('a trench beside a tree', () => {
  const beside = (trunkDiametersAway: number | null) =>
    codes({ digging: true, trenchDepthM: 0.5, trunkDiametersAway }).filter((code) =>
      ['cutting-near-trunk', 'arborist-first', 'dig-with-care-near-trees'].includes(code),
    );

  it.each([
    [2.9, ['cutting-near-trunk', 'arborist-first', 'dig-with-care-near-trees']],
    [3, ['arborist-first', 'dig-with-care-near-trees']],
    [6, ['dig-with-care-near-trees']],
    [12, []],
    [null, ['cutting-near-trunk', 'arborist-first', 'dig-with-care-near-trees']],
  ])('at %s trunk diameters', (away, expected) => {
    expect(beside(away)).toEqual(expected);
  });
});

describe('other acts', () => {
  it.each([
    [{ sawing: true }, 'saws-in-soil'],
    [{ chemicals: true }, 'chemicals-in-drains'],
    [{ entry: true }, 'no-entry'],
    [{ discharge: true }, 'water-to-others'],
    [{ rootCutting: true }, 'protected-trees'],
  ] as const)('%o raises its own caution and not those of others', (conditions, code) => {
    expect(codes(conditions)).toContain(code);
    expect(codes({})).not.toContain(code);
  });
});

describe('the table of cautions', () => {
  it('ends every list with whose word counts', () => {
    expect(codes({}).at(-1)).toBe('local-code');
    expect(codes({ digging: true, sawing: true, discharge: true }).at(-1)).toBe('local-code');
  });

  it.each(cautionTable.map((row) => [row.code, row] as const))(
    '%s has a source and both languages',
    (code, row) => {
      expect(Object.keys(bibliography)).toContain(row.source);
      const [en, es] = [wordCaution(code, 'en'), wordCaution(code, 'es')];
      expect(en).toMatch(/^[A-Z].*\.$/);
      expect(es).toMatch(/^[A-ZÁÉÍÓÚ].*\.$/);
      expect(es).not.toBe(en);
    },
  );

  it('gives the same figures in both languages', () => {
    const figures = (text: string) => [...text.matchAll(/\d+(?:\.\d+)?/g)].map(([n]) => n).sort();
    for (const { texts } of cautionTable) expect(figures(texts.es)).toEqual(figures(texts.en));
  });

  it('throws at a code that is in no table', () => {
    expect(() => wordCaution('made-up' as never, 'en')).toThrow(RangeError);
  });
});
