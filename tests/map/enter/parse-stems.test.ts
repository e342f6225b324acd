import { describe, expect, it } from 'vitest';
import { parseStems } from '../../../apps/map/src/enter/parse-stems.js';

const inches = (typed: string) =>
  parseStems(typed, 'in')?.map((stemM) => Number((stemM / 0.0254).toFixed(6)));

describe('several trunks as they are typed', () => {
  it.each([
    ['6 + 8 + 5', [6, 8, 5]],
    ['6+8+5', [6, 8, 5]],
    ['6, 8, 5', [6, 8, 5]],
    ['6 8 5', [6, 8, 5]],
    ['6, 8, 5 in', [6, 8, 5]],
    ['6 and 8', [6, 8]],
    ['6,5 + 8', [6.5, 8]],
    ['25.4 cm + 8 in', [10, 8]],
    ['25.4 + 50.8 cm', [10, 20]],
    ['12', [12]],
  ])('%s', (typed, expected) => {
    expect(inches(typed)).toEqual(expected);
  });

  it.each(['', '+', '6 + x', '6 + 0', 'two', Array(51).fill('3').join(' + ')])('%j is not taken', (typed) => {
    expect(parseStems(typed, 'in')).toBeNull();
  });
});
