import { describe, expect, it } from 'vitest';
import { stiffnessOf } from '../../packages/core/src/risk/openings.js';
import type { MaterialKey } from '../../packages/core/src/tables/pipe-row.js';
import { pipeRow } from '../../packages/core/src/tables/pipes.js';
import { fromInches } from '../../packages/core/src/units/length.js';
import { toPsi } from '../../packages/core/src/units/pressure.js';
import { pascals } from '../../packages/core/src/units/quantity.js';
import { residual } from './residual.js';

/**
 * Pipe stiffness at 5 % deflection (ASTM D2412) of a solid wall: PS = 4.47 E / (DR - 1)^3, DR outside diameter
 * over wall, E of PVC 400,000 psi. The standards print minima: ASTM D3034 for sewer pipe, D2729-11 table 5 for
 * thin drain pipe, AASHTO M252 for corrugated tubing (from memory).
 */
const E_PVC_PSI = 400_000;
const E_ABS_PSI = 240_000;
const E_PE_PSI = 110_000;
const stiffnessPsi = (modulusPsi: number, ratio: number): number => (4.47 * modulusPsi) / (ratio - 1) ** 3;

const tablePsi = (key: MaterialKey, nominalIn: number): number =>
  toPsi(pascals(stiffnessOf(pipeRow(key), fromInches(nominalIn))));

describe('the stiffness formula against the printed minima', () => {
  // tolerance: the standards round to whole psi, some upward; 1 psi covers both
  it.each([
    ['SDR 35', 35, 46],
    ['SDR 26 (minimum from memory)', 26, 115],
    ['SDR 41 (minimum from memory)', 41, 28],
    ['D2729, 2 in (outside diameter and wall from memory)', 2.25 / 0.07, 59],
    ['D2729, 3 in, wall 0.070 in', 3.25 / 0.07, 19],
    ['D2729, 4 in, wall 0.075 in', 4.215 / 0.075, 11],
    ['D2729, 5 in (outside diameter and wall from memory)', 5.3 / 0.09, 9],
    ['D2729, 6 in, wall 0.100 in', 6.275 / 0.1, 8],
  ])('%s', (pipe, ratio, printed) => {
    const left = residual({
      what: pipe,
      got: stiffnessPsi(E_PVC_PSI, ratio),
      published: printed,
      tolerance: 1,
    });
    console.info(`pipe stiffness, ${pipe}: residual ${left.toFixed(2)} psi`);
  });
});

describe('the pipe table against the printed minima', () => {
  // the table quotes the minima: nothing but the rounding of units
  it.each([
    ['pvc-sdr35', 4, 46],
    ['pvc-sdr35', 6, 46],
    ['pvc-sdr35', 8, 46],
    ['pvc-thin-wall', 3, 19],
    ['pvc-thin-wall', 4, 11],
    ['pvc-thin-wall', 6, 8],
    ['hdpe-corrugated', 4, 24],
    ['hdpe-corrugated-heavy', 4, 35],
    ['hdpe-dual-wall', 6, 35],
    ['hdpe-dual-wall', 12, 50],
  ] as const)('%s of %i in has %i psi', (key, nominalIn, printed) => {
    residual({
      what: `${key} ${nominalIn} in`,
      got: tablePsi(key, nominalIn),
      published: printed,
      tolerance: 1e-6,
    });
  });

  it('takes the nearest size where the printed one is not carried, on the weak side', () => {
    // 9 psi at 5 in lies between 11 at 4 in and 8 at 6 in: no more than 2 psi off either way
    residual({ what: 'D2729, 5 in', got: tablePsi('pvc-thin-wall', 5), published: 9, tolerance: 2 });
    // 59 psi at 2 in: the 3 in pipe's 19 overstates the crush rate of so small a pipe, never understates it
    expect(tablePsi('pvc-thin-wall', 2)).toBeCloseTo(19, 6);
  });
});

describe('the pipe table against the formula where no minimum is printed', () => {
  // outside diameters and minimum walls of ASTM D1785, schedule 40, in inches; tolerance 2 %, for walls in the
  // table rounded to thousandths and stiffness to whole psi
  it.each([
    [3, 3.5, 0.216],
    [4, 4.5, 0.237],
    [6, 6.625, 0.28],
    [8, 8.625, 0.322],
    [10, 10.75, 0.365],
    [12, 12.75, 0.406],
  ])('schedule 40 PVC of %i in', (nominalIn, outsideIn, wallIn) => {
    const printed = stiffnessPsi(E_PVC_PSI, outsideIn / wallIn);
    const left = residual({
      what: `schedule 40, ${nominalIn} in`,
      got: tablePsi('pvc-sch40', nominalIn),
      published: printed,
      tolerance: 0.02 * printed,
    });
    console.info(`schedule 40, ${nominalIn} in: residual ${left.toFixed(2)} psi of ${printed.toFixed(0)}`);
  });

  it('ABS of 4 in, schedule 40 wall, E 240,000 psi', () => {
    const printed = stiffnessPsi(E_ABS_PSI, 4.5 / 0.237);
    residual({ what: 'ABS 4 in', got: tablePsi('abs', 4), published: printed, tolerance: 0.02 * printed });
  });

  it('heat-fused polyethylene, DR 17, E 110,000 psi', () => {
    const printed = stiffnessPsi(E_PE_PSI, 17);
    residual({
      what: 'DR 17',
      got: tablePsi('hdpe-welded', 4),
      published: printed,
      tolerance: 0.02 * printed,
    });
  });
});
