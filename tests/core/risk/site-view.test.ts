import { describe, expect, it } from 'vitest';
import { lonLatOf, planeAt } from '../../../packages/core/src/geometry/plane.js';
import type { Band, SegmentResult } from '../../../packages/core/src/model/result.js';
import { rank } from '../../../packages/core/src/risk/rank.js';
import { ScoredSite } from '../../../packages/core/src/risk/scored-site.js';
import { type Box, SiteView } from '../../../packages/core/src/risk/site-view.js';
import { type Place, scene } from '../../scenes/scene.js';

// far north, where a degree east is half as long as one north
const ORIGIN = [10, 60] as const;
const OPTIONS = { asOf: '2026-11-25', segmentM: 3 };
const plane = planeAt(...ORIGIN);
const place = ([east, north]: Place) => lonLatOf(plane, east, north);
const box = (west: number, south: number, east: number, north: number): Box => [
  ...place([west, south]),
  ...place([east, north]),
];

/** Lines from west to east with the outlet in the west: an old one under trees, one beside it, one far off, one to the north. */
const site = scene(ORIGIN)
  .drain({
    id: 'old/clay',
    path: [
      [0, 0],
      [30, 0],
    ],
    flow: 'reversed',
    material: 'clay',
    piece_m: 0.6,
    installed: 1940,
  })
  .drain({
    id: 'beside',
    path: [
      [0, 10],
      [12, 10],
    ],
    flow: 'reversed',
    material: 'pvc-sdr35',
    installed: 2015,
  })
  .drain({
    id: 'far',
    path: [
      [500, 0],
      [509, 0],
    ],
    flow: 'reversed',
    material: 'pvc-sdr35',
    installed: 2015,
  })
  .tree({ id: 'willow', at: [4, 2], species: 'Salix nigra', dbh_cm: 90 })
  .tree({ id: 'birch', at: [26, -3], species: 'Betula nigra', dbh_cm: 20 })
  .tree({ id: 'alone', at: [-200, 300], species: 'Acer rubrum', dbh_cm: 20 })
  .site();
const LINES = ['old/clay', 'beside', 'far'];
const ranked = rank(site, OPTIONS);
const rowsOf = (drainId: string): SegmentResult[] =>
  ranked.segments.filter((s) => s.drainId === drainId).sort((a, b) => a.startM - b.startM);

const looked = (): { scored: ScoredSite; view: SiteView } => {
  const scored = new ScoredSite(site, OPTIONS);
  return { scored, view: new SiteView(scored) };
};

describe('a site to look at', () => {
  it('has the worst band of each line by the ranking', () => {
    const { view } = looked();
    const order: readonly Band[] = ['act', 'inspect', 'watch', 'cannot-say', 'leave'];
    const worst = LINES.map((id) => order.find((band) => rowsOf(id).some((row) => row.band === band)));
    expect(LINES.map((_, line) => view.worstOf(line))).toEqual(worst);
    expect(new Set(worst).size).toBeGreaterThan(1);
    expect(new Set(rowsOf('old/clay').map((row) => row.band)).size).toBeGreaterThan(1);
  });

  it('shows each line as its segments, one after another from the outlet', () => {
    const { view } = looked();
    LINES.forEach((id, line) => {
      const stretches = view.stretchesOf(line);
      expect(stretches.map((s) => [s.id, s.band])).toEqual(rowsOf(id).map((s) => [s.id, s.band]));
      expect(stretches.map((s) => s.coordinates)).toEqual(rowsOf(id).map((s) => s.geometry.coordinates));
    });
    // ten sticks of 3 m along a parallel
    view.stretchesOf(0).forEach(({ coordinates }, i) => {
      [coordinates[0], coordinates.at(-1)].forEach((end, side) => {
        const [lon, lat] = place([3 * (i + side), 0]);
        expect(end?.[0]).toBeCloseTo(lon, 7);
        expect(end?.[1]).toBeCloseTo(lat, 7);
      });
    });
    expect(view.pathOf(1)).toEqual(site.drains[1]?.path);
    expect(view.pathOf(3)).toEqual([]);
  });

  it('finds the lines and trees of a part of the plan', () => {
    const { view } = looked();
    const lines = (...at: Parameters<typeof box>) => [...view.linesIn(box(...at))].sort();
    expect(lines(-5, -5, 40, 20)).toEqual([0, 1]);
    expect(lines(-5, 5, 40, 20)).toEqual([1]);
    expect(lines(505, -1, 506, 1)).toEqual([2]);
    const trees = (most: number) =>
      view
        .treesIn(box(-5, -5, 40, 20), most)
        .map(({ id }) => id)
        .sort();
    expect(trees(9)).toEqual(['birch', 'willow']);
    expect(trees(1)).toHaveLength(1);
    expect(view.treesIn(box(-5, -5, 40, 20), 9)).toEqual(
      expect.arrayContaining(ranked.trees.filter(({ id }) => id !== 'alone')),
    );
  });

  it('lies in a box about all lines and trees', () => {
    const { view } = looked();
    const [west, south, east, north] = view.bounds;
    const edges = [place([-200, 0])[0], place([0, -3])[1], place([509, 0])[0], place([0, 300])[1]];
    [west, south, east, north].forEach((edge, i) => {
      expect(edge).toBeCloseTo(edges[i] as number, 6);
    });
  });
});

