import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chordOf } from '../../../packages/core/src/geometry/chord.js';

/** Share of an edge inside a circle by walking it in small steps. */
function shareByWalking(
  edge: readonly [number, number, number, number],
  circle: readonly [number, number, number],
) {
  const [x0, y0, x1, y1] = edge;
  const [cx, cy, radius] = circle;
  const steps = 4000;
  let inside = 0;
  for (let i = 0; i < steps; i++) {
    const t = (i + 0.5) / steps;
    if (Math.hypot(x0 + t * (x1 - x0) - cx, y0 + t * (y1 - y0) - cy) < radius) inside++;
  }
  return inside / steps;
}

describe('the chord of a circle on an edge', () => {
  it('is as long as a walk along the edge finds it, to a step or two', () => {
    const metre = fc.double({ min: -20, max: 20, noNaN: true });
    const edge = fc.tuple(metre, metre, metre, metre);
    const circle = fc.tuple(metre, metre, fc.double({ min: 0.1, max: 25, noNaN: true }));
    fc.assert(
      fc.property(edge, circle, (e, c) => {
        fc.pre(Math.hypot(e[2] - e[0], e[3] - e[1]) > 0.01);
        const chord = chordOf(...e, ...c);
        const share = chord === null ? 0 : chord[1] - chord[0];
        expect(Math.abs(share - shareByWalking(e, c))).toBeLessThanOrEqual(2 / 4000);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  it('is half the circle and more by the 3-4-5 triangle', () => {
    expect(chordOf(-10, 3, 10, 3, 0, 0, 5)).toEqual([0.3, 0.7]);
  });

  it('is cut off at the ends of the edge', () => {
    expect(chordOf(0, 0, 10, 0, 0, 0, 5)).toEqual([0, 0.5]);
    expect(chordOf(-1, 0, 1, 0, 0, 0, 5)).toEqual([0, 1]);
  });

  it('is none where the edge stays outside, only touches, or has no length', () => {
    expect(chordOf(-10, 6, 10, 6, 0, 0, 5)).toBeNull();
    expect(chordOf(-10, 5, 10, 5, 0, 0, 5)).toBeNull();
    expect(chordOf(6, 0, 10, 0, 0, 0, 5)).toBeNull();
    expect(chordOf(1, 1, 1, 1, 0, 0, 5)).toBeNull();
  });
});
