import { describe, expect, it } from 'vitest';
import type { PlannedNetwork } from '../../../packages/core/src/model/network.js';
import type { CostField } from '../../../packages/core/src/route/cost-field.js';
import { type NetworkOptions, planNetwork } from '../../../packages/core/src/route/network.js';
import { seeded } from '../../scenes/seeded.js';
import { gridSteiner } from './grid-steiner.js';
import { lengthOf, plainField, rectangle } from './plain-field.js';

/** One pipe for all, fittings for nothing. */
const ONE_PIPE: NetworkOptions = { pipeFor: () => ({ sizeM: 0.1, morePerM: 0 }), wyeEach: 0, bendEach: 0 };

type Place = readonly [x: number, y: number];

function plan(
  field: CostField,
  sources: readonly Place[],
  outlets: readonly Place[],
  options = ONE_PIPE,
  loads: readonly number[] = [],
): PlannedNetwork {
  const network = planNetwork(
    field,
    sources.map(([x, y], i) => ({ id: `S${i + 1}`, x, y, load: loads[i] ?? 1 })),
    outlets.map(([x, y], i) => ({ id: `O${i + 1}`, x, y })),
    options,
  );
  if (network === null) throw new Error('no network');
  expectWhole(network, sources.length, options.wyeEach);
  return network;
}

/** Every source drains to an outlet, loads add up, lines join end to end, nothing costs more than separate lines. */
function expectWhole(network: PlannedNetwork, sources: number, wyeEach: number): void {
  for (let i = 1; i <= sources; i++) {
    let at = `S${i}`;
    for (let steps = 0; !at.startsWith('O'); steps++) {
      expect(steps).toBeLessThan(50);
      const down = network.lines.filter(({ from }) => from === at);
      expect(down.length).toBe(1);
      at = down[0]?.to as string;
    }
  }
  for (const { from, load } of network.lines) {
    const into = network.lines.filter(({ to }) => to === from).reduce((sum, line) => sum + line.load, 0);
    if (from.startsWith('J')) expect(load).toBeCloseTo(into, 9);
    else expect(load).toBeGreaterThanOrEqual(into);
  }
  for (const { points, lengthM } of network.lines) expect(lengthOf(points)).toBeCloseTo(lengthM, 9);
  const sum = network.lines.reduce((total, { lengthM }) => total + lengthM, 0);
  expect(network.lengthM).toBeCloseTo(sum, 9);
  const wyes = network.junctions.reduce((total, { branches }) => total + branches.length, 0);
  const paid = network.lines.reduce((total, { cost }) => total + cost, 0) + wyes * wyeEach;
  expect(network.cost).toBeCloseTo(paid, 9);
  expect(network.cost).toBeLessThanOrEqual(network.separate.cost);
}

