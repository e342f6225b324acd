import { describe, expect, it } from 'vitest';
import { rootRadiusByTrunk } from '../../packages/core/src/roots/reach.js';
import { metres } from '../../packages/core/src/units/quantity.js';
import { residual } from './residual.js';

/**
 * Day, S. D., Wiseman, P. E., Dickinson, S. B., Harris, J. R. (2010): Contemporary concepts of root system
 * architecture of urban trees. Arboriculture & Urban Forestry 36(4):149-159. Abstract: root radius to trunk
 * diameter about 38 : 1 in young trees; the ratio likely declines considerably as trees mature.
 *
 * Tolerance: half of the last place of `38`, 1.3 %: the ratio is printed to two figures.
 */
const HALF_OF_LAST_PLACE = 0.5 / 38;

describe('root radius from the trunk (Day and others 2010)', () => {
  it.each([0.025, 0.05, 0.1, 0.15, 0.2])('is 38 trunk diameters for a young trunk of %f m', (d) => {
    residual({
      what: `trunk ${d} m`,
      got: rootRadiusByTrunk(metres(d)),
      published: 38 * d,
      tolerance: HALF_OF_LAST_PLACE * 38 * d,
    });
  });

  it('is 3.8 m for a trunk of 10 cm', () => {
    residual({ what: '10 cm', got: rootRadiusByTrunk(metres(0.1)), published: 3.8, tolerance: 0.05 });
  });

  it('declines considerably as trees mature, while the radius still grows', () => {
    const stems = [0.2, 0.3, 0.45, 0.6, 0.9, 1.2];
    const radii = stems.map((d) => rootRadiusByTrunk(metres(d)));
    const ratios = radii.map((r, i) => r / (stems[i] as number));
    console.info(
      `Day 2010, root radius over trunk at ${stems.join(', ')} m: ${ratios.map((r) => r.toFixed(1))}`,
    );
    for (let i = 1; i < stems.length; i++) {
      expect(radii[i]).toBeGreaterThan(radii[i - 1] as number);
      expect(ratios[i]).toBeLessThan(ratios[i - 1] as number);
    }
    // `considerably`: by a third or more at a large trunk (our reading of the word)
    expect(ratios[3]).toBeLessThan((2 / 3) * 38);
  });
});
