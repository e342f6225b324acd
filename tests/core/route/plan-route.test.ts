import { describe, expect, it } from 'vitest';
import { distanceToPath } from '../../../packages/core/src/geometry/distance-to-path.js';
import { planeFor, xOf, yOf } from '../../../packages/core/src/geometry/plane.js';
import type { RouteAlternative } from '../../../packages/core/src/model/route.js';
import type { LonLat } from '../../../packages/core/src/model/site.js';
import { rank } from '../../../packages/core/src/risk/rank.js';
import { adoptRoute } from '../../../packages/core/src/route/adopt-route.js';
import { evaluateRoute } from '../../../packages/core/src/route/evaluate-route.js';
import { planRoute } from '../../../packages/core/src/route/plan-route.js';
import { readSite } from '../../../packages/core/src/validate/read-site.js';
import { acrossLot, lot } from '../../scenes/lot.js';
import { scene } from '../../scenes/scene.js';

const SDR35 = { material: 'pvc-sdr35', sizeM: 0.1016 } as const;

/** A source, an outlet 30 m east, and an oak between them. */
const pastOak = (dbhCm = 60, northM = 0) =>
  scene()
    .fitting({ id: 'in', type: 'basin', at: [-15, 0] })
    .fitting({ id: 'out', type: 'outlet', at: [15, 0] })
    .tree({ id: 'oak', species: 'Quercus alba', dbh_cm: dbhCm, at: [0, northM] });

const east = { asOf: '2026-11-25', from: { id: 'in' }, to: [{ id: 'out' }], pipe: SDR35 } as const;
const path = (route: { geometry: { coordinates: readonly (readonly number[])[] } }): LonLat[] =>
  route.geometry.coordinates.map(([lon, lat]) => [lon as number, lat as number]);

/** How far a way passes from a place, metres. */
function metresFrom(route: Pick<RouteAlternative, 'geometry'>, place: LonLat): number {
  const plane = planeFor([place]);
  const line = path(route).map(([lon, lat]) => [xOf(plane, lon), yOf(plane, lat)] as const);
  return distanceToPath(line, xOf(plane, place[0]), yOf(plane, place[1]));
}

