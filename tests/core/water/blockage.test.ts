import { describe, expect, it } from 'vitest';
import {
  flowLeftByBed,
  flowLeftByLining,
  headLossAtBall,
} from '../../../packages/core/src/water/blockage.js';
import { relativeFlow } from '../../../packages/core/src/water/manning.js';

describe('an even lining', () => {
  // a smaller pipe: (1 - b)^(4/3), worked out by hand
  it.each([
    [0, 1],
    [0.1, 0.869],
    [0.2, 0.743],
    [0.25, 0.6814],
    [0.3, 0.622],
    [0.5, 0.397],
    [0.75, 0.1575],
    [1, 0],
  ])('over %f of the section leaves %f', (blocked, left) => {
    expect(flowLeftByLining(blocked)).toBeCloseTo(left, 3);
  });
});

describe('a bed on the invert', () => {
  // the bed's surface counted as wall, worked out by hand: share of the area, flow left
  it.each([
    [0.052, 0.923],
    [0.1424, 0.796],
    [0.1955, 0.724],
    [0.2523, 0.65],
    [0.3735, 0.501],
    [0.5, 0.36],
  ])('of %f of the section leaves %f', (blocked, left) => {
    expect(Math.abs(flowLeftByBed(blocked) - left)).toBeLessThan(0.001);
  });

  it('leaves all or nothing at the ends', () => {
    expect(flowLeftByBed(0)).toBeCloseTo(1, 6);
    expect(flowLeftByBed(1)).toBeCloseTo(0, 6);
  });

  // the same half section open to the air has no bed to wet: it carries more
  it('carries less than the same opening with a free surface', () => {
    expect(flowLeftByBed(0.5)).toBeLessThan(relativeFlow(0.5).flow);
  });
});

describe('a short ball', () => {
  it('costs no head in a clear pipe and without flow', () => {
    expect(headLossAtBall(0, 1)).toBeCloseTo(0, 12);
    expect(headLossAtBall(0.5, 0)).toBe(0);
  });

  // b = 0.5: Cc = 0.63 + 0.37/8 = 0.67625, K = (1/(0.67625 x 0.5) - 1)^2 = 3.833; at 1 m/s K/19.613 m
  it('of half the section costs 0.195 m at 1 m/s, and with the square of the velocity', () => {
    expect(headLossAtBall(0.5, 1)).toBeCloseTo(0.1954, 3);
    expect(headLossAtBall(0.5, 2)).toBeCloseTo(4 * headLossAtBall(0.5, 1), 12);
  });

  it('has no bound where nothing is open', () => {
    expect(headLossAtBall(1, 1)).toBe(Infinity);
  });
});

describe('a share that cannot be', () => {
  it.each([-0.1, 1.1, NaN])('%f is refused', (blocked) => {
    expect(() => flowLeftByLining(blocked)).toThrow(RangeError);
    expect(() => flowLeftByBed(blocked)).toThrow(RangeError);
    expect(() => headLossAtBall(blocked, 1)).toThrow(RangeError);
  });
});
