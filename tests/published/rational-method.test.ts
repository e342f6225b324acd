import { describe, it } from 'vitest';
import {
  fromInchesPerHour,
  toCubicFeetPerSecond,
  toGallonsPerMinute,
  toInchesPerHour,
} from '../../packages/core/src/units/flow.js';
import { fromSquareFeet } from '../../packages/core/src/units/length.js';
import { rationalPeakM3s } from '../../packages/core/src/water/rational.js';
import { residual } from './residual.js';

/** International acre, 43,560 sq ft. */
const fromAcres = (acres: number): number => fromSquareFeet(43_560 * acres);
const peak = (runoff: number, inchesPerHour: number, areaM2: number): number =>
  rationalPeakM3s(runoff, fromInchesPerHour(inchesPerHour), areaM2);

/** The rational method Q = C i A against answers that others printed. */
describe('printed answers', () => {
  // a worked textbook exercise: a roof of 512 sq ft in 4 in/h gives 170.7 cubic feet an hour, 0.0237 cfs a half of it
  it('a roof of 512 sq ft in 4 in/h', () => {
    const cfs = toCubicFeetPerSecond(peak(1, 4, fromSquareFeet(512)));
    residual({ what: 'cubic feet an hour', got: 3600 * cfs, published: 170.7, tolerance: 0.05 });
    residual({ what: 'cfs of each half', got: cfs / 2, published: 0.0237, tolerance: 5e-5 });
    residual({
      what: 'gpm',
      got: toGallonsPerMinute(peak(1, 4, fromSquareFeet(512))),
      published: 21.3,
      tolerance: 0.05,
    });
  });

  // a worked example for engineers: 2 acres, C 0.85, 4.5 in/h: 7.65 cfs, with the factor of 1.008 dropped
  it('2 acres of C 0.85 in 4.5 in/h', () => {
    const cfs = toCubicFeetPerSecond(peak(0.85, 4.5, fromAcres(2)));
    residual({ what: 'cfs', got: cfs, published: 7.65, tolerance: 7.65 * 0.0085 });
    residual({ what: 'cfs with the factor', got: cfs, published: 7.65 * (43_560 / 43_200), tolerance: 1e-9 });
  });

  // a worked example in metric units: i = 4840 / (d + 16.2) at 22 minutes is 126.7 mm/h; the flow of 25 ha with C 0.35
  // is worked out by k = 1/360 for hectares
  it('25 ha of C 0.35 in a storm of 22 minutes', () => {
    const rain = 4840 / (22 + 16.2);
    residual({ what: 'mm/h', got: rain, published: 126.7, tolerance: 0.05 });
    residual({ what: 'm3/s', got: rationalPeakM3s(0.35, rain, 250_000), published: 3.08, tolerance: 5e-4 });
    residual({
      what: 'by hectares',
      got: rationalPeakM3s(0.35, rain, 250_000),
      published: (0.35 * rain * 25) / 360,
      tolerance: 1e-9,
    });
  });

  // a curve of ten years printed in a textbook: i = 1209 / (t + 8.86)^0.79 mm/h; 5 min worked out by hand
  it('rain of 5 minutes by a printed curve, in mm and inches', () => {
    const rain = 1209 / (5 + 8.86) ** 0.79;
    residual({ what: 'mm/h', got: rain, published: 151.5, tolerance: 0.05 });
    residual({ what: 'in/h', got: toInchesPerHour(rain), published: 5.965, tolerance: 0.002 });
  });
});

describe('the plumbing form', () => {
  // National Standard Plumbing Code, appendix: 1/12/60 x 7.48 = 0.01039 gpm for a sq ft in 1 in/h
  it('0.01039 gpm a square foot and inch an hour', () => {
    const gpm = toGallonsPerMinute(peak(1, 1, fromSquareFeet(1000)));
    residual({ what: 'gpm of 1,000 sq ft', got: gpm, published: 10.39, tolerance: 0.005 });
    // exactly 1/43,200 cfs
    const cfs = toCubicFeetPerSecond(peak(1, 1, fromSquareFeet(1000)));
    residual({ what: 'cfs', got: cfs, published: 1000 / 43_200, tolerance: 1e-12 });
  });
});
