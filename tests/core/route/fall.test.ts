import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FallLimits, FallRemedy, LaidPipe, NoFall } from '../../../packages/core/src/model/fall.js';
import { layInvert } from '../../../packages/core/src/route/fall.js';
import { heightAt } from '../../../packages/core/src/route/fall-envelope.js';
import { byDifferenceConstraints } from './difference-constraints.js';

const PIPE: FallLimits = { minFall: 0.01, minCoverM: 0.3, maxDepthM: 1.2, pipeHeightM: 0.1 };

const flat = (lengthM: number, z = 100): { stationM: number[]; groundM: number[] } => ({
  stationM: [0, lengthM],
  groundM: [z, z],
});

const laid = (profile: { stationM: number[]; groundM: (number | null)[] }, limits: FallLimits): LaidPipe => {
  const result = layInvert(profile, limits);
  expect(result.kind).toBe('laid');
  return result as LaidPipe;
};

const failed = (profile: { stationM: number[]; groundM: number[] }, limits: FallLimits): NoFall => {
  const result = layInvert(profile, limits);
  expect(result.kind).toBe('impossible');
  return result as NoFall;
};

const remedy = <K extends FallRemedy['kind']>(
  none: NoFall,
  kind: K,
): Extract<FallRemedy, { kind: K }> | undefined =>
  none.remedies.find((each): each is Extract<FallRemedy, { kind: K }> => each.kind === kind);

describe('a pipe laid with fall', () => {
  it('starts at its cover and takes the least fall on level ground', () => {
    const pipe = laid(flat(40), PIPE);
    expect(pipe.invertM[0]).toBeCloseTo(99.6, 12);
    expect(pipe.invertM[pipe.invertM.length - 1]).toBeCloseTo(99.2, 12);
    expect(pipe.grades).toEqual([{ fromM: 0, toM: 40, fall: expect.closeTo(0.01, 12) }]);
    expect(pipe.depthM).toEqual({ min: expect.closeTo(0.4, 12), max: expect.closeTo(0.8, 12) });
    expect(pipe.coverM.min).toBeCloseTo(0.3, 12);
  });

  it('runs with the ground where that falls faster', () => {
    const pipe = laid({ stationM: [0, 20], groundM: [100, 99] }, PIPE);
    expect(pipe.fall).toEqual({ min: expect.closeTo(0.05, 12), max: expect.closeTo(0.05, 12) });
    expect(pipe.depthM.max).toBeCloseTo(0.4, 12);
  });

  it('goes deeper under a rise and under the far side of a hollow', () => {
    const pipe = laid({ stationM: [0, 10, 20, 30], groundM: [100, 99.5, 99.9, 99.4] }, PIPE);
    expect(pipe.invertM[pipe.stationM.indexOf(10)]).toBeLessThanOrEqual(99.1 + 1e-12);
    expect(pipe.depthM.max).toBeGreaterThan(0.89);
  });

  it('comes out of the ground where no cover is asked for before the outlet', () => {
    const bank = { stationM: [0, 20, 22], groundM: [100, 100, 99.3] };
    const limits = { ...PIPE, outlet: { leastM: 99.3 } };
    expect(failed(bank, limits).below).toBe('outlet');
    const pipe = laid(bank, { ...limits, bareBeforeOutletM: 2 });
    expect(pipe.invertM[pipe.invertM.length - 1]).toBeCloseTo(99.3, 9);
  });

  it('takes water at a given height and ends at a given one', () => {
    const pipe = laid(flat(20), { ...PIPE, source: { mostM: 99.4 }, outlet: { leastM: 98.9, mostM: 98.9 } });
    expect(pipe.invertM[0]).toBeLessThanOrEqual(99.4 + 1e-12);
    expect(pipe.invertM[pipe.invertM.length - 1]).toBeCloseTo(98.9, 9);
  });

  it('says where the ground is not known instead of taking it as 0', () => {
    expect(layInvert({ stationM: [0, 5, 10, 15, 20], groundM: [100, null, null, 99, 98] }, PIPE)).toEqual({
      kind: 'unknown',
      unknown: [[0, 15]],
    });
    expect(layInvert({ stationM: [0, 5], groundM: [null, null] }, PIPE)).toEqual({
      kind: 'unknown',
      unknown: [[0, 5]],
    });
  });

  it('refuses stations that do not grow and limits without sense', () => {
    expect(() => layInvert({ stationM: [0, 5, 5], groundM: [1, 1, 1] }, PIPE)).toThrow(/grow/);
    expect(() => layInvert({ stationM: [1, 5], groundM: [1, 1] }, PIPE)).toThrow(/grow/);
    expect(() => layInvert(flat(5), { ...PIPE, minFall: -0.1 })).toThrow(/minFall/);
    expect(() => layInvert(flat(5), { ...PIPE, maxFall: 0.001 })).toThrow(/maxFall/);
    expect(() => layInvert(flat(5), { ...PIPE, maxDepthM: Number.NaN })).toThrow(/maxDepthM/);
  });
});