describe('a network on even ground', () => {
  const field = plainField({ sizeM: 20 });

  it('is one straight line for one source', () => {
    const network = plan(field, [[2, 3]], [[14, 8]]);
    expect(network).toMatchObject({ shape: 'separate', junctions: [] });
    expect(network.lengthM).toBeCloseTo(13, 2);
  });

  it('joins two sources at 120 degrees, the point of Fermat', () => {
    const network = plan(
      field,
      [
        [5, 15],
        [15, 15],
      ],
      [[10, 3]],
    );
    // isosceles, base 10, height 12: 12 + 5 sqrt 3
    expect(network.lengthM).toBeCloseTo(12 + 5 * Math.sqrt(3), 2);
    expect(network.shape).toBe('shared');
    const [junction] = network.junctions;
    expect(junction?.x).toBeCloseTo(10, 1);
    expect(junction?.y).toBeCloseTo(15 - 5 / Math.sqrt(3), 1);
    expect(junction?.mainTurnDegrees).toBeCloseTo(60, -0.5);
    expect(junction?.branches).toHaveLength(1);
    expect(junction?.branches[0]?.bendDegrees).toEqual([22.5]);
  });

  it('joins the corners of a square in 1 + sqrt 3 sides', () => {
    const network = plan(
      field,
      [
        [4, 4],
        [14, 4],
        [4, 14],
      ],
      [[14, 14]],
    );
    expect(network.lengthM).toBeCloseTo(10 * (1 + Math.sqrt(3)), 1);
    expect(network.junctions).toHaveLength(2);
  });

  it('runs through a source that lies on the way, with a wye there but for a basin', () => {
    const network = plan(
      field,
      [
        [2, 10],
        [10, 10],
      ],
      [[18, 10]],
    );
    expect(network.lengthM).toBeCloseTo(16, 3);
    expect(network.lines.map(({ id, load }) => `${id} ${load}`).sort()).toEqual(['S1-S2 1', 'S2-O1 2']);
    const [junction] = network.junctions;
    expect(junction).toMatchObject({
      id: 'S2',
      main: 'S1-S2',
      branches: [{ line: 'S2', bendDegrees: [45] }],
    });
    const basin = planNetwork(
      field,
      [
        { id: 'S1', x: 2, y: 10, load: 1 },
        { id: 'S2', x: 10, y: 10, load: 1, basin: true },
      ],
      [{ id: 'O1', x: 18, y: 10 }],
      { ...ONE_PIPE, wyeEach: 3 },
    );
    expect(basin).toMatchObject({ junctions: [], cost: expect.closeTo(16, 3) });
  });

  it('takes each source to the outlet that is cheapest for the whole', () => {
    const network = plan(
      field,
      [
        [3, 3],
        [4, 3],
        [16, 17],
      ],
      [
        [3, 1],
        [17, 19],
      ],
    );
    const to = (id: string): string | undefined => network.lines.find(({ from }) => from === id)?.to;
    expect(to('S3')).toBe('O2');
    expect(network.lengthM).toBeLessThan(8);
  });

  it('keeps lines apart where a shared pipe would cost more than it saves', () => {
    const dear: NetworkOptions = {
      pipeFor: (load) => ({ sizeM: load > 1 ? 0.2 : 0.1, morePerM: load > 1 ? 1.5 : 0 }),
      wyeEach: 0,
      bendEach: 0,
    };
    const network = plan(
      field,
      [
        [5, 15],
        [15, 15],
      ],
      [[10, 3]],
      dear,
    );
    expect(network.shape).toBe('separate');
    expect(network.lengthM).toBeCloseTo(26, 2);
    expect(network.cost).toBe(network.separate.cost);
    expect(network.lines.every(({ sizeM }) => sizeM === 0.1)).toBe(true);
  });

  it('joins lines further down the dearer the shared pipe is, and sizes it for what runs in it', () => {
    const main = (morePerM: number): NetworkOptions => ({
      pipeFor: (load) => (load > 1 ? { sizeM: 0.15, morePerM } : { sizeM: 0.1, morePerM: 0 }),
      wyeEach: 0,
      bendEach: 0,
    });
    const places = [0, 0.3, 0.6].map((more) => {
      const network = plan(
        field,
        [
          [5, 15],
          [15, 15],
        ],
        [[10, 3]],
        main(more),
      );
      expect(network.lines.find(({ to }) => to === 'O1')?.sizeM).toBe(0.15);
      // two branches at angle a to the main balance it: 2 cos a = 1 + more
      const y = network.junctions[0]?.y as number;
      const down = Math.atan2(5, 15 - y);
      expect(2 * Math.cos(down)).toBeCloseTo(1 + more, 1);
      return y;
    });
    expect(places[0]).toBeGreaterThan(places[1] as number);
    expect(places[1]).toBeGreaterThan(places[2] as number);
  });

  it('gives up a junction that a wye costs more than', () => {
    const wyes = (wyeEach: number): number =>
      plan(
        field,
        [
          [9, 15],
          [11, 15],
        ],
        [[10, 12]],
        { ...ONE_PIPE, wyeEach },
      ).junctions.length;
    expect(wyes(0)).toBe(1);
    expect(wyes(5)).toBe(0);
  });

  it('refuses nothing to join and ids used twice', () => {
    const place = { id: 'A', x: 1, y: 1 };
    expect(() => planNetwork(field, [], [place], ONE_PIPE)).toThrow(/source/);
    expect(() => planNetwork(field, [{ ...place, load: 1 }], [place], ONE_PIPE)).toThrow(/'A' twice/);
    expect(() => planNetwork(field, [{ ...place, load: -1 }], [{ ...place, id: 'B' }], ONE_PIPE)).toThrow(
      /load/,
    );
  });
});

