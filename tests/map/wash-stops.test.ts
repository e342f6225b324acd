import { rootDensity } from '@rootreach/core';
import { describe, expect, it } from 'vitest';
import { washStops } from '../../apps/map/src/layers/wash-stops.js';

describe('the wash round a tree', () => {
  it('fades as the root curve does, until it is let down at the reach', () => {
    const stem = washStops[0]?.opacity ?? 0;
    for (const { at, opacity } of washStops.filter((stop) => stop.at <= 0.9)) {
      expect(opacity / stem).toBeCloseTo(rootDensity(at, 1), 12);
    }
    expect(washStops.at(-1)).toEqual({ at: 1, opacity: 0 });
  });

  it('never grows outward', () => {
    const opacities = washStops.map((stop) => stop.opacity);
    expect([...opacities].sort((a, b) => b - a)).toEqual(opacities);
  });
});