describe('a planned route', () => {
  it('past a tree gives ways that differ: the cheapest, and one with fewer roots that costs more', () => {
    const clay = { material: 'clay', sizeM: 0.1016 } as const;
    const { alternatives, none } = planRoute(pastOak(40, 2).site(), { ...east, pipe: clay });
    expect(none).toBeNull();
    expect(alternatives.length).toBeGreaterThan(1);
    const [cheapest, fewest] = alternatives;
    expect([cheapest?.aim, fewest?.aim]).toEqual(['cheapest', 'fewest-roots']);
    expect(cheapest?.cost.now).toBeLessThan(fewest?.cost.now as number);
    expect(cheapest?.expectedEntries).toBeGreaterThan(fewest?.expectedEntries as number);
    for (const route of alternatives) {
      expect(route.breaks).toEqual([]);
      expect(route.trees[0]?.nearestM).toBeGreaterThanOrEqual(3 * 0.4 - 1e-4);
      expect(route.trees[0]?.rule).not.toBe('no-dig');
      expect(route.chance['10'].likely).toBeLessThan(route.chance['25'].likely);
      expect(route.chance['10'].low).toBeLessThanOrEqual(route.chance['10'].likely);
      expect(route.cost.presentValue).toBeCloseTo(route.cost.now + route.cost.roots, 9);
      expect(route.priced.missing).toEqual([]);
    }
  });

  it('never shows one that another beats in price, roots and harm', () => {
    for (const seed of [2, 3]) {
      const { alternatives } = planRoute(lot({ seed, trees: 8, sizeM: 40 }), acrossLot());
      for (const a of alternatives) {
        for (const b of alternatives) {
          if (a === b) continue;
          const better =
            a.cost.now < b.cost.now * 0.99 &&
            a.expectedEntries < b.expectedEntries * 0.99 &&
            a.cost.treeHarm < b.cost.treeHarm * 0.99;
          expect(better).toBe(false);
        }
      }
    }
  });

  it('passes through the place it was pinned to', () => {
    const site = pastOak(30, 5).site();
    const via = scene()
      .level({ id: 'x', at: [0, -6], elevation_m: 0 })
      .site().levels[0]?.position as LonLat;
    const { alternatives } = planRoute(site, { ...east, via });
    const pinned = alternatives.find(({ aim }) => aim === 'via');
    expect(pinned?.lengthM).toBeGreaterThan(30.5);
    expect(metresFrom(pinned as NonNullable<typeof pinned>, via)).toBeLessThan(0.01);
  });

  it('passes within a centimetre of its pin on lots, its turns still made of fittings', () => {
    for (const [seed, eastM, northM] of [
      [2, 8, 0],
      [3, -9, 3],
      [6, -9, 3],
    ] as const) {
      const site = lot({ seed, trees: 6, sizeM: 40 });
      const [start, end] = ['source', 'outlet'].map(
        (id) => site.fittings.find((one) => one.id === id)?.position,
      ) as [LonLat, LonLat];
      const via: LonLat = [
        (start[0] + end[0]) / 2 + eastM / 78_847,
        (start[1] + end[1]) / 2 + northM / 111_132,
      ];
      const { alternatives } = planRoute(site, acrossLot({ via }));
      const pinned = alternatives.find(({ aim }) => aim === 'via') as RouteAlternative;
      expect(metresFrom(pinned, via)).toBeLessThan(0.01);
      for (const { turnDegrees, fittings } of pinned.bendList)
        expect(fittings.reduce((a, b) => a + b, 0)).toBeCloseTo(turnDegrees, 0);
    }
  });

  it('turns by fittings only where pipe comes in sticks', () => {
    const { alternatives } = planRoute(lot({ seed: 4, trees: 6, sizeM: 40 }), acrossLot());
    for (const { bendList } of alternatives) {
      for (const { turnDegrees, fittings } of bendList) {
        expect(fittings.reduce((a, b) => a + b, 0)).toBeCloseTo(turnDegrees, 0);
      }
    }
  });

  it('is the same each time', () => {
    const site = lot({ seed: 5, trees: 5, sizeM: 40 });
    expect(planRoute(site, acrossLot())).toEqual(planRoute(site, acrossLot()));
  });

  it('crosses a utility near square, with the price and the word of it', () => {
    const site = pastOak(20, 12)
      .obstacle({
        type: 'utility',
        id: 'gas',
        name: 'gas',
        path: [
          [-12, -9],
          [12, 9],
        ],
      })
      .site();
    const { alternatives, cautions } = planRoute(site, east);
    const [first] = alternatives;
    expect(first?.crossings).toHaveLength(1);
    // straight on it would be met at 37 degrees
    expect(first?.crossings[0]?.angleDegrees).toBeGreaterThan(45);
    expect(first?.stretches.some(({ way }) => way === 'hand-dug')).toBe(true);
    expect(cautions.map(({ code }) => code)).toContain('locate-utilities');
  });

  it('bores under a walk where that is cheaper, and opens it where boring is ruled out', () => {
    const walk = pastOak(20, 14).obstacle({
      type: 'paving',
      id: 'drive',
      path: [
        [-6, -40],
        [6, -40],
        [6, 40],
        [-6, 40],
        [-6, -40],
      ],
    });
    const bored = planRoute(walk.site(), east).alternatives[0];
    expect(bored?.stretches.map(({ way, surface }) => `${way} ${surface}`)).toContain('bored paving');
    const opened = planRoute(walk.site(), { ...east, boring: false }).alternatives[0];
    expect(opened?.stretches.some(({ way }) => way === 'bored')).toBe(false);
    expect(opened?.cost.now).toBeGreaterThan(bored?.cost.now as number);
  });

  it('stays on its lot', () => {
    const lotLine = [
      [-20, -4],
      [20, -4],
      [20, 4],
      [-20, 4],
      [-20, -4],
    ] as const;
    const site = pastOak(25).obstacle({ type: 'boundary', id: 'lot', path: lotLine }).site();
    const { alternatives } = planRoute(site, east);
    expect(alternatives.length).toBeGreaterThan(0);
    for (const { breaks } of alternatives) expect(breaks).toEqual([]);
    const tight = pastOak(150).obstacle({ type: 'boundary', id: 'lot', path: lotLine }).site();
    expect(planRoute(tight, east).none).toMatchObject({ reason: 'blocked', shortfallM: null });
  });

  it('says what holds an end fast', () => {
    const none = planRoute(
      pastOak(60, 0)
        .tree({ id: 'elm', species: 'elm', dbh_cm: 80, at: [-14, 0] })
        .site(),
      east,
    ).none;
    expect(none?.message).toContain('elm');
  });

  it('tells how far it is and can be stopped', () => {
    const shares: number[] = [];
    const site = pastOak().site();
    const whole = planRoute(site, east, { onProgress: (share) => shares.push(share) });
    expect(whole.stopped).toBe(false);
    expect(shares.at(-1)).toBe(1);
    expect([...shares].sort((a, b) => a - b)).toEqual(shares);
    const stopped = planRoute(site, east, { shouldStop: () => true });
    expect(stopped).toMatchObject({ stopped: true, alternatives: [], none: null });
  });

  it.each([
    [{ asOf: 'soon' }, 'asOf'],
    [{ to: [] }, 'to must name'],
    [{ from: { id: 'nowhere' } }, 'nowhere'],
    [{ horizonYears: 0 }, 'horizonYears'],
    [{ limits: { maxDepthM: 0.2 } }, 'maxDepthM'],
    [{ pipe: { ...SDR35, sizeM: 0 } }, 'sizeM'],
  ])('throws for a request that makes no sense: %j', (wrong, message) => {
    expect(() => planRoute(pastOak().site(), { ...east, ...wrong } as never)).toThrow(message);
  });
});