describe('where no pipe can fall all the way', () => {
  it('says by how much, where, and what holds it down', () => {
    const none = failed(flat(100), PIPE);
    // 0.4 m at the start and 1 m of fall: 0.2 m deeper than the 1.2 m allowed
    expect(none.shortfallM).toBeCloseTo(0.2, 9);
    expect(none).toMatchObject({ atM: 100, below: 'depth', heldDownBy: 'cover', heldDownAtM: 0 });
    expect(remedy(none, 'dig-deeper')?.maxDepthM).toBeCloseTo(1.4, 9);
    expect(remedy(none, 'less-cover')?.minCoverM).toBeCloseTo(0.1, 9);
    expect(remedy(none, 'flatter')?.fall).toBeCloseTo(0.008, 9);
    expect(remedy(none, 'pump')?.liftM).toBeCloseTo(0.2, 9);
    expect(remedy(none, 'dry-well')?.atM).toBeCloseTo(80, 6);
    expect(remedy(none, 'raise-source')).toBeUndefined();
    expect(remedy(none, 'lower-outlet')).toBeUndefined();
  });

  it('asks to raise the source where that alone holds it down', () => {
    const none = failed(flat(30), { ...PIPE, source: { mostM: 99 } });
    expect(none).toMatchObject({ heldDownBy: 'source', heldDownAtM: 0, below: 'depth' });
    expect(remedy(none, 'raise-source')?.byM).toBeCloseTo(none.shortfallM, 12);
    expect(remedy(none, 'less-cover')).toBeUndefined();
  });

  it('asks to lower the outlet where that alone is too high', () => {
    const none = failed(flat(30), { ...PIPE, outlet: { leastM: 99.4 } });
    expect(none).toMatchObject({ below: 'outlet', atM: 30 });
    expect(none.shortfallM).toBeCloseTo(0.1, 9);
    expect(remedy(none, 'lower-outlet')?.byM).toBeCloseTo(0.1, 9);
    expect(remedy(none, 'dig-deeper')).toBeUndefined();
    expect(remedy(none, 'dry-well')?.atM).toBeCloseTo(30, 9);
  });

  it('offers no fall flatter than a sixteenth of an inch per foot', () => {
    const none = failed(flat(200), PIPE);
    expect(remedy(none, 'flatter')).toBeUndefined();
  });
});

/** Random ground, up and down by up to 6 % from station to station, and limits of all kinds. */
const scenes = fc.record({
  steps: fc.array(
    fc.record({
      lengthM: fc.integer({ min: 1, max: 12 }),
      rise: fc.integer({ min: -60, max: 20 }).map((r) => r / 1000),
    }),
    { minLength: 1, maxLength: 9 },
  ),
  minFall: fc.constantFrom(0.005, 0.01, 0.02),
  maxFall: fc.constantFrom(undefined, undefined, 0.03, 0.2),
  minCoverM: fc.constantFrom(0, 0.3, 0.6),
  maxDepthM: fc.constantFrom(0.9, 1.2, 2),
  source: fc.option(
    fc.integer({ min: -90, max: -10 }).map((cm) => cm / 100),
    { nil: undefined, freq: 2 },
  ),
  fixed: fc.constantFrom(false, false, true),
  outlet: fc.option(
    fc.integer({ min: -150, max: 0 }).map((cm) => cm / 100),
    { nil: undefined, freq: 2 },
  ),
  bareM: fc.constantFrom(0, 2),
});

