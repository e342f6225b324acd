import { describe, expect, it } from 'vitest';
import { stretchesInside } from '../../../packages/core/src/geometry/overlap.js';
import type { Polyline } from '../../../packages/core/src/geometry/polyline.js';

/** Along the x axis for 10 m, then up for 10 m. */
const bent: Polyline = {
  x: Float64Array.of(0, 10, 10),
  y: Float64Array.of(0, 0, 10),
  s: Float64Array.of(0, 10, 20),
};

describe('stretches of a line inside circles', () => {
  it('run on round a corner that lies inside', () => {
    expect(stretchesInside(bent, [{ x: 10, y: 0, radiusM: 4 }])).toEqual([[6, 14]]);
  });

  it('count once where circles overlap and apart where they do not', () => {
    const circles = [
      { x: 2, y: 0, radiusM: 1 },
      { x: 3, y: 0, radiusM: 1 },
      { x: 10, y: 8, radiusM: 1 },
    ];
    expect(stretchesInside(bent, circles)).toEqual([
      [1, 4],
      [17, 19],
    ]);
  });

  it('are none where no circle reaches', () => {
    expect(stretchesInside(bent, [{ x: 0, y: 10, radiusM: 9 }])).toEqual([]);
    expect(stretchesInside(bent, [])).toEqual([]);
  });
});
