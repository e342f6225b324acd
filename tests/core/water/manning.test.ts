import { describe, expect, it } from 'vitest';
import { metres } from '../../../packages/core/src/units/quantity.js';
import {
  depthForFlow,
  MOST_FLOW_DEPTH,
  manningFull,
  manningPartial,
  relativeFlow,
  slopeForVelocity,
} from '../../../packages/core/src/water/manning.js';
import { rationalPeakM3s } from '../../../packages/core/src/water/rational.js';
import { depthForArea, sectionBelow } from '../../../packages/core/src/water/section.js';

describe('what makes no sense', () => {
  it.each([0, -1, NaN, Infinity])('%f is refused by name', (bad) => {
    expect(() => manningFull(bad as never, 0.01, 0.012)).toThrow(/^insideDiameter must/);
    expect(() => manningFull(metres(0.1), bad, 0.012)).toThrow(/^slopeRatio must/);
    expect(() => manningFull(metres(0.1), 0.01, bad)).toThrow(/^n must/);
    expect(() => slopeForVelocity(metres(0.1), bad, 0.6)).toThrow(/^n must/);
  });

  it.each([-0.01, 1.01, NaN])('a depth of %f is refused', (depth) => {
    expect(() => manningPartial(metres(0.1), 0.01, 0.012, depth)).toThrow(/^depthRatio must/);
    expect(() => depthForArea(depth)).toThrow(/^areaShare must/);
  });

  it('is refused in the rational method too', () => {
    expect(rationalPeakM3s(0, 100, 10)).toBe(0);
    expect(() => rationalPeakM3s(1.2, 100, 10)).toThrow(/^runoff must/);
    expect(() => rationalPeakM3s(0.9, -1, 10)).toThrow(/^rainMmPerHour must/);
    expect(() => rationalPeakM3s(0.9, 100, NaN)).toThrow(/^areaM2 must/);
  });
});

describe('depth for a flow', () => {
  it('is nought for none, and none for more than the pipe carries', () => {
    expect(depthForFlow(0)).toBeCloseTo(0, 6);
    expect(depthForFlow(1.0757)).toBeCloseTo(MOST_FLOW_DEPTH, 1);
    expect(depthForFlow(1.08)).toBeNull();
    expect(() => depthForFlow(-1)).toThrow(RangeError);
  });

  it('is the lower of the two depths that carry as much as the full pipe', () => {
    const depth = depthForFlow(1) as number;
    expect(depth).toBeGreaterThan(0.8);
    expect(depth).toBeLessThan(0.84);
    expect(relativeFlow(depth).flow).toBeCloseTo(1, 8);
  });

  // the slope of the flow curve is nought where it turns: 3 a - 5 a cos a + 2 sin a = 0 (from d(A^5/P^2) = 0)
  it('turns where calculus has it', () => {
    const angle = sectionBelow(MOST_FLOW_DEPTH).angle;
    expect(3 * angle - 5 * angle * Math.cos(angle) + 2 * Math.sin(angle)).toBeCloseTo(0, 7);
  });
});

describe('a part of the section', () => {
  it('is found again from its area', () => {
    for (const depth of [0, 0.1, 0.37, 0.5, 0.9, 1]) {
      expect(depthForArea(sectionBelow(depth).areaShare)).toBeCloseTo(depth, 5);
    }
  });
});
