import { describe, expect, it } from 'vitest';
import { bibliography } from '../../../packages/core/src/sources/bibliography.js';
import { fittingJoints } from '../../../packages/core/src/tables/fitting-joints.js';
import { jointRow, jointTable } from '../../../packages/core/src/tables/joints.js';
import type { JointKey, MaterialKey } from '../../../packages/core/src/tables/pipe-row.js';
import { pipeRow, pipeTable } from '../../../packages/core/src/tables/pipes.js';
import { toFeet, toInches } from '../../../packages/core/src/units/length.js';
import { toPsi } from '../../../packages/core/src/units/pressure.js';
import { everyCitedValue } from './every-cited-value.js';

const sizeOf = (key: MaterialKey, nominalIn: number) =>
  pipeRow(key).sizes.find((size) => size.nominalIn === nominalIn);
const psiOf = (key: MaterialKey, nominalIn: number): number =>
  toPsi((sizeOf(key, nominalIn)?.stiffness ?? pipeRow(key).stiffness).value);

describe('the pipe table', () => {
  it('has fifteen materials, each once', () => {
    expect(pipeTable.length).toBe(15);
    expect(new Set(pipeTable.map((row) => row.key)).size).toBe(15);
  });

  it('throws with the key when it is not there', () => {
    expect(() => pipeRow('wood' as MaterialKey)).toThrow(/wood/);
  });

  it('cites every value with a known source', () => {
    for (const { cited } of everyCitedValue([pipeTable, jointTable])) {
      expect(Object.keys(bibliography)).toContain(cited.source);
    }
    expect(everyCitedValue(pipeTable).length).toBeGreaterThan(150);
  });

  it('marks every value of the unknown pipe as our judgement', () => {
    for (const { cited } of everyCitedValue(pipeRow('unknown'))) expect(cited.known).toBe('judgement');
  });

  it('holds sensible sizes, lengths and Manning numbers', () => {
    for (const row of pipeTable) {
      for (const size of row.sizes) {
        expect(toInches(size.insideDiameterM.value)).toBeGreaterThan(0.85 * size.nominalIn);
        expect(toInches(size.insideDiameterM.value)).toBeLessThan(1.06 * size.nominalIn);
        expect(size.nominalMm).toBe(25 * size.nominalIn);
      }
      expect(row.pieceM.value).toBeGreaterThan(0.3);
      expect(row.manningN.low.value).toBeLessThan(row.manningN.mid.value);
      expect(row.manningN.mid.value).toBeLessThan(row.manningN.high.value);
      expect(row.assumedAgeYears.value).toBe(row.expectedLifeYears.value / 2);
      expect(() => jointRow(row.joint)).not.toThrow();
    }
  });

  // ASTM D1785 average inside diameters; ASTM D3034 outside diameter less two minimum walls
  it.each([
    ['pvc-sch40', 4, 3.998],
    ['pvc-sch40', 6, 6.031],
    ['pvc-sdr35', 4, 3.974],
    ['pvc-sdr35', 6, 5.916],
    ['pvc-sdr35', 8, 7.92],
    ['hdpe-corrugated', 4, 4],
  ] as const)('%s of %d in has a bore of %d in', (key, nominal, bore) => {
    expect(toInches(sizeOf(key, nominal)?.insideDiameterM.value ?? 0)).toBeCloseTo(bore, 3);
  });

  // ASTM D2729 table 5: 19, 11 and 8 psi for 3, 4 and 6 in
  it.each([
    [3, 19],
    [4, 11],
    [6, 8],
  ] as const)('thin-wall PVC of %d in has a stiffness of %d psi', (nominal, psi) => {
    expect(psiOf('pvc-thin-wall', nominal)).toBeCloseTo(psi, 6);
  });

  // solid wall: 4.47 E / (DR - 1)^3 with E = 400,000 psi (ASTM D2412), outside diameter and wall of ASTM D1785
  it.each([
    [3, 3.5, 0.216],
    [4, 4.5, 0.237],
    [6, 6.625, 0.28],
    [8, 8.625, 0.322],
    [10, 10.75, 0.365],
    [12, 12.75, 0.406],
  ] as const)('schedule 40 PVC of %d in has the stiffness of its walls', (nominal, outside, wall) => {
    const expected = (4.47 * 400_000) / (outside / wall - 1) ** 3;
    expect(Math.abs(psiOf('pvc-sch40', nominal) - expected)).toBeLessThan(1);
  });

  it('gives sewer-grade PVC 46 psi and polyethylene its standards', () => {
    expect(psiOf('pvc-sdr35', 4)).toBeCloseTo(46, 6);
    expect(psiOf('hdpe-corrugated-heavy', 4)).toBeCloseTo(35, 6);
    expect(psiOf('hdpe-dual-wall', 12)).toBeCloseTo(50, 6);
    expect(psiOf('hdpe-welded', 4)).toBeCloseTo((4.47 * 110_000) / 16 ** 3, 0);
  });

  it('has the laying lengths of the standards', () => {
    const lengths = (key: MaterialKey): number[] =>
      [pipeRow(key).pieceM.value, ...pipeRow(key).otherPiecesM].map((each) =>
        Number(toFeet(each).toFixed(3)),
      );
    expect(lengths('cast-iron').sort((a, b) => a - b)).toEqual([2.5, 3.5, 5, 10]); // ASTM A74
    expect(lengths('pvc-sdr35')).toEqual([14, 10, 20]); // ASTM D3034 and retail
  });
});

describe('joints', () => {
  it('grow more open from weld to bare butt joint', () => {
    const order: JointKey[] = ['none', 'welded', 'solvent', 'gasket', 'band', 'taped', 'snap', 'mortar'];
    const factors = order.map((key) => jointRow(key).factor.value);
    expect(factors).toEqual([...factors].sort((a, b) => a - b));
    expect(jointRow('open').factor.value).toBe(jointRow('mortar').factor.value);
  });

  it('never give a jointed pipe a factor of nothing', () => {
    for (const row of jointTable.filter((each) => each.key !== 'none'))
      expect(row.factor.value).toBeGreaterThan(0);
  });

  it('throw with the key when it is not there', () => {
    expect(() => jointRow('glue' as JointKey)).toThrow(/glue/);
  });

  it('count the sockets of each fitting', () => {
    const counts = Object.fromEntries(Object.entries(fittingJoints).map(([key, each]) => [key, each.joints]));
    expect(counts).toEqual({
      coupling: 1,
      bend: 2,
      reducer: 2,
      wye: 3,
      tee: 3,
      basin: 1,
      cleanout: 5,
      downspout: 1,
      outlet: 0,
      cap: 1,
    });
    expect(fittingJoints.cleanout.joints).toBe(2 + fittingJoints.tee.joints);
    expect(fittingJoints.basin.perPipeEnd).toBe(true);
  });
});
