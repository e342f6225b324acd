import { describe, expect, it } from 'vitest';
import { sharedProtectionSheet } from '../../../packages/core/src/explain/protection-sheet.js';
import { lonLatOf, planeAt } from '../../../packages/core/src/geometry/plane.js';
import type { SharedRouteRequest } from '../../../packages/core/src/model/shared-route.js';
import type { LonLat } from '../../../packages/core/src/model/site.js';
import { rank } from '../../../packages/core/src/risk/rank.js';
import { adoptShared } from '../../../packages/core/src/route/adopt-shared.js';
import { evaluateRoute } from '../../../packages/core/src/route/evaluate-route.js';
import { planSharedRoute } from '../../../packages/core/src/route/shared-route.js';
import { readSite } from '../../../packages/core/src/validate/read-site.js';
import { pipeForArea } from '../../../packages/core/src/water/pipe-for-area.js';
import { waterOf } from '../../../packages/core/src/water/water.js';
import { scene } from '../../scenes/scene.js';

const PLANE = planeAt(-93, 45);
const at = (x: number, y: number): LonLat => lonLatOf(PLANE, x, y);

/** Invented lot: a house, a maple, three downspouts, ground that falls 1 in 40 to the north. */
const lot = scene()
  .obstacle({
    path: [
      [6, 4],
      [16, 4],
      [16, 12],
      [6, 12],
      [6, 4],
    ],
    type: 'building',
    id: 'house',
  })
  .tree({ at: [12, 20], id: 'maple', species: 'Acer saccharum', dbh_cm: 45 })
  .fitting({ at: [6, 12.5], type: 'downspout', id: 'D1' })
  .fitting({ at: [16, 12.5], type: 'downspout', id: 'D2' })
  .fitting({ at: [5.5, 4], type: 'downspout', id: 'D3' })
  .fitting({ at: [14, 36], type: 'outlet', id: 'out' })
  .level({ at: [0, 0], elevation_m: 10 })
  .level({ at: [20, 0], elevation_m: 10 })
  .level({ at: [0, 40], elevation_m: 9 })
  .level({ at: [20, 40], elevation_m: 9 });

const request: SharedRouteRequest = {
  asOf: '2026-11-25',
  from: [
    { place: { id: 'D1' }, servesM2: 40 },
    { place: { id: 'D2' }, servesM2: 40 },
    { place: { id: 'D3' }, servesM2: 20 },
  ],
  to: [{ id: 'out' }],
  pipe: { material: 'pvc-sdr35', sizeM: 0.1016 },
  limits: { minFall: 0.01, minCoverM: 0.2, maxDepthM: 1.1 },
};

/** Outlet in the open whose invert may lie in a pit of its own. */
const low = { ...request, outletInvertM: 8 };

