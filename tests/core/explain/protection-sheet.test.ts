import { describe, expect, it } from 'vitest';
import { protectionSheet, treeStretches } from '../../../packages/core/src/explain/protection-sheet.js';
import { wordProtectionSheet } from '../../../packages/core/src/explain/protection-words.js';
import { lonLatOf, planeAt } from '../../../packages/core/src/geometry/plane.js';
import type { RouteRequest } from '../../../packages/core/src/model/route.js';
import type { LonLat } from '../../../packages/core/src/model/site.js';
import type { HarmTree } from '../../../packages/core/src/roots/harm.js';
import { evaluateRoute } from '../../../packages/core/src/route/evaluate-route.js';
import { scene } from '../../scenes/scene.js';

const PLANE = planeAt(-93, 45);
const at = (x: number, y: number): LonLat => lonLatOf(PLANE, x, y);

const METRIC = {
  length: (m: number): string => `${m.toFixed(1)} m`,
  span: (a: number, b: number): string => `${a.toFixed(1)} to ${b.toFixed(1)} m`,
  trunk: (m: number): string => `${Math.round(100 * m)} cm`,
};

/** Maple of 40 cm: 3, 6, 12 diameters are 1.2, 2.4, 4.8 m; structural radius 0.64 x 20^0.42 = 2.25 m. */
const maple: HarmTree = {
  id: 'm',
  x: 10,
  y: 0,
  stemDiameterM: 0.4,
  structuralM: 2.25,
  protectionM: 4.8,
  driplineM: 4,
};

function lineFrom(...points: readonly (readonly [number, number])[]) {
  const s = [0];
  points.slice(1).forEach(([x, y], i) => {
    const [px, py] = points[i] as readonly [number, number];
    s.push((s[i] as number) + Math.hypot(x - px, y - py));
  });
  return {
    x: Float64Array.from(points, ([x]) => x),
    y: Float64Array.from(points, ([, y]) => y),
    s: Float64Array.from(s),
  };
}

describe('stretches that trees call for', () => {
  it('begin and end where the near side of the trench comes into a ring', () => {
    const found = treeStretches(lineFrom([0, 2], [20, 2]), [maple], [], 0.4);
    const half = (ring: number): number => Math.sqrt((ring + 0.2) ** 2 - 4);
    expect(found.map(({ way }) => way)).toEqual(['hand-or-air', 'arborist', 'hand-or-air']);
    expect(found[0]?.fromM).toBeCloseTo(10 - half(4.8), 9);
    expect(found[1]?.fromM).toBeCloseTo(10 - half(2.4), 9);
    expect(found[2]?.fromM).toBeCloseTo(10 + half(2.4), 9);
    expect(found[2]?.toM).toBeCloseTo(10 + half(4.8), 9);
  });

  it('are not dug at all within three diameters, and bored where the route is bored', () => {
    const line = lineFrom([0, 1], [20, 1]);
    expect(treeStretches(line, [maple], [], 0.2).map(({ way }) => way)).toContain('do-not-dig');
    const bored = treeStretches(line, [maple], [[6, 14]], 0.2);
    expect(bored.map(({ way }) => way)).toEqual(['hand-or-air', 'bore', 'hand-or-air']);
    expect(bored[1]).toMatchObject({ fromM: 6, toM: 14 });
  });

  it('name every tree that they are for', () => {
    const other = { ...maple, id: 'n', x: 14 };
    const found = treeStretches(lineFrom([0, 3.5], [25, 3.5]), [maple, other], [], 0.4);
    expect(found.map(({ trees }) => trees.join('+'))).toEqual(['m', 'm+n', 'n']);
  });
});