describe('the segment nearest to a place', () => {
  const nearest = (at: Place, withinM: number) => looked().view.nearest(place(at), withinM);

  it.each<[string, Place, number, string | null]>([
    ['beside a stick', [10, 2], 3, 'old/clay/4'],
    ['just short of a border of two', [8.99, 2], 3, 'old/clay/3'],
    ['just past a border of two', [9.01, 2], 3, 'old/clay/4'],
    ['past the upper end', [32, 0], 3, 'old/clay/10'],
    ['before the outlet', [-2, 0], 3, 'old/clay/1'],
    ['nearer to one line than to another', [10, 4], 9, 'old/clay/4'],
    ['nearer to the other', [10, 6], 9, 'beside/4'],
    ['as far to the east as is asked', [33.9, 0], 4, 'old/clay/10'],
    ['as far to the north as is asked', [6.5, 13.9], 4, 'beside/3'],
    ['as far to the west as is asked', [-3.9, 10], 4, 'beside/1'],
    ['as far to the south as is asked', [13.5, -3.9], 4, 'old/clay/5'],
    ['farther to the east', [34.1, 0], 4, null],
    ['farther to the north', [6.5, 14.1], 4, null],
    ['far from everything', [250, 250], 4, null],
  ])('%s', (_, at, withinM, id) => {
    expect(nearest(at, withinM)).toBe(id);
  });
});

describe('a segment with those beside it', () => {
  it('is as the ranking of the whole has it, from the outlet end', () => {
    const { view } = looked();
    const rows = rowsOf('old/clay');
    const byRank = (from: number, to: number) => rows.slice(from, to).sort((a, b) => a.rank - b.rank);
    expect(view.around('old/clay/4', 1)?.segments).toEqual(byRank(2, 5));
    expect(view.around('old/clay/1', 2)?.segments).toEqual(byRank(0, 3));
    expect(view.around('old/clay/10', 0)?.segments).toEqual(byRank(9, 10));
    expect(
      view
        .around('beside/2', 99)
        ?.segments.map((s) => s.id)
        .sort(),
    ).toEqual(rowsOf('beside').map((s) => s.id));
  });

  it('comes with its line and the trees that bear on it', () => {
    const detail = looked().view.around('old/clay/2', 0);
    expect(detail?.line).toEqual(ranked.lines.find(({ drainId }) => drainId === 'old/clay'));
    const bearing = new Set(detail?.segments[0]?.trees.map(({ id }) => id));
    expect(bearing.has('willow')).toBe(true);
    expect(detail?.trees).toEqual(ranked.trees.filter(({ id }) => bearing.has(id)));
    expect(looked().view.around('far/1', 0)?.trees).toEqual([]);
  });

  it.each(['old/clay/11', 'old/clay/0', 'beside/5', 'nowhere/1', 'old/1', ''])('is none for %j', (id) => {
    expect(looked().view.around(id, 1)).toBeNull();
  });
});