type Scene = typeof scenes extends fc.Arbitrary<infer T> ? T : never;

function read(scene: Scene): { profile: { stationM: number[]; groundM: number[] }; limits: FallLimits } {
  const stationM = [0];
  const groundM = [100];
  for (const { lengthM, rise } of scene.steps) {
    stationM.push((stationM[stationM.length - 1] as number) + lengthM);
    groundM.push((groundM[groundM.length - 1] as number) + lengthM * rise);
  }
  const end = groundM[groundM.length - 1] as number;
  const source = scene.source === undefined ? undefined : 100 + scene.source;
  return {
    profile: { stationM, groundM },
    limits: {
      minFall: scene.minFall,
      ...(scene.maxFall === undefined ? {} : { maxFall: scene.maxFall }),
      minCoverM: scene.minCoverM,
      maxDepthM: scene.maxDepthM,
      pipeHeightM: 0.11,
      ...(source === undefined
        ? {}
        : { source: scene.fixed ? { leastM: source, mostM: source } : { mostM: source } }),
      ...(scene.outlet === undefined ? {} : { outlet: { leastM: end + scene.outlet } }),
      bareBeforeOutletM: scene.bareM,
    },
  };
}

const SLACK = 1e-7;

/** Every rule, at every station and between. */
function expectKept(pipe: LaidPipe, limits: FallLimits): void {
  const line = pipe.stationM.map((s, i) => ({ s, z: pipe.invertM[i] as number }));
  const ground = pipe.stationM.map((s, i) => ({ s, z: pipe.groundM[i] as number }));
  const lengthM = pipe.stationM[pipe.stationM.length - 1] as number;
  const bareFrom = lengthM - (limits.bareBeforeOutletM ?? 0);
  const steepest = limits.maxFall ?? 1;
  for (let i = 0; i <= 200; i++) {
    const s = (lengthM * i) / 200;
    const z = heightAt(line, s);
    const g = heightAt(ground, s);
    const cover = s > bareFrom ? 0 : limits.minCoverM + limits.pipeHeightM;
    expect(z).toBeLessThanOrEqual(g - cover + SLACK);
    expect(z).toBeGreaterThanOrEqual(g - limits.maxDepthM - SLACK);
  }
  line.slice(1).forEach((b, i) => {
    const a = line[i] as (typeof line)[number];
    const run = b.s - a.s;
    expect(a.z - b.z).toBeGreaterThanOrEqual(limits.minFall * run - SLACK);
    expect(a.z - b.z).toBeLessThanOrEqual(steepest * run + SLACK);
  });
  const [first, last] = [line[0]?.z as number, line[line.length - 1]?.z as number];
  expect(first).toBeLessThanOrEqual((limits.source?.mostM ?? Infinity) + SLACK);
  expect(first).toBeGreaterThanOrEqual((limits.source?.leastM ?? -Infinity) - SLACK);
  expect(last).toBeGreaterThanOrEqual((limits.outlet?.leastM ?? -Infinity) - SLACK);
}

