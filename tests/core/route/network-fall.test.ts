import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type {
  NetworkFall,
  NetworkFallLimits,
  NetworkProfile,
} from '../../../packages/core/src/model/network-fall.js';
import { layInvert } from '../../../packages/core/src/route/fall.js';
import { layNetwork } from '../../../packages/core/src/route/network-fall.js';

const LIMITS: NetworkFallLimits = { minFall: 0.01, maxFall: 0.5, minCoverM: 0.3, maxDepthM: 1.2 };

const line = (
  from: string,
  to: string,
  stationM: number[],
  groundM: (number | null)[],
  pipeHeightM = 0.1,
): NetworkProfile => ({
  id: `${from}-${to}`,
  from,
  to,
  stationM,
  groundM,
  pipeHeightM,
});

type Laid = Extract<NetworkFall, { kind: 'laid' }>;

function laid(lines: readonly NetworkProfile[], limits = LIMITS): Laid {
  const result = layNetwork(lines, limits);
  expect(result.kind).toBe('laid');
  return result as Laid;
}

const pipeOf = (network: Laid, id: string): Laid['lines'][number]['pipe'] => {
  const found = network.lines.find((each) => each.id === id);
  if (!found) throw new Error(id);
  return found.pipe;
};

const startOf = (network: Laid, id: string): number => pipeOf(network, id).invertM[0] as number;
const endOf = (network: Laid, id: string): number => pipeOf(network, id).invertM.at(-1) as number;

describe('pipes of a network', () => {
  it('meet at one invert, that of the lowest', () => {
    // the long branch has fallen further at the junction: the short one goes down to it
    const network = laid([
      line('A', 'J', [0, 40], [100, 100]),
      line('B', 'J', [0, 5], [100, 100]),
      line('J', 'O', [0, 10], [100, 100]),
    ]);
    expect(endOf(network, 'A-J')).toBeCloseTo(99.2, 9);
    expect(endOf(network, 'B-J')).toBe(endOf(network, 'A-J'));
    expect(startOf(network, 'J-O')).toBeCloseTo(99.2, 9);
    expect(startOf(network, 'B-J')).toBeCloseTo(99.6, 9);
    expect(pipeOf(network, 'B-J').fall.max).toBeLessThanOrEqual(0.5 + 1e-9);
  });

  it('lie lower above a main that has to pass under a hollow', () => {
    const network = laid([line('A', 'J', [0, 2], [100, 100]), line('J', 'O', [0, 1, 5], [100, 99.3, 99.3])], {
      ...LIMITS,
      maxFall: 0.05,
    });
    // 99.3 less 0.4 at 1 m into the main; up from there at 5 %
    expect(startOf(network, 'J-O')).toBeCloseTo(98.95, 9);
    expect(startOf(network, 'A-J')).toBeCloseTo(99.05, 9);
  });

  it('say which line falls short, by how much, and what helps', () => {
    const none = layNetwork(
      [
        line('A', 'J', [0, 60], [100, 100]),
        line('B', 'J', [0, 5], [100, 100]),
        line('J', 'O', [0, 40], [100, 100]),
      ],
      LIMITS,
    );
    expect(none).toMatchObject({
      kind: 'impossible',
      line: 'J-O',
      atM: 40,
      shortfallM: expect.closeTo(0.2, 9),
    });
    expect(none.kind === 'impossible' && none.remedies.map(({ kind }) => kind)).toEqual([
      'dig-deeper',
      'less-cover',
      'pump',
    ]);
  });

  it('are held by the inverts of sources and outlets', () => {
    const lines = [line('A', 'O', [0, 10], [100, 100])];
    const network = laid(lines, { ...LIMITS, ends: { A: { mostM: 99.5 }, O: { leastM: 99.3 } } });
    expect(startOf(network, 'A-O')).toBeCloseTo(99.5, 9);
    expect(layNetwork(lines, { ...LIMITS, ends: { A: { mostM: 99.5 }, O: { leastM: 99.45 } } }).kind).toBe(
      'impossible',
    );
  });

  it('say where the ground is not known, and refuse a ring', () => {
    expect(layNetwork([line('A', 'O', [0, 5, 9], [100, null, 99])], LIMITS)).toEqual({
      kind: 'unknown',
      lines: [{ id: 'A-O', kind: 'unknown', unknown: [[0, 9]] }],
    });
    const ring = [line('A', 'B', [0, 5], [1, 1]), line('B', 'A', [0, 5], [1, 1])];
    expect(() => layNetwork(ring, LIMITS)).toThrow(/ring/);
  });
});

const grounds = fc.array(fc.integer({ min: -50, max: 15 }), { minLength: 4, maxLength: 8 }).map((rises) => {
  const stationM = [0];
  const groundM = [100];
  rises.forEach((rise, i) => {
    stationM.push(4 * (i + 1));
    groundM.push((groundM[i] as number) + (4 * rise) / 1000);
  });
  return { stationM, groundM };
});

describe('any line cut in two, or with a twin', () => {
  it('is possible where the whole line is, and short by as much where it is not', () => {
    let [tried, possible] = [0, 0];
    fc.assert(
      fc.property(
        grounds,
        fc.nat({ max: 2 }),
        fc.constantFrom(0.03, 0.2),
        ({ stationM, groundM }, extra, maxFall) => {
          const cut = 1 + extra;
          const at = stationM[cut] as number;
          const limits = { ...LIMITS, maxFall, maxDepthM: 0.9 };
          const whole = layInvert({ stationM, groundM }, { ...limits, pipeHeightM: 0.1 });
          const upper = (from: string): NetworkProfile =>
            line(from, 'J', stationM.slice(0, cut + 1), groundM.slice(0, cut + 1));
          const lower = line(
            'J',
            'O',
            stationM.slice(cut).map((s) => s - at),
            groundM.slice(cut),
          );
          for (const lines of [
            [upper('A'), lower],
            [lower, upper('B'), upper('A')],
          ]) {
            const parts = layNetwork(lines, limits);
            tried++;
            expect(parts.kind).toBe(whole.kind);
            if (parts.kind === 'impossible' && whole.kind === 'impossible') {
              expect(parts.shortfallM).toBeCloseTo(whole.shortfallM, 7);
            }
            if (parts.kind !== 'laid') continue;
            possible++;
            const inverts = new Map<string, number>();
            for (const { id, pipe } of parts.lines) {
              expect(pipe.coverM.min).toBeGreaterThanOrEqual(0.3 - 1e-7);
              expect(pipe.depthM.max).toBeLessThanOrEqual(0.9 + 1e-7);
              expect(pipe.fall.min).toBeGreaterThanOrEqual(0.01 - 1e-7);
              expect(pipe.fall.max).toBeLessThanOrEqual(maxFall + 1e-7);
              const [from, to] = id.split('-') as [string, string];
              for (const [end, z] of [
                [from, pipe.invertM[0]],
                [to, pipe.invertM.at(-1)],
              ] as const) {
                expect(z).toBeCloseTo(inverts.get(end) ?? (z as number), 9);
                inverts.set(end, z as number);
              }
            }
          }
        },
      ),
      { numRuns: 100, seed: 21 },
    );
    expect(possible).toBeGreaterThan(0.2 * tried);
  });
});