/** Length of the shortest tree of straights between the places themselves (Prim). */
function spanningLength(places: readonly Place[]): number {
  const left = [...places];
  const done = left.splice(0, 1);
  let sum = 0;
  while (left.length > 0) {
    const gap = ([x, y]: Place): number => Math.min(...done.map(([u, v]) => Math.hypot(x - u, y - v)));
    const next = left.reduce((best, each, i) => (gap(each) < gap(left[best] as Place) ? i : best), 0);
    sum += gap(left[next] as Place);
    done.push(...left.splice(next, 1));
  }
  return sum;
}

describe('a network of many sources', () => {
  it('is no longer than the shortest tree between the places, nor shorter than any tree can be', () => {
    const random = seeded(7);
    const field = plainField({ sizeM: 30 });
    for (let lot = 0; lot < 3; lot++) {
      const places = Array.from({ length: 9 }, (): Place => [1 + 28 * random(), 1 + 28 * random()]);
      const network = plan(field, places.slice(1), places.slice(0, 1));
      const spanning = spanningLength(places);
      expect(network.lengthM).toBeLessThanOrEqual(spanning * (1 + 1e-6));
      // 0.824 of it is the least that is proved (Chung & Graham 1985)
      expect(network.lengthM).toBeGreaterThan(0.824 * spanning);
      expect(network.shape).toBe('shared');
    }
  });
});

describe('a network among obstacles', () => {
  it('is null where a source is walled in', () => {
    const wall = { id: 'w', of: 'edges' as const, shape: rectangle(1, 1, 5, 5), clearanceM: 0.2, ends: [] };
    const field = plainField({ sizeM: 12, keepouts: [wall] });
    const walledIn = planNetwork(
      field,
      [{ id: 'A', x: 3, y: 3, load: 1 }],
      [{ id: 'O', x: 10, y: 10 }],
      ONE_PIPE,
    );
    expect(walledIn).toBeNull();
  });

  it('costs no more than separate lines and no more than the best tree over the lattice', () => {
    const random = seeded(20_261_125);
    const between = (low: number, high: number): number => low + Math.round((high - low) * random());
    const left: number[] = [];
    let shared = 0;
    for (let lot = 0; lot < 16; lot++) {
      const house = rectangle(6, 6 + (lot % 3), 11, 11);
      const [hx, hy] = [between(2, 14), between(2, 14)];
      const field = plainField({
        sizeM: 17,
        cellM: 1,
        keepouts: [{ id: 'house', of: 'inside', shape: house, clearanceM: 0.3, ends: [] }],
        smooth: (x, y) => 3 * Math.exp(-((x - hx) ** 2 + (y - hy) ** 2) / 12),
      });
      const free = (): Place => {
        for (;;) {
          const at: Place = [between(0, 17), between(0, 17)];
          if (at[0] < 5 || at[0] > 12 || at[1] < 5 || at[1] > 12) return at;
        }
      };
      const places: Place[] = [];
      while (places.length < 3 + (lot % 2)) {
        const at = free();
        if (!places.some(([x, y]) => Math.hypot(x - at[0], y - at[1]) < 2)) places.push(at);
      }
      const network = plan(field, places.slice(1), places.slice(0, 1));
      const best = gridSteiner(field, places);
      if (network.shape === 'shared') shared++;
      left.push(network.cost / best - 1);
    }
    console.info(
      `networks on 16 seeded lots: ${shared} shared, against the best tree over the lattice ` +
        `${left.map((share) => `${(100 * share).toFixed(1)} %`).join(', ')}`,
    );
    expect(shared).toBeGreaterThan(10);
    // both take a metre's cost between nodes, by different rules: half a per cent at most
    expect(Math.max(...left)).toBeLessThan(0.005);
  });
});