describe('the sheet of a route', () => {
  const site = scene()
    .tree({ at: [10, 2.3], id: 'oak', species: 'Quercus rubra', dbh_cm: 40 })
    .tree({ at: [14, 25], id: 'far', species: 'Acer saccharum', dbh_cm: 30 })
    .tree({ at: [3, -4], id: 'birch', species: 'Betula pendula' })
    .level({ at: [0, 0], elevation_m: 10 })
    .level({ at: [20, 0], elevation_m: 9 })
    .site();
  const request: RouteRequest = {
    asOf: '2026-11-25',
    from: { position: at(0, 0) },
    to: [{ position: at(20, 0) }],
    pipe: { material: 'pvc-sdr35', sizeM: 0.1 },
  };
  const route = evaluateRoute(site, request, [at(0, 0), at(20, 0)]);
  const sheet = protectionSheet(site, request, route);

  it('has the trees that it may harm, nearest first, with the figures of the route', () => {
    expect(sheet.trees.map(({ id }) => id)).toEqual(['oak', 'birch']);
    const [oak, birch] = sheet.trees;
    const harm = route.trees.find(({ id }) => id === 'oak');
    expect(oak).toMatchObject({
      rule: 'arborist',
      stemAssumed: false,
      nearestM: harm?.nearestM,
      reasons: harm?.reasons,
    });
    expect(oak?.atM).toBeCloseTo(10, 3);
    expect(oak?.rings).toEqual({
      noDigM: expect.closeTo(1.2, 9),
      arboristM: expect.closeTo(2.4, 9),
      careM: expect.closeTo(4.8, 9),
      fenceM: expect.closeTo(4.8, 9),
    });
    expect(oak?.boring.startM).toBeCloseTo(12 * 0.3048, 9);
    expect(birch?.stemAssumed).toBe(true);
    expect(sheet.lengthM).toBeCloseTo(20, 3);
  });

  it('calls an arborist for those that need one and carries the cautions of digging by a tree', () => {
    expect(sheet.arboristFor).toContain('oak');
    const codes = sheet.cautions.map(({ code }) => code);
    for (const code of [
      'locate-utilities',
      'arborist-first',
      'dig-with-care-near-trees',
      'protected-trees',
      'local-code',
    ]) {
      expect(codes).toContain(code);
    }
  });

  it('says it in words: every tree, every stretch, who is called, what is not cut, permits', () => {
    const sections = wordProtectionSheet(sheet, METRIC);
    expect(sections.map(({ title }) => title)).toEqual([
      'Trees',
      'Stretches, from the upper end',
      'Arborist',
      'Roots',
      'Permits',
      'Before you dig',
    ]);
    const [trees, stretches, arborist, roots] = sections.map(({ lines }) =>
      lines.flatMap(({ text, details }) => [text, ...details]).join('\n'),
    );
    expect(trees).toMatch(
      /northern red oak \(oak\), trunk 40 cm: the route passes 2\.\d m from the middle .*, 10\.0 m along/,
    );
    expect(trees).toMatch(/Arborist first: .*\n\d+ % of its protection circle lost\./);
    expect(trees).toMatch(/silver birch \(birch\), trunk taken as \d+ cm, measure it/);
    expect(trees).toContain('no digging within 1.2 m, arborist within 2.4 m, by hand or air within 4.8 m');
    expect(stretches?.split('\n')).toHaveLength(sheet.stretches.length);
    expect(stretches).toContain('with an arborist only, by hand or air; northern red oak (oak)');
    expect(arborist).toContain('oak');
    expect(roots).toContain('5 cm');
  });

  it('says that no tree is near where none is', () => {
    const bare = scene()
      .tree({ at: [60, 60], species: 'Quercus rubra', dbh_cm: 30 })
      .site();
    const away = protectionSheet(bare, request, evaluateRoute(bare, request, [at(0, 0), at(20, 0)]));
    expect(away).toMatchObject({ trees: [], stretches: [], arboristFor: [] });
    const sections = wordProtectionSheet(away, METRIC);
    expect(sections[0]?.lines[0]?.text).toMatch(/^None near the trench/);
    expect(sections[1]?.lines.length).toBeGreaterThan(2);
  });
});
