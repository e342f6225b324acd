import { describe, expect, it } from 'vitest';
import { pipeRow } from '../../../packages/core/src/tables/pipes.js';
import { fromInches, toInches } from '../../../packages/core/src/units/length.js';
import { metres } from '../../../packages/core/src/units/quantity.js';
import { manningFull } from '../../../packages/core/src/water/manning.js';
import { type AreaBasis, pipeForArea } from '../../../packages/core/src/water/pipe-for-area.js';
import { pipesByRain } from '../../../packages/core/src/water/pipes-by-rain.js';
import { roughness } from '../../../packages/core/src/water/roughness.js';

const BASIS: AreaBasis = {
  material: 'pvc-sdr35',
  leastM: fromInches(4),
  rainMmPerHour: 100,
  runoff: 1,
  fall: 0.01,
};

describe('pipe by the rain of a site', () => {
  const pipe = { material: 'pvc-sdr35', sizeM: fromInches(4) } as const;

  it('is not said where the site says nothing of rain', () => {
    expect(pipesByRain({ rainMmPerHour: null }, pipe)).toBeNull();
  });

  it('is that of its area at the least fall it may be laid with', () => {
    const pipeFor = pipesByRain({ rainMmPerHour: 100 }, pipe, { minFall: 0.01 });
    for (const area of [40, 150, 300]) expect(pipeFor?.(area)).toEqual(pipeForArea(area, BASIS));
    const flatter = pipesByRain({ rainMmPerHour: 100 }, pipe, { minFall: 0.002 });
    expect(flatter?.(150).sizeM).toBeGreaterThan(pipeFor?.(100).sizeM as number);
  });
});

const sizeForArea = (areaM2: number, basis: AreaBasis): number => pipeForArea(areaM2, basis).sizeM;

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

  it('is one pipe of a bore that it has, where the table has one that is enough', () => {
    const { sideBySide, carriesM3s, flowM3s, boreM, sizeM } = pipeForArea(250, BASIS);
    expect(sideBySide).toBe(1);
    expect(carriesM3s).toBeGreaterThanOrEqual(flowM3s);
    expect(boreM).toBeGreaterThan(0.9 * sizeM);
    expect(boreM).toBeLessThan(1.1 * sizeM);
  });

  it('is the largest of the table where none is enough, with how many of them or what bore would be', () => {
    for (const area of [20_000, 1e5, 1e7]) {
      const { sizeM, sideBySide, carriesM3s, flowM3s, boreM } = pipeForArea(area, BASIS);
      const inches = pipeRow('pvc-sdr35').sizes.map(({ nominalIn }) => nominalIn);
      expect(toInches(sizeM)).toBeCloseTo(Math.max(...inches), 9);
      // 100 mm/h on 1 m2 are 1/36 l/s
      expect(flowM3s).toBeCloseTo(area / 36_000, 9);
      expect(sideBySide * carriesM3s).toBeGreaterThanOrEqual(flowM3s);
      expect((sideBySide - 1) * carriesM3s).toBeLessThan(flowM3s);
      // Manning 1891 by itself: one pipe of that bore carries it all
      const n = roughness({ perforated: false }, pipeRow('pvc-sdr35')).high;
      expect(manningFull(metres(boreM), BASIS.fall, n).flowM3s).toBeCloseTo(flowM3s, 6);
    }
  });
});
