import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseLength } from '../../../apps/map/src/enter/parse-length.js';
import { readLength, readStems, writeLength, writeStems } from '../../../apps/map/src/enter/quantity.js';

const written = (key: Parameters<typeof writeLength>[0], typed: string, about = false) => {
  const length = parseLength(typed, 'in');
  if (!length) throw new Error(`not understood: ${typed}`);
  return Object.fromEntries(
    Object.entries(writeLength(key, length, about)).filter(([, value]) => value !== undefined),
  );
};

describe('a length among the properties of a feature', () => {
  it('stands under the unit it was typed in, and under no other', () => {
    expect(written('dbh', '14')).toEqual({ dbh_in: 14 });
    expect(written('dbh', '36 cm')).toEqual({ dbh_cm: 36 });
    expect(writeLength('dbh', { lengthM: 0.36, value: 36, unit: 'cm' }, false)).toHaveProperty(
      'dbh_in',
      undefined,
    );
  });

  it('goes to the other unit of its family where the contract has no name for its own', () => {
    expect(written('depthStart', '30 in')).toEqual({ depth_start_ft: 2.5 });
    expect(written('depthStart', '80 cm')).toEqual({ depth_start_m: 0.8 });
    expect(written('size', '0.1 m')).toEqual({ size_mm: 100 });
    expect(written('piece', '10 ft')).toEqual({ piece_ft: 10 });
  });

  it('carries the mark of an estimate', () => {
    expect(written('girth', '40', true)).toEqual({ girth_in: 40, girth_about: true });
  });

  it('is read back in metres, whatever unit it stands in', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('dbh', 'girth', 'depthEnd', 'piece', 'size', 'at', 'elevation'),
        fc.constantFrom('in', 'ft', 'mm', 'cm', 'm'),
        fc.integer({ min: 1, max: 400 }),
        (key, unit, value) => {
          const typed = parseLength(`${value} ${unit}`, 'm');
          const back = typed && readLength(writeLength(key, typed, false), key);
          expect(back).toBeCloseTo(typed?.lengthM ?? NaN, 5);
        },
      ),
    );
  });

  it('holds several trunks in one list', () => {
    expect(writeStems([0.254, 0.127], 'us')).toMatchObject({ stems_in: [10, 5], stems_cm: undefined });
    expect(readStems({ stems_cm: [20, 10] })).toEqual([0.2, 0.1]);
    expect(readStems({})).toBeNull();
  });
});