describe('a shared route on a lot', () => {
  const { route, none, ...about } = planSharedRoute(lot.site(), low);

  it('costs less than a line for each downspout, and joins them with wyes', () => {
    expect(none).toBeNull();
    expect(route?.shape).toBe('shared');
    expect(route?.cost.presentValue).toBeLessThan(route?.separate.cost.presentValue as number);
    expect(route?.lengthM).toBeLessThan(0.8 * (route?.separate.lengthM as number));
    const wyes = route?.junctions.flatMap(({ branches }) => branches).length ?? 0;
    expect(wyes).toBeGreaterThan(0);
    expect(about.assumed.map(({ path }) => path)).toContain('route/sizeM');
    expect(about.ground).toMatchObject({ kind: 'plane-and-levels', levels: 4 });
  });

  it('carries all the water to the outlet, falling all the way and meeting without a drop', () => {
    const last = route?.lines.filter(({ to }) => to === 'out') ?? [];
    expect(last.reduce((sum, { servesM2 }) => sum + servesM2, 0)).toBe(100);
    const inverts = new Map<string, number>();
    for (const { from, to, pipe } of route?.lines ?? []) {
      expect(pipe?.fall.min).toBeGreaterThanOrEqual(0.01 - 1e-7);
      expect(pipe?.depthM.max).toBeLessThanOrEqual(1.1 + 1e-7);
      for (const [end, z] of [
        [from, pipe?.invertM[0]],
        [to, pipe?.invertM.at(-1)],
      ] as const) {
        if (end === 'out') continue;
        expect(z).toBeCloseTo(inverts.get(end) ?? (z as number), 7);
        inverts.set(end, z as number);
      }
    }
  });

  it('keeps off the house and off the no-dig circle of the maple', () => {
    const maple = route?.trees.find(({ id }) => id === 'maple');
    expect(maple?.reasons).not.toContain('inside-3-diameters');
    for (const { geometry } of route?.lines ?? []) {
      for (const [lon, lat] of geometry.coordinates.slice(1, -1)) {
        const x = (lon - PLANE.lon) * PLANE.metresPerDegreeLon;
        const y = (lat - PLANE.lat) * PLANE.metresPerDegreeLat;
        expect(x > 6 && x < 16 && y > 4 && y < 12).toBe(false);
      }
    }
  });

  it('takes larger pipe where more water runs, by the rain', () => {
    const pipeFor = (areaM2: number) =>
      pipeForArea(areaM2, {
        material: 'pvc-sdr35',
        leastM: 0.1016,
        rainMmPerHour: 250,
        runoff: 1,
        fall: 0.01,
      });
    const sized = planSharedRoute(lot.site(), low, { pipeFor });
    for (const { servesM2, sizeM, sized: by } of sized.route?.lines ?? []) {
      expect(by).toEqual(pipeFor(servesM2));
      expect(sizeM).toBe(by?.sizeM);
    }
    expect(pipeFor(100).sizeM).toBeGreaterThan(pipeFor(20).sizeM);
    expect(sized.assumed.map(({ path }) => path)).not.toContain('route/sizeM');
  });

  it('has the chances of the ranking of the lines that it becomes, wyes and all', () => {
    const way = route as NonNullable<typeof route>;
    const features = adoptShared(lot.site(), low, way, { id: 'new', name: 'Roof water' });
    const drains = features.filter(({ properties }) => properties['kind'] === 'drain');
    expect(drains.map(({ properties }) => properties['id'])).toEqual(
      way.lines.map((_, i) => (i === 0 ? 'new' : `new-${i + 1}`)),
    );
    const wyes = features.filter(({ properties }) => properties['type'] === 'wye');
    expect(wyes).toHaveLength(way.junctions.flatMap(({ branches }) => branches).length);
    for (const { geometry } of wyes) {
      const ends = drains.filter(({ geometry: line }) =>
        [line.coordinates[0], line.coordinates.at(-1)].some(
          (place) => JSON.stringify(place) === JSON.stringify(geometry.coordinates),
        ),
      );
      expect(ends.length).toBeGreaterThanOrEqual(2);
    }
    const served = drains.reduce((sum, { properties }) => sum + Number(properties['serves_m2'] ?? 0), 0);
    expect(served).toBeCloseTo(100, 6);
    const trees = lot.toGeoJson().features.filter((f) => f.properties?.['kind'] === 'tree');
    const text = JSON.stringify({ type: 'FeatureCollection', features: [...trees, ...features] });
    const adopted = readSite([{ name: 'adopted', text }]);
    expect(adopted.issues.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(adopted.issues.filter(({ place }) => place.feature !== 'maple' && place.feature !== null)).toEqual(
      [],
    );
    for (const years of [10, 25] as const) {
      const { totals } = rank(adopted.site, { asOf: low.asOf, horizonYears: years });
      const { low: least, likely, high } = way.chance[`${years}`];
      // depths are adopted to the centimetre
      expect(Math.abs(-Math.expm1(-totals.expectedEntries) / likely - 1)).toBeLessThan(0.02);
      expect(least).toBeLessThan(likely);
      expect(high).toBeGreaterThan(likely);
    }
    expect(way.chance['10'].likely).toBeLessThan(way.chance['25'].likely);
    // the ranking sees the water of all three come down to the outlet
    const water = waterOf(adopted.site, { asOf: low.asOf, rainMmPerHour: 100 });
    expect(water.lines.length).toBe(drains.length);
  });

  it('is priced by the quantities of its lines and their wyes', () => {
    const way = route as NonNullable<typeof route>;
    expect(way.priced.missing).toEqual([]);
    expect(way.cost.now).toBeCloseTo(Number(way.priced.total), 6);
    const codes = way.priced.lines.map(({ code }) => code);
    expect(codes.some((code) => code.includes('wye'))).toBe(true);
    expect(way.separate.priced.lines.some(({ code }) => code.includes('wye'))).toBe(false);
  });

  it('tells each tree its share and its distance once for all lines, and the crew where on which line', () => {
    // oaks on either side: between them and the maple no way is clear of all three
    const among = lot
      .tree({ at: [2, 20], id: 'west', species: 'Quercus alba', dbh_cm: 60 })
      .tree({ at: [22, 20], id: 'east', species: 'Quercus alba', dbh_cm: 60 })
      .site();
    const way = planSharedRoute(among, low).route as NonNullable<typeof route>;
    const limits = low.limits ?? {};
    const alone = way.lines.map(({ geometry }) => {
      const single = { asOf: low.asOf, from: { id: 'D1' }, to: low.to, pipe: low.pipe, limits };
      return evaluateRoute(among, single, geometry.coordinates).trees;
    });
    way.trees.forEach((harm, t) => {
      const nearest = Math.min(...alone.map((trees) => trees[t]?.nearestM ?? Number.POSITIVE_INFINITY));
      expect(harm.nearestM).toBeCloseTo(nearest, 3);
      const shares = alone.map((trees) => trees[t]?.severedShare ?? 0);
      expect(harm.severedShare).toBeGreaterThanOrEqual(Math.max(...shares) - 1e-3);
      expect(harm.severedShare).toBeLessThan(0.25);
    });
    expect(way.trees.some(({ severedShare }) => severedShare > 0)).toBe(true);
    const sheet = sharedProtectionSheet(among, low, way);
    expect(sheet.trees.length).toBeGreaterThan(0);
    const ids = way.lines.map(({ id }) => id);
    for (const { line } of [...sheet.trees, ...sheet.stretches]) expect(ids).toContain(line);
    expect(sheet.stretches.length).toBeGreaterThan(0);
    expect(sheet.lengthM).toBeCloseTo(way.lengthM, 3);
  });

  it('tells how far it has come, and never less than before', () => {
    const told: number[] = [];
    planSharedRoute(lot.site(), low, { onProgress: (share) => told.push(share) });
    expect(told.at(-1)).toBe(1);
    expect(told.length).toBeGreaterThan(3);
    expect([...told].sort((a, b) => a - b)).toEqual(told);
  });

  it('warns of digging and of water sent elsewhere', () => {
    const codes = about.cautions.map(({ code }) => code);
    for (const code of ['locate-utilities', 'water-to-others', 'local-code']) expect(codes).toContain(code);
  });
});

describe('where a shared route cannot be', () => {
  it('says by how much it fails to fall, on which line, and what would help', () => {
    const { route, none } = planSharedRoute(lot.site(), { ...request, outletInvertM: 9.3 });
    expect(route).toBeNull();
    expect(none).toMatchObject({ reason: 'no-fall' });
    expect(none?.shortfallM).toBeGreaterThan(0.01);
    if (none?.reason !== 'no-fall') throw new Error('falls');
    expect(none.remedies.map(({ kind }) => kind)).toContain('pump');
  });

  describe('beside an outlet that lies too high', () => {
    const banked = lot
      .fitting({ at: [10, -6], type: 'outlet', id: 'bank' })
      .fitting({ at: [12, -6.5], type: 'outlet', id: 'bank top' })
      .level({ at: [0, -6], elevation_m: 13 })
      .level({ at: [20, -6], elevation_m: 13 })
      .site();
    const over = (...ids: readonly string[]) =>
      planSharedRoute(banked, { ...request, to: ids.map((id) => ({ id })) });

    it('goes to one that water can fall to, though it is further off', () => {
      expect(over('bank')).toMatchObject({ route: null, none: { reason: 'no-fall' } });
      const { route } = over('bank', 'bank top', 'out');
      expect(route?.falls).toBe(true);
      expect(route?.lines.some(({ to }) => to === 'out')).toBe(true);
      expect(route?.lines.filter(({ to }) => to.startsWith('bank'))).toEqual([]);
      // but for the lattice, which reaches further with them, what no water can reach changes nothing
      const alone = over('out').route?.cost.presentValue ?? 0;
      expect((route?.cost.presentValue ?? 0) / alone).toBeCloseTo(1, 1);
    });

    it('tells the least that is missing where none will do', () => {
      const [low, high, both] = [over('bank'), over('bank top'), over('bank', 'bank top')];
      const missing = [low, high].map(({ none }) => none?.shortfallM ?? 0);
      expect(both.route).toBeNull();
      // within what ways over another lattice differ by
      expect(Math.abs((both.none?.shortfallM ?? 0) - Math.min(...missing))).toBeLessThan(0.1);
    });
  });

  it('says so where a source is walled in', () => {
    const walled = lot
      .obstacle({
        path: [
          [1, 1],
          [4, 1],
          [4, 4],
          [1, 4],
          [1, 1],
        ],
        type: 'wall',
      })
      .site();
    const from = [...request.from, { place: { position: at(2.5, 2.5) }, servesM2: 5 }];
    expect(planSharedRoute(walled, { ...low, from })).toMatchObject({
      route: null,
      none: { reason: 'blocked' },
    });
  });

  it('does not look at fall where nothing is known of the ground', () => {
    const bare = scene()
      .fitting({ at: [0, 0], type: 'downspout', id: 'A' })
      .fitting({ at: [8, 0], type: 'downspout', id: 'B' })
      .fitting({ at: [4, 15], type: 'outlet', id: 'out' })
      .site();
    const { route, assumed } = planSharedRoute(bare, {
      ...request,
      from: ['A', 'B'].map((id) => ({ place: { id }, servesM2: 30 })),
    });
    expect(route?.lines.every(({ pipe }) => pipe === null)).toBe(true);
    expect(assumed.map(({ path }) => path)).toContain('route/ground');
  });

  it('refuses a request without a source', () => {
    expect(() => planSharedRoute(lot.site(), { ...request, from: [] })).toThrow(/source/);
  });
});
