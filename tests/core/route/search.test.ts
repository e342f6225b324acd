import { describe, expect, it } from 'vitest';
import type { CostField } from '../../../packages/core/src/route/cost-field.js';
import { moves } from '../../../packages/core/src/route/moves.js';
import { searchGrid } from '../../../packages/core/src/route/search.js';
import { seeded } from '../../scenes/seeded.js';
import { openPath, plainField, rectangle } from './plain-field.js';

/** Cost of one step, written out anew: trapezoid rule at whole cells of the longer side. */
function stepCost(field: CostField, i: number, k: number, dx: number, dy: number): number {
  const { columns, cellM } = field.grid;
  const at = (x: number, y: number): number => {
    const [x0, y0] = [Math.floor(x), Math.floor(y)];
    let sum = 0;
    for (const [a, b] of [
      [0, 0],
      [1, 0],
      [0, 1],
      [1, 1],
    ] as const) {
      const share = (a ? x - x0 : 1 - x + x0) * (b ? y - y0 : 1 - y + y0);
      if (share > 0) sum += share * (field.perM[(y0 + b) * columns + x0 + a] as number);
    }
    return sum;
  };
  const parts = Math.max(Math.abs(dx), Math.abs(dy));
  let mean = 0;
  for (let p = 0; p <= parts; p++) {
    mean += ((p === 0 || p === parts ? 0.5 : 1) / parts) * at(i + (p * dx) / parts, k + (p * dy) / parts);
  }
  return mean * Math.hypot(dx, dy) * cellM;
}

/** Dijkstra's method as first written (1959): no heap, no estimate. Costs from one node to all. */
function plainDijkstra(field: CostField, from: number): Float64Array {
  const { columns, rows } = field.grid;
  const cost = new Float64Array(columns * rows).fill(Infinity);
  const done = new Uint8Array(columns * rows);
  cost[from] = 0;
  for (;;) {
    let node = -1;
    for (let n = 0; n < cost.length; n++) {
      if (
        !done[n] &&
        (cost[n] as number) < Infinity &&
        (node < 0 || (cost[n] as number) < (cost[node] as number))
      )
        node = n;
    }
    if (node < 0) return cost;
    done[node] = 1;
    const [i, k] = [node % columns, Math.floor(node / columns)];
    for (let dx = -3; dx <= 3; dx++) {
      for (let dy = -3; dy <= 3; dy++) {
        const [longer, shorter] = [
          Math.max(Math.abs(dx), Math.abs(dy)),
          Math.min(Math.abs(dx), Math.abs(dy)),
        ];
        const known = `${longer} ${shorter}`;
        if (!['1 0', '1 1', '2 1', '3 1', '3 2'].includes(known)) continue;
        const [x, y] = [i + dx, k + dy];
        if (x < 0 || y < 0 || x >= columns || y >= rows) continue;
        const to = y * columns + x;
        const next = (cost[node] as number) + stepCost(field, i, k, dx, dy);
        if (next < (cost[to] as number)) cost[to] = next;
      }
    }
  }
}

describe('the search over the lattice', () => {
  it('goes in 32 directions', () => {
    const bearings = new Set(moves.map(({ dx, dy }) => Math.round((Math.atan2(dy, dx) * 180) / Math.PI)));
    expect(bearings.size).toBe(32);
    for (const { share } of moves) expect(share.reduce((a, b) => a + b)).toBeCloseTo(1, 12);
  });

  it.each([1, 2, 3, 4])('finds what a plain shortest-path method finds (ground %i)', (seed) => {
    const random = seeded(seed);
    const hills = Array.from({ length: 6 }, () => [
      random() * 12,
      random() * 12,
      1 + 3 * random(),
      4 * random(),
    ]);
    const field = plainField({
      sizeM: 12,
      cellM: 0.5,
      smooth: (x, y) =>
        hills.reduce(
          (sum, [hx, hy, r, h]) =>
            sum +
            (h as number) *
              Math.exp(-(((x - (hx as number)) ** 2 + (y - (hy as number)) ** 2) / (r as number) ** 2)),
          0,
        ),
    });
    const { x0, y0, cellM, columns } = field.grid;
    const node = (x: number, y: number): number =>
      Math.round((y - y0) / cellM) * columns + Math.round((x - x0) / cellM);
    const place = (n: number): [number, number] => [
      x0 + (n % columns) * cellM,
      y0 + Math.floor(n / columns) * cellM,
    ];
    const [a, b] = [node(1, 1.5), node(11, 10.5)];
    const witness = plainDijkstra(field, a)[b] as number;
    const [to] = [place(b)];
    const found = searchGrid(field, place(a), [{ x: to[0], y: to[1] }]);
    // the first and last steps may be taken straight by the true integral instead of by the nodes' values
    expect(found?.cost).toBeLessThanOrEqual(witness * (1 + 1e-9));
    expect(found?.cost).toBeGreaterThan(witness * 0.995);
  });

  it('takes the cheapest of several ends, what ending there costs counted in', () => {
    const field = plainField();
    const near = { x: 10, y: 5 };
    const far = { x: 5, y: 20 };
    expect(searchGrid(field, [5, 5], [far, near])?.target).toBe(near);
    const dear = { ...near, cost: 30 };
    expect(searchGrid(field, [5, 5], [far, dear])?.target).toBe(far);
  });

  it('ends at many places as well', () => {
    const field = plainField();
    const main = Array.from({ length: 40 }, (_, i) => ({ x: 20, y: 2 + i * 0.6 }));
    const found = searchGrid(field, [5, 14], main);
    expect(found?.cost).toBeCloseTo(15, 1);
  });

  it('does not cut corners', () => {
    const house = {
      id: 'house',
      of: 'inside' as const,
      shape: rectangle(10, 10, 20, 20),
      clearanceM: 0.3,
      ends: [],
    };
    const thin = {
      id: 'wall',
      of: 'edges' as const,
      shape: openPath([3, 25], [24, 21]),
      clearanceM: 0.3,
      ends: [],
    };
    const field = plainField({ keepouts: [house, thin] });
    const { points } = searchGrid(field, [9, 9], [{ x: 21, y: 26 }]) ?? { points: [] };
    expect(points.length).toBeGreaterThan(2);
    points.slice(1).forEach(([x, y], i) => {
      const [px, py] = points[i] as readonly [number, number];
      expect(field.clear(px, py, x, y)).toBe(true);
    });
  });

  it('stops when it is told to', () => {
    let asked = 0;
    const dear = { id: 'dear', shape: rectangle(5, 5, 28, 28), morePerM: 20, layer: 'surface' as const };
    const found = searchGrid(plainField({ cellM: 0.25, areas: [dear] }), [1, 1], [{ x: 29, y: 29 }], {
      shouldStop: () => {
        asked++;
        return true;
      },
    });
    expect(asked).toBeGreaterThan(0);
    expect(found).toBeNull();
  });
});
