import { describe, it } from 'vitest';
import { fromInchesPerHour } from '../../packages/core/src/units/flow.js';
import { fromInches, fromSquareFeet, toSquareFeet } from '../../packages/core/src/units/length.js';
import { manningFull } from '../../packages/core/src/water/manning.js';
import { rationalPeakM3s } from '../../packages/core/src/water/rational.js';
import { residual } from './residual.js';

/**
 * National Standard Plumbing Code, roof areas that horizontal storm drains may take at 1 in/h, and the worked example
 * of its appendix D. The code does not print its n; its 6-in row is that of 0.015. Tolerance: areas are printed to
 * the hundred.
 */
const CODE_N = 0.015;

/** Roof that fills a pipe in a rain, sq ft, all of the rain running off. */
function roofFor(inches: number, slope: number, inchesPerHour: number): number {
  const { flowM3s } = manningFull(fromInches(inches), slope, CODE_N);
  const perSquareMetre = rationalPeakM3s(1, fromInchesPerHour(inchesPerHour), 1);
  return toSquareFeet(flowM3s / perSquareMetre);
}

describe('roof areas of the plumbing code', () => {
  // read in the code: 6 in at 1/8 in per ft takes 21,400 sq ft at 1 in/h
  it('6 in at an eighth of an inch per foot, 1 in/h', () => {
    residual({ what: 'sq ft', got: roofFor(6, 1 / 96, 1), published: 21_400, tolerance: 21_400 * 0.003 });
  });

  // read in the code: the same in 3.2 in/h takes 6,688 sq ft
  it('6 in at an eighth of an inch per foot, 3.2 in/h', () => {
    residual({ what: 'sq ft', got: roofFor(6, 1 / 96, 3.2), published: 6688, tolerance: 6688 * 0.003 });
    // the step of the code itself: a roof of 21,400 sq ft in 1 in/h brings as much as one of 6,688 in 3.2
    const brings = (squareFeet: number, rain: number) =>
      rationalPeakM3s(1, fromInchesPerHour(rain), fromSquareFeet(squareFeet));
    residual({ what: 'm3/s', got: brings(6688, 3.2), published: brings(21_400, 1), tolerance: 2e-6 });
  });

  // the rest of the 6-in row, from memory
  it.each([
    [1 / 48, 30_200],
    [1 / 24, 42_800],
  ])('6 in at a slope of %f', (slope, squareFeet) => {
    residual({
      what: 'sq ft',
      got: roofFor(6, slope, 1),
      published: squareFeet,
      tolerance: squareFeet * 0.005,
    });
  });
});
