import { describe, expect, it } from 'vitest';
import { pipeRow } from '../../../packages/core/src/tables/pipes.js';
import { fromInches, toInches } from '../../../packages/core/src/units/length.js';
import { pipeBore } from '../../../packages/core/src/water/pipe-bore.js';
import { roughness } from '../../../packages/core/src/water/roughness.js';

const bore = (sizeM: number | null, material: Parameters<typeof pipeRow>[0]) =>
  pipeBore({ sizeM }, pipeRow(material));

describe('the real inside diameter', () => {
  // ASTM D3034 and D1785 through the pipe table
  it.each([
    ['pvc-sdr35', 4, 3.974],
    ['pvc-sdr35', 6, 5.916],
    ['pvc-sch40', 3, 3.042],
    ['pvc-sch40', 8, 7.943],
    ['hdpe-corrugated', 4, 4],
    ['cast-iron', 4, 3.94],
  ] as const)('of %s sold as %f in is %f in', (material, nominal, inside) => {
    const found = bore(fromInches(nominal), material);
    expect(toInches(found?.insideDiameterM ?? NaN)).toBeCloseTo(inside, 9);
    expect(found?.from).toBe('table');
  });

  it('is the same whether the size is given in inches or as its millimetres', () => {
    expect(bore(0.1, 'pvc-sch40')).toEqual(bore(fromInches(4), 'pvc-sch40'));
    expect(bore(0.15, 'clay')).toEqual(bore(fromInches(6), 'clay'));
  });

  // EN 1401: 110 mm of SDR 34 has 3.2 mm walls, 103.6 mm inside (from memory)
  it('of metric plastic pipe is the outside less the wall', () => {
    const found = bore(0.11, 'pvc-sdr35');
    expect(found?.from).toBe('outside');
    expect(Math.abs((found?.insideDiameterM ?? NaN) - 0.1036)).toBeLessThan(0.0002);
    expect(bore(0.11, 'clay')).toEqual({ insideDiameterM: 0.11, from: 'size' });
  });

  it('is the size itself where the pipe is not known in that size, and unknown without a size', () => {
    expect(bore(0.375, 'hdpe-dual-wall')).toEqual({ insideDiameterM: 0.375, from: 'size' });
    expect(bore(null, 'clay')).toBeNull();
  });
});

describe('roughness', () => {
  it('is that of the pipe table', () => {
    expect(roughness({ perforated: false }, pipeRow('hdpe-corrugated'))).toEqual({
      low: 0.015,
      mid: 0.018,
      high: 0.024,
    });
  });

  // a city's drainage manual asks for at least 0.020 in smooth perforated plastic
  it('reaches further up in a smooth pipe with holes, and there alone', () => {
    expect(roughness({ perforated: true }, pipeRow('pvc-sdr35')).high).toBe(0.02);
    expect(roughness({ perforated: false }, pipeRow('pvc-sdr35')).high).toBe(0.013);
    expect(roughness({ perforated: true }, pipeRow('hdpe-corrugated')).high).toBe(0.024);
    expect(roughness({ perforated: true }, pipeRow('clay')).high).toBe(0.015);
  });
});
