import type { CostField } from '../../../packages/core/src/route/cost-field.js';
import { moves } from '../../../packages/core/src/route/moves.js';

/**
 * Cheapest tree over the nodes of a lattice that joins all terminals: the exact method of Dreyfus & Wagner (1971),
 * Networks 1:195-207, by subsets of the terminals, with plain rounds of relaxation in place of a queue. Straights are
 * weighed by the field itself.
 */
export function gridSteiner(field: CostField, terminals: readonly (readonly [number, number])[]): number {
  const { x0, y0, cellM, columns, rows } = field.grid;
  const count = columns * rows;
  const edges: [from: number, to: number, cost: number][] = [];
  for (let k = 0; k < rows; k++) {
    for (let i = 0; i < columns; i++) {
      for (const { dx, dy } of moves) {
        const [ni, nk] = [i + dx, k + dy];
        if (ni < 0 || nk < 0 || ni >= columns || nk >= rows) continue;
        const cost = field.between(x0 + i * cellM, y0 + k * cellM, x0 + ni * cellM, y0 + nk * cellM);
        if (cost < Infinity) edges.push([k * columns + i, nk * columns + ni, cost]);
      }
    }
  }
  const nodeAt = ([x, y]: readonly [number, number]): number =>
    Math.round((y - y0) / cellM) * columns + Math.round((x - x0) / cellM);
  const relax = (cost: Float64Array): void => {
    for (let changed = true; changed; ) {
      changed = false;
      for (const [from, to, step] of edges) {
        const next = (cost[from] as number) + step;
        if (next < (cost[to] as number) - 1e-12) {
          cost[to] = next;
          changed = true;
        }
      }
    }
  };
  const roots = terminals.slice(1);
  const tables: Float64Array[] = [];
  for (let set = 1; set < 1 << roots.length; set++) {
    const cost = new Float64Array(count).fill(Infinity);
    roots.forEach((terminal, i) => {
      if (set === 1 << i) cost[nodeAt(terminal)] = 0;
    });
    for (let part = (set - 1) & set; part > 0; part = (part - 1) & set) {
      const [a, b] = [tables[part] as Float64Array, tables[set ^ part] as Float64Array];
      for (let n = 0; n < count; n++)
        cost[n] = Math.min(cost[n] as number, (a[n] as number) + (b[n] as number));
    }
    relax(cost);
    tables[set] = cost;
  }
  return (tables[(1 << roots.length) - 1] as Float64Array)[
    nodeAt(terminals[0] as readonly [number, number])
  ] as number;
}