describe('any ground and any limits', () => {
  it('are kept to by a pipe, or no pipe exists by a system of difference constraints either', () => {
    let laidCount = 0;
    let noneCount = 0;
    fc.assert(
      fc.property(scenes, (scene) => {
        const { profile, limits } = read(scene);
        const result = layInvert(profile, limits);
        const witness = byDifferenceConstraints(profile, limits);
        if (result.kind === 'laid') {
          laidCount++;
          expectKept(result, limits);
          expect(witness.missedBy).toBeLessThanOrEqual(SLACK);
        } else if (result.kind === 'impossible') {
          noneCount++;
          // the witness makes all lower bounds lower by one amount until it finds a line
          expect(Math.abs(witness.missedBy - result.shortfallM)).toBeLessThan(1e-6);
        } else expect.unreachable('all levels are known');
      }),
      { numRuns: 400, seed: 20_261_125 },
    );
    const tried = laidCount + noneCount;
    expect(laidCount).toBeGreaterThan(0.15 * tried);
    expect(noneCount).toBeGreaterThan(0.15 * tried);
  });

  it('leave a pipe that is as shallow as any, but for an inch for the sake of straight grades', () => {
    fc.assert(
      fc.property(scenes, (scene) => {
        const { profile, limits } = read(scene);
        const result = layInvert(profile, limits);
        if (result.kind !== 'laid') return;
        const { highest, stationM } = byDifferenceConstraints(profile, limits);
        const line = result.stationM.map((s, i) => ({ s, z: result.invertM[i] as number }));
        stationM.forEach((s, i) => {
          expect(heightAt(line, s)).toBeLessThanOrEqual((highest[i] as number) + SLACK);
          expect(heightAt(line, s)).toBeGreaterThanOrEqual((highest[i] as number) - 0.03 - SLACK);
        });
      }),
      { numRuns: 200, seed: 7 },
    );
  });

  it('make a line possible once what is offered is done', () => {
    const seen = new Set<string>();
    // every kind must come up, so it takes all of them
    for (const scene of fc.sample(scenes, { numRuns: 400, seed: 11 })) {
      const { profile, limits } = read(scene);
      const none = layInvert(profile, limits);
      if (none.kind !== 'impossible') continue;
      for (const each of none.remedies) {
        const mended = withRemedy(profile, limits, each);
        if (mended === null) continue;
        seen.add(each.kind);
        expect(layInvert(mended.profile, mended.limits).kind, each.kind).toBe('laid');
      }
    }
    expect([...seen].sort()).toEqual(
      ['dig-deeper', 'dry-well', 'flatter', 'less-cover', 'lower-outlet', 'raise-source'].sort(),
    );
  });
});

/** A hair more than was offered, for rounding. */
const HAIR = 1e-7;

function withRemedy(
  profile: { stationM: number[]; groundM: number[] },
  limits: FallLimits,
  each: FallRemedy,
): { profile: { stationM: number[]; groundM: number[] }; limits: FallLimits } | null {
  const { source, outlet } = limits;
  switch (each.kind) {
    case 'raise-source': {
      const raised = (z: number | undefined): number => (z as number) + each.byM + HAIR;
      const least = source?.leastM === undefined ? {} : { leastM: source.leastM };
      return { profile, limits: { ...limits, source: { ...least, mostM: raised(source?.mostM) } } };
    }
    case 'lower-outlet':
      return {
        profile,
        limits: { ...limits, outlet: { leastM: (outlet?.leastM as number) - each.byM - HAIR } },
      };
    case 'dig-deeper':
      return { profile, limits: { ...limits, maxDepthM: each.maxDepthM + HAIR } };
    case 'less-cover':
      return { profile, limits: { ...limits, minCoverM: Math.max(0, each.minCoverM - HAIR) } };
    case 'flatter':
      return { profile, limits: { ...limits, minFall: each.fall - HAIR } };
    case 'pump':
      return null;
    case 'dry-well': {
      const { outlet: _, bareBeforeOutletM: __, ...rest } = limits;
      const ground = profile.stationM.map((s, i) => ({ s, z: profile.groundM[i] as number }));
      const atM = each.atM - HAIR;
      if (atM < 0.01) return null;
      const kept = ground.filter(({ s }) => s < atM);
      const cut = [...kept, { s: atM, z: heightAt(ground, atM) }];
      return { profile: { stationM: cut.map(({ s }) => s), groundM: cut.map(({ z }) => z) }, limits: rest };
    }
  }
}
