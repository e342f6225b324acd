import { describe, expect, it } from 'vitest';
import type { LineWater } from '../../../packages/core/src/model/water-result.js';
import { fromFeet, fromInches } from '../../../packages/core/src/units/length.js';
import { headLossAtBall } from '../../../packages/core/src/water/blockage.js';
import { manningFull } from '../../../packages/core/src/water/manning.js';
import { type WaterOptions, waterOf } from '../../../packages/core/src/water/water.js';
import { type Scene, scene } from '../../scenes/scene.js';

type Extra = Readonly<Record<string, unknown>>;

/** A line of 20 m that falls 0.2 m by its levels and depths. */
const falling = (more: Extra = {}): Scene =>
  scene()
    .drain({
      id: 'line',
      path: [
        [0, 0],
        [20, 0],
      ],
      flow: 'as-drawn',
      material: 'hdpe-corrugated',
      size_in: 4,
      depth_start_m: 0.4,
      depth_end_m: 0.5,
      serves_m2: 60,
      ...more,
    })
    .level({ id: 'top', at: [0, 0.5], elevation_m: 10.1 })
    .level({ id: 'low', at: [20, 0.5], elevation_m: 10 });

const bare = (more: Extra = {}): Scene =>
  scene().drain({
    id: 'line',
    path: [
      [0, 0],
      [20, 0],
    ],
    flow: 'as-drawn',
    material: 'clay',
    ...more,
  });

const lineOf = (made: Scene, options: WaterOptions = {}): LineWater =>
  waterOf(made.site(), options).lines[0] as LineWater;

describe('the fall of a line', () => {
  it('is that of its depths and ground levels over its length', () => {
    const { slope, slopeFrom } = lineOf(falling());
    expect(slope).toBeCloseTo(0.01, 6);
    expect(slopeFrom).toBe('levels');
  });

  it('is the same drawn the other way round', () => {
    expect(lineOf(falling({ flow: 'reversed' })).slope).toBeCloseTo(-0.01, 6);
  });

  it('is taken as asked for only where it is not known', () => {
    expect(lineOf(falling(), { slopeRatio: 0.05 }).slopeFrom).toBe('levels');
    const given = waterOf(bare({ size_mm: 100 }).site(), { slopeRatio: 0.05 });
    expect(given.lines[0]).toMatchObject({ slope: 0.05, slopeFrom: 'given' });
    expect(given.assumed).toContainEqual(expect.objectContaining({ path: 'drains/line/slope', value: 0.05 }));
  });

  it.each([
    ['depths-not-given', bare()],
    ['depths-not-given', bare({ depth_start_m: 0.4 })],
    ['levels-not-given', bare({ depth_start_m: 0.4, depth_end_m: 0.5 })],
    [
      'one-level-for-both-ends',
      scene()
        .drain({
          id: 'line',
          path: [
            [0, 0],
            [4, 0],
          ],
          flow: 'as-drawn',
          depth_start_m: 0.4,
          depth_end_m: 0.5,
          material: 'clay',
          size_mm: 100,
        })
        .level({ id: 'only', at: [2, 1], elevation_m: 10 }),
    ],
  ] as const)('is not known: %s', (why, made) => {
    const line = lineOf(made);
    expect(line.slope).toBeNull();
    expect(line.fullFlowM3s).toBeNull();
    expect(line.selfCleansing).toBeNull();
    expect(line.unknown).toContainEqual({ field: 'slope', why });
  });

  it('carries nothing that could be said where it does not fall', () => {
    const line = lineOf(falling({ flow: 'reversed' }));
    expect(line).toMatchObject({ fullFlowM3s: null, selfCleansing: null });
    expect(line.warnings).toContain('no-fall');
    expect(line.unknown).toContainEqual({ field: 'fullFlowM3s', why: 'no-fall' });
  });

  it('says when a level stands well off the end', () => {
    const made = scene()
      .drain({
        id: 'line',
        path: [
          [0, 0],
          [20, 0],
        ],
        flow: 'as-drawn',
        depth_start_m: 0.4,
        depth_end_m: 0.5,
      })
      .level({ id: 'top', at: [0, 2.5], elevation_m: 10.1 })
      .level({ id: 'low', at: [20, 0.5], elevation_m: 10 });
    const { assumed } = waterOf(made.site());
    expect(assumed.find(({ path }) => path === 'drains/line/slope')?.why).toContain('over 3 ft (1 m)');
    expect(waterOf(falling().site()).assumed.some(({ path }) => path.endsWith('/slope'))).toBe(false);
  });
});

