import { expect, it } from 'vitest';
import { holds } from '../../../packages/core/src/line/holds.js';

it('a station on a border belongs to the segment that begins there, the end of the line to the last', () => {
  const segment = { fromM: 3, toM: 6 };
  const held = (last: boolean) => [2.9, 3, 4.5, 6, 6.1].map((at) => holds(segment, at, last));
  expect(held(false)).toEqual([false, true, true, false, false]);
  // past the end of the line there is nothing to hold
  expect(held(true).slice(0, 4)).toEqual([false, true, true, true]);
  // whatever rounding makes of a border
  expect(holds(segment, 3 - 1e-9, false)).toBe(true);
  expect(holds(segment, 6 - 1e-9, false)).toBe(false);
});
