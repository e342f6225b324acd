import { describe, expect, it } from 'vitest';
import { fromInches, toInches } from '../../../packages/core/src/units/length.js';
import { type SizeBasis, sizeForArea } from '../../../packages/core/src/water/size-for-area.js';
import { sizesByRain } from '../../../packages/core/src/water/sizes-by-rain.js';

const BASIS: SizeBasis = {
  material: 'pvc-sdr35',
  leastM: fromInches(4),
  rainMmPerHour: 100,
  runoff: 1,
  fall: 0.01,
};

describe('pipe by the rain of a site', () => {
  const pipe = { material: 'pvc-sdr35', sizeM: fromInches(4) } as const;

  it('is not said where the site says nothing of rain', () => {
    expect(sizesByRain({ rainMmPerHour: null }, pipe)).toBeNull();
  });

  it('is that of its area at the least fall it may be laid with', () => {
    const sizeFor = sizesByRain({ rainMmPerHour: 100 }, pipe, { minFall: 0.01 });
    for (const area of [40, 150, 300]) expect(sizeFor?.(area)).toBe(sizeForArea(area, BASIS));
    const flatter = sizesByRain({ rainMmPerHour: 100 }, pipe, { minFall: 0.002 });
    expect(flatter?.(150)).toBeGreaterThan(sizeFor?.(100) as number);
  });
});

describe('pipe for an area', () => {
  it('is the smallest that carries its rain', () => {
    // 4 in, bore 0.100 m or so, n 0.011 to 0.013 at 1 %: 4 to 5 l/s, which 100 mm/h bring from 140 to 190 m2
    expect(toInches(sizeForArea(120, BASIS))).toBeCloseTo(4, 6);
    expect(toInches(sizeForArea(250, BASIS))).toBeCloseTo(6, 6);
  });

  it('grows with area and rain and shrinks with fall, and is never below the least', () => {
    let before = 0;
    for (const area of [0, 50, 100, 200, 400, 800, 1600]) {
      const size = sizeForArea(area, BASIS);
      expect(size).toBeGreaterThanOrEqual(before);
      expect(size).toBeGreaterThanOrEqual(fromInches(4) - 1e-9);
      expect(sizeForArea(area, { ...BASIS, rainMmPerHour: 200 })).toBeGreaterThanOrEqual(size);
      expect(sizeForArea(area, { ...BASIS, fall: 0.04 })).toBeLessThanOrEqual(size);
      before = size;
    }
    expect(toInches(sizeForArea(0, { ...BASIS, leastM: fromInches(6) }))).toBeCloseTo(6, 6);
  });

  it('is the largest of the table where none is enough', () => {
    expect(sizeForArea(1e7, BASIS)).toBe(sizeForArea(1e8, BASIS));
  });
});
