import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LineWater } from '../../packages/core/src/model/water-result.js';
import { metres } from '../../packages/core/src/units/quantity.js';
import { flowLeftByBed, flowLeftByLining, headLossAtBall } from '../../packages/core/src/water/blockage.js';
import {
  depthForFlow,
  MOST_FLOW_DEPTH,
  manningFull,
  manningPartial,
  relativeFlow,
  slopeForVelocity,
} from '../../packages/core/src/water/manning.js';
import { rationalPeakM3s } from '../../packages/core/src/water/rational.js';
import { waterOf } from '../../packages/core/src/water/water.js';
import { type Scene, scene } from '../scenes/scene.js';

const RUNS = { seed: 20_261_125, numRuns: 200 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const diameter = between(0.05, 0.6).map(metres);
const slope = between(0.001, 0.2);
const n = between(0.008, 0.03);
/** Grows a value by something that floating point can see. */
const more = between(1.0001, 3);

describe('the full pipe', () => {
  it('carries more when steeper or wider and less when rougher, by the powers of the formula', () => {
    fc.assert(
      fc.property(diameter, slope, n, more, (d, s, rough, k) => {
        const { flowM3s } = manningFull(d, s, rough);
        expect(manningFull(d, s * k, rough).flowM3s / flowM3s).toBeCloseTo(Math.sqrt(k), 9);
        expect(manningFull(metres(d * k), s, rough).flowM3s / flowM3s).toBeCloseTo(k ** (8 / 3), 8);
        expect(manningFull(d, s, rough * k).flowM3s / flowM3s).toBeCloseTo(1 / k, 9);
      }),
      RUNS,
    );
  });

  it('runs at a velocity for which the slope is found again', () => {
    fc.assert(
      fc.property(diameter, slope, n, (d, s, rough) => {
        const { velocityMs } = manningFull(d, s, rough);
        expect(slopeForVelocity(d, rough, velocityMs) / s).toBeCloseTo(1, 9);
      }),
      RUNS,
    );
  });
});

describe('the part-full pipe', () => {
  it('carries more the deeper it runs up to 0.938 of the diameter, and less beyond', () => {
    fc.assert(
      fc.property(between(0, 1), between(0, 1), (a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        fc.pre(high - low > 1e-6);
        if (high <= MOST_FLOW_DEPTH) expect(relativeFlow(high).flow).toBeGreaterThan(relativeFlow(low).flow);
        if (low >= MOST_FLOW_DEPTH) expect(relativeFlow(high).flow).toBeLessThan(relativeFlow(low).flow);
        expect(relativeFlow(a).flow).toBeLessThanOrEqual(relativeFlow(MOST_FLOW_DEPTH).flow);
      }),
      RUNS,
    );
  });

  it('has a depth for every flow that it carries', () => {
    fc.assert(
      fc.property(diameter, slope, n, between(0, 1.075), (d, s, rough, share) => {
        const depth = depthForFlow(share) as number;
        const full = manningFull(d, s, rough).flowM3s;
        expect(manningPartial(d, s, rough, depth).flowM3s / full).toBeCloseTo(share, 6);
      }),
      RUNS,
    );
  });
});

describe('what blocks a pipe', () => {
  it('leaves less the more it blocks, and at one place costs more head', () => {
    fc.assert(
      fc.property(between(0, 0.99), between(0, 0.99), (a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        fc.pre(high - low > 1e-4);
        expect(flowLeftByLining(high)).toBeLessThan(flowLeftByLining(low));
        expect(flowLeftByBed(high)).toBeLessThan(flowLeftByBed(low));
        expect(headLossAtBall(high, 1)).toBeGreaterThan(headLossAtBall(low, 1));
      }),
      RUNS,
    );
  });

  it('never leaves more than the share that is open, nor less than none', () => {
    fc.assert(
      fc.property(between(0, 1), (blocked) => {
        for (const left of [flowLeftByLining(blocked), flowLeftByBed(blocked)]) {
          expect(left).toBeGreaterThanOrEqual(0);
          expect(left).toBeLessThanOrEqual(1 - blocked + 1e-6);
        }
      }),
      RUNS,
    );
  });
});

interface Arm {
  readonly at: number;
  readonly side: 1 | -1;
  readonly area: number;
}
const arms = fc.uniqueArray(
  fc.record({
    at: fc.integer({ min: 2, max: 48 }),
    side: fc.constantFrom<1 | -1>(1, -1),
    area: between(1, 300),
  }),
  { minLength: 1, maxLength: 8, selector: ({ at }) => at },
);

/** A main of 50 m with arms of 9 m into it. */
function comb(drawn: readonly Arm[], mainArea: number, origin?: readonly [number, number]): Scene {
  const common = { flow: 'as-drawn', material: 'pvc-sdr35', size_mm: 100, carries: 'storm' };
  const main = scene(origin)
    .drain({
      ...common,
      id: 'main',
      path: [
        [0, 0],
        [50, 0],
      ],
      serves_m2: mainArea,
      depth_start_m: 0.4,
      depth_end_m: 0.6,
    })
    .level({ id: 'upper', at: [0, 0.4], elevation_m: 11 })
    .level({ id: 'lower', at: [50, 0.4], elevation_m: 10.3 })
    .finding({ id: 'f', drain: 'main', at_m: 20, to_m: 24, seen: 'mass', blocked_pct: 30 });
  return drawn.reduce(
    (made, { at, side, area }, i) =>
      made.drain({
        ...common,
        id: `arm-${i}`,
        path: [
          [at, 9 * side],
          [at, 0],
        ],
        serves_m2: area,
      }),
    main,
  );
}

const byId = (made: Scene, rainMmPerHour: number): Map<string, LineWater> => {
  const { lines } = waterOf(made.site(), { rainMmPerHour, slopeRatio: 0.01 });
  return new Map(lines.map((line) => [line.drainId, line]));
};

describe('the flow to carry', () => {
  it('adds down the network', () => {
    fc.assert(
      fc.property(arms, between(0, 100), between(5, 300), (drawn, mainArea, rain) => {
        const lines = byId(comb(drawn, mainArea), rain);
        const sum = drawn.reduce(
          (total, _, i) => total + (lines.get(`arm-${i}`)?.designFlowM3s?.mid ?? NaN),
          0,
        );
        const own = rationalPeakM3s(0.95, rain, mainArea);
        expect(lines.get('main')?.designFlowM3s?.mid).toBeCloseTo(sum + own, 10);
      }),
      { ...RUNS, numRuns: 60 },
    );
  });

  it('grows with the rain, and the share used with it', () => {
    fc.assert(
      fc.property(arms, between(5, 300), more, (drawn, rain, k) => {
        const [less, greater] = [byId(comb(drawn, 5), rain), byId(comb(drawn, 5), rain * k)];
        for (const [id, line] of less) {
          const other = greater.get(id);
          expect((other?.designFlowM3s?.mid ?? NaN) / (line.designFlowM3s?.mid ?? NaN)).toBeCloseTo(k, 9);
          expect((other?.usedShare?.mid ?? NaN) / (line.usedShare?.mid ?? NaN)).toBeCloseTo(k, 9);
        }
      }),
      { ...RUNS, numRuns: 40 },
    );
  });
});

describe('the place on the globe', () => {
  it('changes nothing', () => {
    fc.assert(
      fc.property(arms, between(-65, 65), between(-170, 170), (drawn, lat, lon) => {
        const here = byId(comb(drawn, 5), 100);
        const there = byId(comb(drawn, 5, [lon, lat]), 100);
        for (const [id, line] of here) {
          const other = there.get(id);
          expect(other?.drainsInto).toBe(line.drainsInto);
          for (const key of ['fullFlowM3s', 'designFlowM3s', 'withRootsM3s'] as const) {
            const [a, b] = [line[key]?.mid, other?.[key]?.mid];
            if (a === undefined) expect(b).toBeUndefined();
            else expect((b ?? NaN) / a).toBeCloseTo(1, 6);
          }
        }
      }),
      { ...RUNS, numRuns: 60 },
    );
  });
});
