import { describe, expect, it } from 'vitest';
import { cheapestPath } from '../../packages/core/src/route/cheapest-path.js';
import { lengthOf, openPath, outline, plainField, rectangle } from '../core/route/plain-field.js';
import { residual } from './residual.js';

/** Least of a function of one variable by golden section (Kiefer 1953), to well below what is compared. */
function least(f: (x: number) => number, low: number, high: number): number {
  const g = (Math.sqrt(5) - 1) / 2;
  let [a, b] = [low, high];
  for (let i = 0; i < 200; i++) {
    const [c, d] = [b - g * (b - a), a + g * (b - a)];
    if (f(c) < f(d)) b = d;
    else a = c;
  }
  return f((a + b) / 2);
}

const to = (x: number, y: number) => [{ x, y }];

describe('the cheapest path', () => {
  it('on even ground is the straight line', () => {
    for (const [a, b] of [
      [
        [3, 4],
        [25, 9.3],
      ],
      [
        [2.2, 27.7],
        [26.1, 3.9],
      ],
      [
        [5, 5],
        [5.1, 26],
      ],
    ] as const) {
      const path = cheapestPath(plainField(), a, to(b[0], b[1]));
      expect(path?.points).toEqual([a, b]);
      expect(path?.cost).toBeCloseTo(Math.hypot(b[0] - a[0], b[1] - a[1]), 9);
    }
  });

  // the shortest way round a circle: two tangents and the arc between them (Euclid; elementary geometry)
  it.each([
    [[2, 15], [28, 15], 5],
    [[2, 14], [28, 17], 4],
    [[6, 12], [24, 20], 6],
    [[3, 15], [27, 15.5], 2],
  ] as const)('round a disc is tangent, arc, tangent within 0.3 %% (%j to %j, radius %s)', (a, b, r) => {
    const centre = [15, 15] as const;
    const [da, db] = [Math.hypot(a[0] - 15, a[1] - 15), Math.hypot(b[0] - 15, b[1] - 15)];
    const between = Math.abs(Math.atan2(a[1] - 15, a[0] - 15) - Math.atan2(b[1] - 15, b[0] - 15));
    const angle = Math.min(between, 2 * Math.PI - between);
    const arc = angle - Math.acos(r / da) - Math.acos(r / db);
    const exact = Math.sqrt(da * da - r * r) + Math.sqrt(db * db - r * r) + r * arc;
    const path = cheapestPath(
      plainField({ discs: [{ id: 't', x: centre[0], y: centre[1], radiusM: r }] }),
      a,
      to(b[0], b[1]),
    );
    const got = lengthOf(path?.points ?? []);
    residual({ what: 'tangent, arc, tangent', got, published: exact, tolerance: 0.003 * exact });
    expect(got).toBeGreaterThanOrEqual(exact - 1e-6);
  });

  // Snell's law of refraction with the price of a metre for the index (Warntz 1957, from memory)
  it.each([
    [3, 0],
    [1.5, 0.4],
    [6, -0.7],
  ])(
    'across a straight border to ground %d times as dear bends as light does (border turned by %d)',
    (n, turn) => {
      const [c, s] = [Math.cos(turn), Math.sin(turn)];
      const at = (u: number, v: number): [number, number] => [20 + u * c - v * s, 20 + u * s + v * c];
      const corners = [at(-60, 0), at(60, 0), at(60, 60), at(-60, 60)] as const;
      const field = plainField({
        sizeM: 40,
        areas: [{ id: 'dear', shape: outline(...corners), morePerM: n - 1, layer: 'surface' }],
      });
      const [a, b] = [at(-8, -9), at(8, 7)];
      const path = cheapestPath(field, a, to(b[0], b[1]));
      const exact = least((u) => Math.hypot(u + 8, 9) + n * Math.hypot(8 - u, 7), -8, 8);
      residual({ what: 'Snell', got: path?.cost ?? 0, published: exact, tolerance: 0.005 * exact });
    },
  );

  it('goes through the gap in a wall', () => {
    const wall = (west: number, east: number) => ({
      id: `${west}`,
      of: 'edges' as const,
      shape: openPath([west, 15], [east, 15]),
      clearanceM: 0.3,
      ends: [],
    });
    const field = plainField({ keepouts: [wall(-5, 20), wall(22, 35)] });
    const path = cheapestPath(field, [6, 4], to(8, 26));
    // the string pulled tight round the near end of the wall, less than its clearance away
    const exact = Math.hypot(20 - 6, 11) + Math.hypot(20 - 8, 11);
    expect(lengthOf(path?.points ?? [])).toBeGreaterThan(exact);
    expect(lengthOf(path?.points ?? []) / exact).toBeLessThan(1.02);
    const closed = plainField({ keepouts: [wall(-5, 35)] });
    expect(cheapestPath(closed, [6, 4], to(8, 26))).toBeNull();
  });

  it.each([2, 4, 8])('crosses a strip of ground %d times as dear at the best place', (n) => {
    const field = plainField({
      areas: [{ id: 'drive', shape: rectangle(-5, 12, 35, 16), morePerM: n - 1, layer: 'surface' }],
    });
    const path = cheapestPath(field, [4, 5], to(26, 25));
    // in both cheap parts the bearing is the same: what counts is how far it goes sideways in the strip
    const exact = least((u) => n * Math.hypot(u, 4) + Math.hypot(22 - u, 16), 0, 22);
    residual({ what: 'strip', got: path?.cost ?? 0, published: exact, tolerance: 0.005 * exact });
  });
});