describe('fall', () => {
  const sloped = (startM: number, endM: number, hollowM?: number) => {
    const site = pastOak(20, 12)
      .level({ id: 'a', at: [-15, 0], elevation_m: startM })
      .level({ id: 'b', at: [15, 0], elevation_m: endM });
    return (hollowM === undefined ? site : site.level({ id: 'c', at: [0, 0], elevation_m: hollowM })).site();
  };

  it('is kept where there is enough', () => {
    const [route] = planRoute(sloped(10, 9), east).alternatives;
    expect(route?.fall?.min).toBeGreaterThanOrEqual(1 / 96 - 1e-9);
    expect(route?.depthM?.max).toBeLessThanOrEqual(1.2192 + 1e-9);
    expect(route?.profile?.invertM.every((z, i, all) => i === 0 || z < (all[i - 1] as number))).toBe(true);
  });

  it('is said to be missing, by how much and what would help, where the outlet lies too high', () => {
    const { alternatives, none } = planRoute(sloped(10, 10.3), { ...east, outletInvertM: 10 });
    expect(alternatives).toEqual([]);
    // from 10 m less cover and pipe the line falls 30 m at an eighth of an inch a foot
    const invert = 10 - 0.3048 - 0.1071 - 30 / 96;
    expect(none?.reason).toBe('no-fall');
    expect(none?.shortfallM).toBeCloseTo(10 - invert, 1);
    expect(none?.reason === 'no-fall' && none.remedies.map(({ kind }) => kind)).toContain('lower-outlet');
  });

  it('is a break of a line drawn by hand where it is missing, by as much', () => {
    const site = sloped(10, 10.3);
    const ends = site.fittings.map(({ position }) => position);
    const { breaks } = evaluateRoute(site, { ...east, outletInvertM: 10 }, ends);
    const shortfallM = 10 - (10 - 0.3048 - 0.1071 - 30 / 96);
    expect(breaks).toMatchObject([{ kind: 'fall', shortfallM: expect.closeTo(shortfallM, 1) }]);
    expect(evaluateRoute(sloped(10, 9), east, ends).breaks).toEqual([]);
  });

  it('is not looked at without levels, and that is said', () => {
    const { alternatives, assumed } = planRoute(pastOak().site(), east);
    expect(alternatives[0]).toMatchObject({ fall: null, depthM: null, profile: null });
    expect(assumed.map(({ path: of }) => of)).toContain('route/ground');
  });
});

