import { describe, expect, it } from 'vitest';
import { resolveMaterial } from '../../../packages/core/src/names/resolve-material.js';
import { pipeTable } from '../../../packages/core/src/tables/pipes.js';

describe('pipe materials in free text', () => {
  it('know every key and plain name of the table exactly', () => {
    for (const row of pipeTable.filter((each) => each.key !== 'unknown')) {
      for (const text of [row.key, row.key.toUpperCase(), row.name]) {
        expect(resolveMaterial(text), text).toEqual({
          text,
          key: row.key,
          certainty: 'exact',
          perforated: null,
        });
      }
    }
  });

  // words of the trade (common practice)
  it.each([
    ['VCP', 'clay', 'exact'],
    ['vc', 'clay', 'exact'],
    ['terra cotta', 'clay', 'exact'],
    ['Terracotta', 'clay', 'exact'],
    ['vitrified clay pipe', 'clay', 'exact'],
    ['6" clay tile', 'clay', 'exact'],
    ['tile', 'clay', 'likely'],
    ['drain tile', 'clay', 'guess'],
    ['CIP', 'cast-iron', 'exact'],
    ['cast', 'cast-iron', 'exact'],
    ['Cast Iron', 'cast-iron', 'exact'],
    ['DI', 'cast-iron', 'likely'],
    ['ductile iron', 'cast-iron', 'likely'],
    ['galvanized steel', 'cast-iron', 'guess'],
    ['ACP', 'asbestos-cement', 'likely'],
    ['asbestos cement', 'asbestos-cement', 'exact'],
    ['ABS', 'abs', 'exact'],
    ['sch 40', 'pvc-sch40', 'exact'],
    ['Sch. 40 PVC', 'pvc-sch40', 'exact'],
    ['SCH40', 'pvc-sch40', 'exact'],
    ['schedule 40', 'pvc-sch40', 'exact'],
    ['SDR35', 'pvc-sdr35', 'exact'],
    ['PVC SDR-35', 'pvc-sdr35', 'exact'],
    ['sdr 26', 'pvc-sdr35', 'likely'],
    ['pvc', 'pvc-sdr35', 'guess'],
    ['uPVC', 'pvc-sdr35', 'guess'],
    ['plastic', 'pvc-sdr35', 'guess'],
    ['thin wall PVC', 'pvc-thin-wall', 'exact'],
    ['thin-wall', 'pvc-thin-wall', 'exact'],
    ['S&D', 'pvc-thin-wall', 'exact'],
    ['ASTM D2729', 'pvc-thin-wall', 'exact'],
    ['bituminous fibre', 'bituminous-fibre', 'exact'],
    ['Bituminous Fiber', 'bituminous-fibre', 'exact'],
    ['pitch fibre', 'bituminous-fibre', 'exact'],
    ['tar paper pipe', 'bituminous-fibre', 'exact'],
    ['corrugated', 'hdpe-corrugated', 'exact'],
    ['black corrugated', 'hdpe-corrugated', 'exact'],
    ['flex', 'hdpe-corrugated', 'exact'],
    ['HDPE coil', 'hdpe-corrugated', 'exact'],
    ['hdpe', 'hdpe-corrugated', 'guess'],
    ['heavy duty corrugated', 'hdpe-corrugated-heavy', 'exact'],
    ['dual wall HDPE', 'hdpe-dual-wall', 'exact'],
    ['double-walled corrugated', 'hdpe-dual-wall', 'exact'],
    ['HDPE fused', 'hdpe-welded', 'exact'],
    ['welded polyethylene', 'hdpe-welded', 'exact'],
    ['RCP', 'concrete', 'exact'],
    ['Concrete', 'concrete', 'exact'],
    ['brick', 'brick', 'exact'],
    // slips
    ['concreet', 'concrete', 'likely'],
    ['corugated', 'hdpe-corrugated', 'likely'],
    ['vitrifed', 'clay', 'likely'],
    ['bitumenous fibre', 'bituminous-fibre', 'exact'],
  ] as const)('%s is %s (%s)', (text, key, certainty) => {
    expect(resolveMaterial(text)).toMatchObject({ text, key, certainty });
  });

  it.each([null, '', ' ', 'unknown', 'no idea', '?', 'wood', 'CMP', 'corrugated metal'])(
    '%s is not known',
    (text) => {
      expect(resolveMaterial(text)).toMatchObject({ key: 'unknown', certainty: 'none' });
    },
  );

  it.each([
    ['perforated corrugated', true],
    ['PVC perf', true],
    ['slotted pipe', true],
    ['4" black flex w/ holes', true],
    ['solid PVC', false],
    ['non-perforated SDR 35', false],
    ['unperforated corrugated', false],
    ['corrugated', null],
    ['slotted', true],
  ] as const)('%s: perforated %s', (text, perforated) => {
    expect(resolveMaterial(text).perforated).toBe(perforated);
  });
});
