import { describe, expect, it } from 'vitest';
import { planeAt } from '../../../packages/core/src/geometry/plane.js';
import { linesOfRoute } from '../../../packages/core/src/route/route-line.js';

/** 10 m east and 10 m north, perforated but for 7 m about the bend. */
const laid = (solid: readonly (readonly [number, number])[]) =>
  linesOfRoute({
    plane: planeAt(-93, 45),
    points: [
      [0, 0],
      [10, 0],
      [10, 10],
    ],
    lengthM: 20,
    bends: [{ atM: 10, turnDegrees: 90, fittings: [45, 45], radiusM: null }],
    coverAt: (stationM) => 0.5 + 0.01 * stationM,
    laidYear: 2026,
    asked: { material: 'hdpe-corrugated', sizeM: 0.1, perforated: true },
    solid,
  });

describe('the lines of a route', () => {
  it('change their pipe where it is to be solid, with a coupling there, and each fitting on its own part', () => {
    const { drains, fittings } = laid([[5, 12]]);
    expect(
      drains.map(({ id, perforated, depthStartM, depthEndM }) => [id, perforated, depthStartM, depthEndM]),
    ).toEqual([
      ['route-1', true, 0.5, 0.55],
      ['route-2', false, 0.55, 0.62],
      ['route-3', true, 0.62, 0.7],
    ]);
    expect(fittings.map(({ id, type, drain }) => [id, type, drain])).toEqual([
      ['route-bend-1', 'bend', 'route-2'],
      ['route-bend-1-2', 'bend', 'route-2'],
      ['route-coupling-1', 'coupling', 'route-1'],
      ['route-coupling-2', 'coupling', 'route-2'],
    ]);
  });

  it('are one where the pipe is the same all along', () => {
    expect(laid([]).drains.map(({ id, perforated }) => [id, perforated])).toEqual([['route-1', true]]);
    expect(laid([[0, 20]]).drains.map(({ id, perforated }) => [id, perforated])).toEqual([
      ['route-1', false],
    ]);
  });
});
