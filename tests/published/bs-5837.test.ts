import { describe, expect, it } from 'vitest';
import { combinedStemDiameter } from '../../packages/core/src/roots/combined-stem.js';
import { protectionRadiusBs5837 } from '../../packages/core/src/roots/protection.js';
import { fromMillimetres } from '../../packages/core/src/units/length.js';
import { metres } from '../../packages/core/src/units/quantity.js';
import { residual } from './residual.js';

/**
 * BS 5837:2012, clause 4.6.1 and annex D, as quoted by consultants and planning authorities; the table's rounding
 * and the rule for more than five stems are from memory.
 *
 * Tolerance: annex D prints radii to 0.1 m and areas to 1 m2, so half of the last place.
 */
const HALF_OF_0_1_M = 0.05;
const HALF_OF_1_M2 = 0.5;

/** Stem diameter in millimetres, radius in metres, area in square metres. */
const ANNEX_D = [
  [75, 0.9, 3],
  [100, 1.2, 5],
  [150, 1.8, 10],
  [200, 2.4, 18],
  [250, 3.0, 28],
  [300, 3.6, 41],
  [400, 4.8, 72],
  [500, 6.0, 113],
  [600, 7.2, 163],
  [700, 8.4, 222],
  [800, 9.6, 290],
  [900, 10.8, 366],
  [1000, 12.0, 452],
  [1100, 13.2, 547],
  [1200, 14.4, 651],
  [1250, 15.0, 707],
  [1400, 15.0, 707],
  [1500, 15.0, 707],
] as const;

const areaOf = (radiusM: number): number => Math.PI * radiusM ** 2;

describe('root protection areas of BS 5837:2012', () => {
  it('holds every row of the table of radii and areas', () => {
    const left = ANNEX_D.map(([stemMm, radiusM, areaM2]) => {
      const radius = protectionRadiusBs5837(fromMillimetres(stemMm));
      return {
        radius: residual({
          what: `radius at ${stemMm} mm`,
          got: radius,
          published: radiusM,
          tolerance: HALF_OF_0_1_M,
        }),
        area: residual({
          what: `area at ${stemMm} mm`,
          got: areaOf(radius),
          published: areaM2,
          tolerance: HALF_OF_1_M2,
        }),
      };
    });
    const worst = (of: 'radius' | 'area'): string => Math.max(...left.map((r) => Math.abs(r[of]))).toFixed(3);
    console.info(
      `BS 5837 annex D, ${left.length} rows: radius within ${worst('radius')} m, area within ${worst('area')} m2`,
    );
  });

  it('caps the area at 707 m2, a circle of 15 m, from a stem of 1.25 m on', () => {
    const capped = protectionRadiusBs5837(metres(3));
    expect(capped).toBe(15);
    residual({ what: 'capped area', got: areaOf(capped), published: 707, tolerance: HALF_OF_1_M2 });
    expect(protectionRadiusBs5837(metres(1.24))).toBeLessThan(15);
  });
});

describe('one diameter for several stems, BS 5837:2012 4.6.1', () => {
  // worked from the clause's formulas by hand; tolerance half of the last place shown
  it('takes the root of the sum of squares for two to five stems', () => {
    const combined = combinedStemDiameter([0.2, 0.25, 0.3]);
    residual({ what: 'three stems, mm', got: 1000 * combined, published: 438.7, tolerance: 0.05 });
    const radius = protectionRadiusBs5837(combined);
    residual({ what: 'three stems, radius', got: radius, published: 5.265, tolerance: 0.0005 });
    residual({ what: 'three stems, area', got: areaOf(radius), published: 87.1, tolerance: 0.05 });
  });

  it('takes the mean stem for more than five', () => {
    const combined = combinedStemDiameter([0.08, 0.16, 0.1, 0.14, 0.12, 0.12, 0.11, 0.13]);
    residual({
      what: 'eight stems of 120 mm in the mean, mm',
      got: 1000 * combined,
      published: 339.4,
      tolerance: 0.05,
    });
    const radius = protectionRadiusBs5837(combined);
    residual({ what: 'eight stems, radius', got: radius, published: 4.073, tolerance: 0.0005 });
    residual({ what: 'eight stems, area', got: areaOf(radius), published: 52.1, tolerance: 0.05 });
  });

  it('changes from the first rule to the second between five and six stems', () => {
    const stems = [0.1, 0.1, 0.1, 0.1, 0.3];
    expect(combinedStemDiameter(stems)).toBeCloseTo(Math.sqrt(0.13), 9);
    const mean = (0.7 + 0.1) / 6;
    expect(combinedStemDiameter([...stems, 0.1])).toBeCloseTo(Math.sqrt(6) * mean, 9);
  });
});