describe('the figures of a route', () => {
  it('are those of the ranking of the line that it becomes', () => {
    const site = pastOak().site();
    const [route] = planRoute(site, east).alternatives;
    const features = adoptRoute(site, east, route as NonNullable<typeof route>, { id: 'new' });
    const text = JSON.stringify({
      type: 'FeatureCollection',
      features: [
        ...pastOak()
          .toGeoJson()
          .features.filter((f) => f.properties?.['kind'] === 'tree'),
        ...features,
      ],
    });
    const adopted = readSite([{ name: 'adopted', text }]);
    expect(adopted.issues.filter(({ severity }) => severity !== 'notice')).toEqual([]);
    for (const [years, chance] of [
      [10, route?.chance['10']],
      [25, route?.chance['25']],
    ] as const) {
      const { totals, lines } = rank(adopted.site, { asOf: '2026-11-25', horizonYears: years });
      expect(totals.drains).toBe(1);
      expect(lines[0]?.chance).toBeCloseTo(chance?.likely as number, 2);
      expect(-Math.expm1(-totals.expectedEntries) / (chance?.likely as number)).toBeCloseTo(1, 2);
    }
  });

  it('are the same for the same line drawn by hand, and change when a bend is dragged', () => {
    const site = lot({ seed: 6, trees: 8, sizeM: 40 });
    const [route] = planRoute(site, acrossLot()).alternatives;
    const drawn = evaluateRoute(site, acrossLot(), path(route as NonNullable<typeof route>));
    expect(drawn.lengthM).toBeCloseTo(route?.lengthM as number, 4);
    expect(drawn.cost.now).toBeCloseTo(route?.cost.now as number, 0);
    expect(drawn.breaks).toEqual([]);
    const dragged = path(route as NonNullable<typeof route>);
    const [lon, lat] = dragged[1] as LonLat;
    dragged[1] = [lon + 0.00003, lat + 0.00002];
    const moved = evaluateRoute(site, acrossLot(), dragged);
    expect(moved.lengthM).not.toBeCloseTo(drawn.lengthM, 2);
  });

  it('say what a line drawn by hand breaks', () => {
    const site = pastOak()
      .obstacle({
        type: 'building',
        id: 'shed',
        path: [
          [5, -1],
          [7, -1],
          [7, 1],
          [5, 1],
          [5, -1],
        ],
      })
      .site();
    const [from, to] = [site.fittings[0]?.position, site.fittings[1]?.position] as [LonLat, LonLat];
    const kinds = evaluateRoute(site, east, [from, to]).breaks.map(({ kind }) => kind);
    expect(kinds).toEqual(['no-dig', 'obstacle']);
    expect(() => evaluateRoute(site, east, [from, from])).toThrow('path');
  });

  it('say where a coil would be bent too tightly: 0.2 m are no room for a square bend', () => {
    const site = pastOak(20, 12).site();
    const [from, to] = [site.fittings[0]?.position, site.fittings[1]?.position] as [LonLat, LonLat];
    const plane = planeFor([from]);
    const coil = { ...east, pipe: { material: 'hdpe-corrugated', sizeM: 0.1016 } } as const;
    const below = (metres: number): LonLat => [from[0], from[1] - metres / plane.metresPerDegreeLat];
    const kinds = (metres: number) => evaluateRoute(site, coil, [from, below(metres), to]).breaks;
    expect(kinds(0.2)).toEqual([{ kind: 'tight-bend', atM: expect.closeTo(0.2, 3) }]);
    expect(kinds(6)).toEqual([]);
  });
});