describe('the full pipe', () => {
  it('is Manning at the three n, the low flow at the high n', () => {
    const { n, fullFlowM3s, fullVelocityMs, slope } = lineOf(falling());
    const full = (value: number) => manningFull(fromInches(4), slope as number, value);
    expect(fullFlowM3s).toEqual({
      low: full(n.high).flowM3s,
      mid: full(n.mid).flowM3s,
      high: full(n.low).flowM3s,
    });
    expect(fullVelocityMs?.mid).toBe(full(n.mid).velocityMs);
  });

  // 4 in single-wall corrugated at the customary 1 % runs 1.2 to 1.9 ft/s, less than the 2 ft/s that cleans it
  it('of 4 in single-wall corrugated at 1 % does not clean itself', () => {
    const line = lineOf(falling());
    expect(line).toMatchObject({ selfCleansing: false, selfCleansingIsSure: true });
    expect(line.fullVelocityMs?.high).toBeLessThan(fromFeet(2));
    expect(line.warnings).toContain('not-self-cleansing');
    expect(line.selfCleansingSlope?.mid).toBeCloseTo(0.0161, 4);
  });

  it('of smooth pipe at 1 % does', () => {
    expect(lineOf(falling({ material: 'pvc-sdr35' }))).toMatchObject({
      selfCleansing: true,
      selfCleansingIsSure: true,
      warnings: [],
    });
  });

  it('is warned of without a known fall where the usual one would not do', () => {
    expect(lineOf(bare({ material: 'hdpe-corrugated', size_in: 4 })).warnings).toEqual([
      'usual-slope-not-enough',
    ]);
    expect(lineOf(bare({ material: 'pvc-sdr35', size_in: 4 })).warnings).toEqual([]);
  });

  it('is not known without a size', () => {
    const line = lineOf(bare(), { slopeRatio: 0.01 });
    expect(line).toMatchObject({ insideDiameterM: null, fullFlowM3s: null, selfCleansingSlope: null });
    expect(line.unknown).toContainEqual({ field: 'insideDiameterM', why: 'size-not-given' });
  });
});

describe('the rain', () => {
  it('is never made up: without it there is no design flow, and the result says where to look', () => {
    const { rain, lines } = waterOf(falling().site());
    expect(rain).toMatchObject({ mmPerHour: null, from: null });
    expect(rain.lookUp).toContain('precipitation-frequency tables of the national weather service');
    expect(lines[0]).toMatchObject({ designFlowM3s: null, usedShare: null });
    expect(lines[0]?.unknown).toContainEqual({ field: 'designFlowM3s', why: 'rain-not-given' });
  });

  it("is the site's own unless told otherwise", () => {
    const site = falling().about({ schema: 1, invented: true, rain_mm_h: 90 }).site();
    expect(waterOf(site).rain).toEqual({ mmPerHour: 90, from: 'site', lookUp: null });
    expect(waterOf(site, { rainMmPerHour: 120 }).rain).toEqual({
      mmPerHour: 120,
      from: 'given',
      lookUp: null,
    });
  });

  // 60 m2 x 0.95 x 100 mm/h / 3,600,000
  it('brings C i A', () => {
    const { designFlowM3s, usedShare, fullFlowM3s, depthRatio } = lineOf(falling(), { rainMmPerHour: 100 });
    expect(designFlowM3s?.mid).toBeCloseTo((60 * 0.95 * 100) / 3.6e6, 12);
    expect(usedShare?.mid).toBeCloseTo((designFlowM3s?.mid ?? 0) / (fullFlowM3s?.mid ?? 1), 12);
    expect(usedShare?.low).toBeLessThan(usedShare?.mid ?? 0);
    expect(usedShare?.high).toBeGreaterThan(usedShare?.mid ?? 0);
    expect(depthRatio).toBeGreaterThan(0.3);
    expect(depthRatio).toBeLessThan(0.6);
  });

  it('is less off a lawn', () => {
    const flow = (surface: 'roof' | 'lawn-sandy-flat') =>
      lineOf(falling(), { rainMmPerHour: 100, surface }).designFlowM3s?.mid ?? NaN;
    expect(flow('lawn-sandy-flat')).toBeLessThan(flow('roof') / 5);
  });

  it('can be too much for the pipe, surely or perhaps', () => {
    const at = (rainMmPerHour: number) => lineOf(falling(), { rainMmPerHour });
    expect(at(400).warnings).toContain('too-small');
    expect(at(400).depthRatio).toBeNull();
    expect(at(230).warnings).toContain('may-be-too-small');
    expect(at(50).warnings).not.toContain('may-be-too-small');
  });
});

