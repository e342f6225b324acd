import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exactNumbers } from '../../../apps/map/src/keep/exact-numbers.js';

describe('numbers in a file', () => {
  it('become texts where a double would lose digits (IEEE 754: whole numbers up to 2^53)', () => {
    expect(exactNumbers('{"id":9007199254740993,"b":9007199254740992}')).toBe(
      '{"id":"9007199254740993","b":9007199254740992}',
    );
    expect(exactNumbers('[-12345678901234567890, 1e400, -1E+999, 1e-400, 0e999]')).toBe(
      '["-12345678901234567890", "1e400", "-1E+999", "1e-400", 0e999]',
    );
  });

  it('stay as they are inside a text, and where a double holds them', () => {
    const text = '{"a \\"9007199254740993":"9007199254740993 \\\\","b":[0.1,-122.12345678901234,1e300]}';
    expect(exactNumbers(text)).toBe(text);
  });

  it('never change what else a file says', () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 4 }), (text) => {
        const padded = `[${text},"${'1'.repeat(20)}"]`;
        expect(JSON.parse(exactNumbers(padded))).toEqual(JSON.parse(padded));
      }),
      { numRuns: 300, seed: 3 },
    );
  });

  it('keep every digit of any whole number', () => {
    fc.assert(
      fc.property(fc.bigInt({ min: -(10n ** 20n), max: 10n ** 20n }), (value) => {
        const [kept] = JSON.parse(exactNumbers(`[${value}]`)) as [number | string];
        expect(String(kept)).toBe(String(value));
      }),
      { numRuns: 500, seed: 4 },
    );
  });

  it('are passed over in a text that breaks off, without harm', () => {
    for (const text of ['{"a":"9007199254740993', '{"a":9007199254740993', '"\\"\\"\\', '-', '[1e999']) {
      expect(() => exactNumbers(text)).not.toThrow();
    }
  });
});