describe('pipes compared on one route', () => {
  it('order as they are open to roots, and solid past the tree is better than perforated all along', () => {
    const site = pastOak(60, 6).site();
    const { pipes } = planRoute(site, {
      ...east,
      pipe: { material: 'hdpe-corrugated', sizeM: 0.1016, perforated: true, wrapped: true },
    });
    const of = (id: string) => pipes.find((pipe) => pipe.id === id);
    const chance = (id: string): number => of(id)?.chance['25'].likely as number;
    expect(chance('asked')).toBeGreaterThan(chance('solid-past-trees'));
    expect(chance('solid-past-trees')).toBeGreaterThan(chance('coil'));
    expect(chance('gasketed')).toBeGreaterThan(chance('welded'));
    expect(of('coil')?.joints).toBe(0);
    const mixed = of('solid-past-trees');
    expect(mixed?.perforatedM).toBeGreaterThan(0);
    expect(mixed?.solid.length).toBeGreaterThan(0);
    expect(mixed?.cost.now).toBeGreaterThan(0);
  });

  it('are never twice the same', () => {
    const site = pastOak(60, 6).site();
    for (const material of ['hdpe-corrugated', 'pvc-sdr35'] as const) {
      const { pipes } = planRoute(site, { ...east, pipe: { material, sizeM: 0.1016 } });
      const kinds = pipes
        .filter(({ solid }) => solid.length === 0)
        .map((pipe) => [pipe.material, pipe.joint, pipe.perforatedM > 0].join(' '));
      expect(kinds.length).toBeGreaterThan(2);
      expect(new Set(kinds).size, kinds.join(', ')).toBe(kinds.length);
    }
  });

  it('are solid within 50 ft of a stem, as guidance on farm drains has it (read in drain-clearance.ts)', () => {
    const site = scene()
      .tree({ id: 'oak', species: 'Quercus rubra', dbh_cm: 60, at: [-40, 6] })
      .fitting({ at: [-60, 0], type: 'downspout', id: 'from' })
      .fitting({ at: [60, 0], type: 'outlet', id: 'to' })
      .site();
    const { pipes, alternatives } = planRoute(site, {
      ...east,
      from: { id: 'from' },
      to: [{ id: 'to' }],
      pipe: { material: 'hdpe-corrugated', sizeM: 0.1016, perforated: true, wrapped: true },
    });
    const [best] = [...alternatives].sort((a, b) => a.cost.presentValue - b.cost.presentValue);
    // the same circle, walked along the route in steps of a centimetre
    const [lon, lat] = (site.trees[0] as (typeof site.trees)[0]).position;
    const plane = planeFor([[lon, lat]]);
    const places = path(best as NonNullable<typeof best>).map(
      ([x, y]) => [(x - lon) * plane.metresPerDegreeLon, (y - lat) * plane.metresPerDegreeLat] as const,
    );
    let station = 0;
    const near: number[] = [];
    for (const [i, [bx, by]] of places.entries()) {
      const [ax, ay] = places[i - 1] ?? [bx, by];
      const length = Math.hypot(bx - ax, by - ay);
      for (let s = 0; s < length; s += 0.01) {
        const t = s / length;
        if (Math.hypot(ax + t * (bx - ax), ay + t * (by - ay)) <= 15.24) near.push(station + s);
      }
      station += length;
    }
    const [from, to] = [near[0] as number, near.at(-1) as number];
    expect(to - from).toBeGreaterThan(20);
    const guided = pipes.find(({ id }) => id === 'solid-by-guidance');
    expect(guided?.solidBy).toEqual({ radiusM: 15.24, source: 'tile-drain-guidance' });
    expect(guided?.solid[0]?.[0]).toBeCloseTo(from, 1);
    expect(guided?.solid[0]?.[1]).toBeCloseTo(to, 1);
    expect(guided?.holesNearTreesM).toBeCloseTo(0, 6);
    expect(pipes[0]?.holesNearTreesM).toBeCloseTo(to - from, 1);
    expect(pipes.find(({ id }) => id === 'welded')?.holesNearTreesM).toBe(0);
  });

  it('can be adopted in parts', () => {
    const site = pastOak(60, 6).site();
    const request = {
      ...east,
      pipe: { material: 'hdpe-corrugated', sizeM: 0.1016, perforated: true, wrapped: true },
    } as const;
    const [route] = planRoute(site, request).alternatives;
    const features = adoptRoute(site, request, route as NonNullable<typeof route>, {
      id: 'new',
      name: 'French drain',
      solid: [[10, 20]],
    });
    const drains = features.filter(({ properties }) => properties['kind'] === 'drain');
    expect(drains.map(({ properties }) => [properties['id'], properties['perforated']])).toEqual([
      ['new', true],
      ['new-2', false],
      ['new-3', true],
    ]);
  });
});