describe('what a camera saw', () => {
  const seen = (finding: Extra, more: Extra = {}): Scene =>
    falling(more).finding({ id: 'f', drain: 'line', ...finding });

  it('leaves less of the flow at the worst place', () => {
    const line = lineOf(seen({ at_m: 4, to_m: 8, seen: 'mass', blocked_pct: 25, date: '2026-05-01' }));
    expect(line.blockage).toMatchObject({ seen: 'mass', share: 0.25, shareFrom: 'given' });
    for (const end of ['low', 'mid', 'high'] as const) {
      expect(line.withRootsM3s?.[end]).toBeCloseTo((line.fullFlowM3s?.[end] ?? NaN) * 0.6814, 6);
    }
  });

  it('is taken as typical where the log gives no share, and the result says so', () => {
    const { lines, assumed } = waterOf(seen({ at_m: 4, to_m: 8, seen: 'mass' }).site());
    expect(lines[0]?.blockage).toMatchObject({ share: 0.5, shareFrom: 'typical' });
    expect(assumed).toContainEqual(expect.objectContaining({ path: 'drains/line/blockedShare', value: 0.5 }));
  });

  it('is the worst of several', () => {
    const made = seen({ at_m: 4, to_m: 8, seen: 'fine', date: '2026' }).finding({
      id: 'g',
      drain: 'line',
      at_m: 12,
      to_m: 13,
      seen: 'mass',
      blocked_pct: 70,
      date: '2026',
    });
    expect(lineOf(made).blockage).toMatchObject({ seen: 'mass', share: 0.7 });
  });

  it('is over once the line was cut, dug or seen clear, and not yet there before its day', () => {
    const roots = { at_m: 4, to_m: 8, seen: 'mass', date: '2024-05-01' };
    expect(lineOf(seen(roots)).blockage).not.toBeNull();
    expect(lineOf(seen(roots, { cut: '2025-02-01' })).blockage).toBeNull();
    const clear = { id: 'g', drain: 'line', at_m: 0, to_m: 20, seen: 'clear', date: '2025-06-01' };
    expect(lineOf(seen(roots).finding(clear)).blockage).toBeNull();
    expect(lineOf(seen(roots), { asOf: '2023-01-01' }).blockage).toBeNull();
  });

  it('is over where a point lies in what was later seen clear, and stays where it does not', () => {
    const point = { at_m: 5, seen: 'mass', date: '2024-05-01' };
    const clear = (to: number) => ({
      id: 'g',
      drain: 'line',
      at_m: 0,
      to_m: to,
      seen: 'clear',
      date: '2025',
    });
    expect(lineOf(seen(point).finding(clear(20))).blockage).toBeNull();
    expect(lineOf(seen(point).finding(clear(3))).blockage).toMatchObject({ seen: 'mass' });
  });

  it('can make a line too small that was not', () => {
    const full = seen({ at_m: 4, to_m: 8, seen: 'full', date: '2026' });
    const line = lineOf(full, { rainMmPerHour: 60 });
    expect(line.warnings).toContain('too-small-with-roots');
    expect(line.usedShareWithRoots?.mid).toBeGreaterThan(1);
    const shut = seen({ at_m: 4, to_m: 8, seen: 'full', blocked_pct: 100, date: '2026' });
    expect(lineOf(shut, { rainMmPerHour: 60 })).toMatchObject({
      withRootsM3s: { low: 0, mid: 0, high: 0 },
      usedShareWithRoots: null,
    });
    expect(lineOf(shut, { rainMmPerHour: 60 }).warnings).toContain('too-small-with-roots');
  });

  it('at one place holds water back by a head', () => {
    const ball = lineOf(seen({ at_m: 4, seen: 'mass', blocked_pct: 60, date: '2026' }), {
      rainMmPerHour: 100,
    });
    const velocity = (ball.designFlowM3s?.mid ?? NaN) / ((Math.PI * fromInches(4) ** 2) / 4);
    expect(ball.blockage?.headLossM).toBeCloseTo(headLossAtBall(0.6, velocity), 12);
    expect(ball.warnings).toContain('holds-water-back');
    expect(lineOf(seen({ at_m: 4, seen: 'mass' })).blockage?.headLossM).toBeNull();
  });

  it('of a sag is a bed on the invert', () => {
    const { withRootsM3s, fullFlowM3s } = lineOf(seen({ at_m: 4, to_m: 6, seen: 'sag', blocked_pct: 50 }));
    expect((withRootsM3s?.mid ?? 0) / (fullFlowM3s?.mid ?? 1)).toBeCloseTo(0.36, 3);
  });

  it('is not known where nobody looked', () => {
    const line = lineOf(falling());
    expect(line).toMatchObject({ blockage: null, withRootsM3s: null });
    expect(line.unknown).toContainEqual({ field: 'withRootsM3s', why: 'nothing-seen' });
    const looked = lineOf(seen({ at_m: 4, to_m: 8, seen: 'mass' }));
    expect(looked.unknown.map(({ field }) => field)).not.toContain('withRootsM3s');
  });
});

