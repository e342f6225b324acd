import { describe, expect, it } from 'vitest';
import { type HarmTree, harmOf } from '../../packages/core/src/roots/harm.js';
import { protectionRadiusAs4970, protectionRadiusBs5837 } from '../../packages/core/src/roots/protection.js';
import { structuralRadius } from '../../packages/core/src/roots/structural.js';
import { metres } from '../../packages/core/src/units/quantity.js';
import { residual } from './residual.js';

const TRENCH_M = 0.3;

function tree(stemDiameterM: number): HarmTree {
  const stem = metres(stemDiameterM);
  return {
    id: 't',
    x: 0,
    y: 0,
    stemDiameterM,
    structuralM: structuralRadius(stem),
    protectionM: protectionRadiusAs4970(stem),
    driplineM: 5,
  };
}

/** A straight trench whose near side passes at so many trunk diameters. */
function at(diameters: number, stemDiameterM: number) {
  const x = diameters * stemDiameterM + TRENCH_M / 2;
  const [found] = harmOf(
    [tree(stemDiameterM)],
    [
      {
        path: [
          [x, -60],
          [x, 60],
        ],
        widthM: TRENCH_M,
        bored: false,
      },
    ],
  );
  if (!found) throw new Error('no tree');
  return found;
}

const STEMS = [0.25, 0.4, 0.6, 1] as const;

describe('Smiley 2008: no straight cut within three trunk diameters', () => {
  it.each(STEMS)('holds for a trunk of %f m, to the millimetre', (stem) => {
    expect(at(3 - 0.001 / stem, stem).reasons).toContain('inside-3-diameters');
    expect(at(3 - 0.001 / stem, stem).rule).toBe('no-dig');
    expect(at(3 + 0.001 / stem, stem).reasons).not.toContain('inside-3-diameters');
  });
});

describe('guide to ANSI A300 part 8: 3 to 6 trunk diameters at least', () => {
  it.each(STEMS)('asks for an arborist up to 6 diameters of a trunk of %f m', (stem) => {
    expect(at(5.99, stem).rule).not.toBe('caution');
    expect(at(5.99, stem).reasons).toContain('inside-6-diameters');
    expect(at(6.01, stem).reasons).toContain('inside-12-diameters');
  });
});

/**
 * AS 4970-2009, 3.3.2 and 3.3.3: up to a tenth of the zone is minor. In a zone of 12 diameters a tenth lies beyond
 * 0.687 of the radius (acos(x) - x sqrt(1 - x2) = 0.1 pi, solved by halving): 8.24 diameters.
 */
describe('AS 4970-2009: a tenth of the zone', () => {
  it('is lost at 8.24 diameters', () => {
    let low = 0;
    let high = 1;
    for (let i = 0; i < 60; i++) {
      const x = (low + high) / 2;
      if (Math.acos(x) - x * Math.sqrt(1 - x * x) > 0.1 * Math.PI) low = x;
      else high = x;
    }
    residual({ what: 'diameters', got: 12 * low, published: 8.24, tolerance: 0.005 });
    expect(at(12 * low - 0.01, 0.4).encroachment).toBe('major');
    expect(at(12 * low + 0.01, 0.4).encroachment).toBe('minor');
  });

  /** Share lost by distance over radius: circular segment, to three places. */
  it.each([
    [0.25, 0.343],
    [0.5, 0.196],
    [0.75, 0.072],
    [0.9, 0.019],
  ])('at %f of the radius leaves a share of %f beyond', (share, lost) => {
    residual({
      what: `share at ${share}`,
      got: at(12 * share, 0.4).severedShare,
      published: lost,
      tolerance: 0.0005,
    });
  });

  it('counts any cut among the structural roots as major', () => {
    // 0.64 (50 x 0.25)^0.42 is 1.85 m, 7.4 diameters: the share alone would be just over a tenth there
    const found = at(7.3, 0.25);
    expect(found.reasons).toContain('inside-structural');
    expect(found.encroachment).toBe('major');
  });
});

/**
 * Guidance of the British utilities (volume 4 of their street works group, operatives' handout): no machine within four
 * times the girth of the trunk, 12.6 diameters. Our ring of caution is that of BS 5837, 12 diameters.
 *
 * Tolerance: 5 %, the difference between the two rules.
 */
describe('four times the girth', () => {
  it.each([0.3, 0.6, 1])('agrees with the ring of caution of a trunk of %f m', (stem) => {
    residual({
      what: 'ring of caution',
      got: protectionRadiusBs5837(metres(stem)),
      published: 4 * Math.PI * stem,
      tolerance: 0.05 * 4 * Math.PI * stem,
    });
    expect(at(11.9, stem).rule).toBe('caution');
  });
});
