import { describe, expect, it } from 'vitest';
import { isSameValue, keepSame } from '../../../packages/core/src/risk/same-value.js';

class Named {
  constructor(readonly name: string) {}
}

describe('two values', () => {
  it.each<[string, unknown, unknown]>([
    ['not a number', Number.NaN, Number.NaN],
    ['nothing', null, null],
    ['objects, however their members are ordered', { a: 1, b: [2, { c: 3 }] }, { b: [2, { c: 3 }], a: 1 }],
    ['columns of numbers', Float64Array.of(1, Number.NaN), Float64Array.of(1, Number.NaN)],
    ['empty lists', [], []],
  ])('are the same: %s', (_, a, b) => {
    expect(isSameValue(a, b)).toBe(true);
  });

  it.each<[string, unknown, unknown]>([
    ['a number and its text', 1, '1'],
    ['nought and minus nought', 0, -0],
    ['nothing and an empty object', null, {}],
    ['an empty object and nothing', {}, null],
    ['an object and nothing said', {}, undefined],
    ['a list and the object with its members', [1], { 0: 1 }],
    ['a list and the start of it', [1, 2], [1]],
    ['a list and a longer one', [1], [1, 2]],
    ['columns of other widths', Float64Array.of(1), Float32Array.of(1)],
    ['columns that differ at the end', Float64Array.of(1, 2), Float64Array.of(1, 3)],
    ['a member more', { a: 1 }, { a: 1, b: 2 }],
    ['a member less', { a: 1, b: 2 }, { a: 1 }],
    ['another member that holds nothing', { a: undefined }, { b: undefined }],
    ['members deep down', { a: [{ b: 1 }] }, { a: [{ b: 2 }] }],
    ['objects of two kinds', new Named('a'), { name: 'a' }],
  ])('are not the same: %s', (_, a, b) => {
    expect(isSameValue(a, b)).toBe(false);
  });
});

describe('rows kept from before', () => {
  const row = (id: string, value = 0) => ({ id, value });
  const before = [row('a'), row('b'), row('c')];

  it('are the very list where all hold the same', () => {
    expect(keepSame(before, before)).toBe(before);
    expect(keepSame(before, [row('a'), row('b'), row('c')])).toBe(before);
  });

  it('are the very rows where one has changed', () => {
    const now = [row('a'), row('b', 1), row('c')];
    const kept = keepSame(before, now);
    expect(kept).not.toBe(before);
    expect(kept.map((one) => before.indexOf(one))).toEqual([0, -1, 2]);
    expect(kept[1]).toBe(now[1]);
  });

  it.each<[string, string[]]>([
    ['one is gone', ['a', 'c']],
    ['the last is gone', ['a', 'b']],
    ['one came first', ['new', 'a', 'b', 'c']],
    ['one came last', ['a', 'b', 'c', 'new']],
    ['they stand in another order', ['c', 'a', 'b']],
  ])('are found by their id where %s', (_, ids) => {
    const kept = keepSame(
      before,
      ids.map((id) => row(id)),
    );
    expect(kept.map(({ id }) => id)).toEqual(ids);
    for (const one of kept) expect(before.includes(one)).toBe(one.id !== 'new');
  });
});