describe('the result', () => {
  it('is plain JSON with its schema, its sources and its cautions', () => {
    const result = waterOf(falling().site(), { rainMmPerHour: 100 });
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
    expect(result.schema).toBe(1);
    const named = waterOf(falling().about({ name: 'Yard' }).site());
    expect(named.site).toEqual({ name: 'Yard', invented: true });
    expect(result.basis.map(({ source }) => source)).toContain('manning-1891');
    expect(result.cautions.map(({ code }) => code)).toEqual([
      'water-to-others',
      'screening-only',
      'local-code',
    ]);
  });

  it('passes on what is wrong with findings and flow', () => {
    const past = falling().finding({ id: 'f', drain: 'line', at_m: 99, seen: 'mass' });
    expect(waterOf(past.site()).issues.map(({ code }) => code)).toEqual(['finding-misplaced']);
    const unsaid = scene().drain({
      id: 'line',
      path: [
        [0, 0],
        [20, 0],
      ],
      material: 'clay',
    });
    const { issues, assumed } = waterOf(unsaid.site());
    expect(issues.map(({ code }) => code)).toEqual(['flow-assumed']);
    expect(assumed).toContainEqual(expect.objectContaining({ path: 'drains/line/flow' }));
  });

  it.each([
    [{ rainMmPerHour: 0 }, /^rainMmPerHour must/],
    [{ rainMmPerHour: NaN }, /^rainMmPerHour must/],
    [{ slopeRatio: -0.01 }, /^slopeRatio must/],
    [{ asOf: 'soon' }, /^asOf must/],
    [{ surface: 'moss' as never }, /no surface/],
  ])('is refused for %j', (options, message) => {
    expect(() => waterOf(falling().site(), options)).toThrow(message);
  });

  it('says of a line that only brings on what others bring that it has no area of its own', () => {
    const paths = (made: Scene) => waterOf(made.site()).assumed.map(({ path }) => path);
    expect(paths(falling())).not.toContain('drains/line/servesM2');
    expect(paths(bare())).not.toContain('drains/line/servesM2');
    const above = (made: Scene) =>
      made.drain({
        id: 'above',
        path: [
          [-8, 0],
          [0, 0],
        ],
        flow: 'as-drawn',
        material: 'clay',
        serves_m2: 30,
      });
    expect(paths(above(bare()))).toContain('drains/line/servesM2');
    expect(paths(above(bare({ serves_m2: 10 })))).not.toContain('drains/line/servesM2');
    expect(paths(above(bare({ carries: 'foul' })))).not.toContain('drains/line/servesM2');
  });

  it('of a site without lines is empty', () => {
    expect(
      waterOf(
        scene()
          .tree({ id: 't', at: [0, 0], dbh_cm: 30 })
          .site(),
      ).lines,
    ).toEqual([]);
  });
});
