import { describe, expect, it } from 'vitest';
import type { RankResult, SegmentResult } from '../../packages/core/src/model/result.js';
import { rank } from '../../packages/core/src/risk/rank.js';
import { rootDensity } from '../../packages/core/src/roots/density.js';
import { usualMatureSize } from '../../packages/core/src/roots/mature-size.js';
import { zonesOf } from '../../packages/core/src/roots/zones.js';
import { pipeTable } from '../../packages/core/src/tables/pipes.js';
import { speciesTable } from '../../packages/core/src/tables/species.js';
import { type Scene, scene } from '../scenes/scene.js';

/**
 * What people who lay and clear drains, and those who look after trees, take for granted. No paper stands behind a
 * check here: each is marked `common practice` and asks for an order or a direction, so there is nothing to be
 * tolerant of but where a share is named.
 */
const AS_OF = '2026-07-01';

interface Line {
  readonly [property: string]: unknown;
}

/** A line of 24 m beside one grown oak, 2 m off its middle. */
const besideAnOak = (line: Line): Scene =>
  scene()
    .tree({ id: 'oak', at: [12, 2], species: 'Quercus rubra', dbh_cm: 50 })
    .drain({
      id: 'line',
      path: [
        [0, 0],
        [24, 0],
      ],
      installed: 1996,
      depth_start_m: 0.6,
      depth_end_m: 0.6,
      ...line,
    });

const ranked = (made: Scene, years = 10): RankResult =>
  rank(made.site(), { asOf: AS_OF, horizonYears: years });

type Way = keyof SegmentResult['expectedEntries'];
const entries = ({ segments }: RankResult, way: Way): number =>
  segments.reduce((sum, s) => sum + s.expectedEntries[way], 0);

/** Chance of trouble anywhere on the line, in hundredths. */
function scoreOfLine(made: Scene, years = 10): number {
  const result = ranked(made, years);
  const all = entries(result, 'joints') + entries(result, 'slots') + entries(result, 'crush');
  return 100 * (1 - Math.exp(-all));
}

describe('common practice: roots reach about as far as the canopy', () => {
  // a fifth to under a half of the presence at the trunk: plenty at the dripline, and not yet the end
  const [LEAST, MOST] = [0.2, 0.45];
  const atDripline = [...speciesTable.values()]
    .filter((row) => row.form !== 'palm')
    .map((row) => {
      const { stemDiameter, crownRadius } = usualMatureSize(row);
      const zones = zonesOf(row, stemDiameter, crownRadius, 1);
      return { key: row.key, presence: rootDensity(zones.dripline, zones.reach) };
    })
    .sort((a, b) => a.presence - b.presence);

  it('there is a fifth to a half of the roots left at the dripline of a usual mature tree', () => {
    const inside = atDripline.filter(({ presence }) => presence >= LEAST && presence <= MOST);
    const [first, last] = [atDripline[0], atDripline[atDripline.length - 1]];
    const middle = atDripline[Math.floor(atDripline.length / 2)];
    console.info(
      `common practice, presence at the dripline of ${atDripline.length} kinds: ` +
        [first, middle, last].map((t) => `${t?.presence.toFixed(2)} (${t?.key})`).join(', ') +
        `; ${inside.length} within ${LEAST}-${MOST}`,
    );
    expect(middle?.presence).toBeGreaterThan(LEAST);
    expect(middle?.presence).toBeLessThan(MOST);
    // one kind in twenty may fall out: narrow crowns (Lombardy poplar) root wider, planes less wide than their crown
    expect(inside.length / atDripline.length).toBeGreaterThan(0.95);
    expect(first?.presence).toBeGreaterThan(0.9 * LEAST);
    expect(last?.presence).toBeLessThan(1.2 * MOST);
  });
});

describe('common practice: no material is safe for ever', () => {
  it.each(pipeTable.map((row) => [row.key, row.joint] as const))('%s (joint: %s)', (material) => {
    const scores = [1, 5, 10, 20, 40].map((years) => scoreOfLine(besideAnOak({ material }), years));
    expect(scores[0]).toBeGreaterThan(0);
    for (let i = 1; i < scores.length; i++) expect(scores[i]).toBeGreaterThan(scores[i - 1] as number);
    console.info(
      `${material}, chance in 1, 5, 10, 20, 40 years: ${scores.map((s) => s.toFixed(1)).join(', ')} %`,
    );
  });

  it('nor is a line in one piece, nor one with every joint sealed', () => {
    expect(scoreOfLine(besideAnOak({ material: 'hdpe-welded', joint: 'none' }))).toBeGreaterThan(0);
    expect(scoreOfLine(besideAnOak({ material: 'pvc-sch40', sealed: true }))).toBeGreaterThan(0);
  });
});

describe('common practice: joints and fittings are the commonest way in', () => {
  // fused pipe and coils are what is laid to have no joints, so they stand apart
  const JOINTED = pipeTable.filter((row) => row.joint !== 'welded' && row.pieceM.value < 10);

  it.each(JOINTED.map((row) => [row.key]))('%s: more by its joints than by crushing', (material) => {
    const result = ranked(besideAnOak({ material }));
    expect(entries(result, 'joints')).toBeGreaterThan(entries(result, 'crush'));
  });

  it('a wye brings more than a plain joint at the same place', () => {
    const wye = besideAnOak({ material: 'pvc-sdr35' }).fitting({ type: 'wye', at: [12, 0] });
    const coupling = besideAnOak({ material: 'pvc-sdr35' }).fitting({ type: 'coupling', at: [12, 0] });
    expect(scoreOfLine(wye)).toBeGreaterThan(scoreOfLine(coupling));
  });
});

describe('common practice: where to look first on a line', () => {
  // two large trees stand about a wye; one end runs out over an open lawn
  const line = scene()
    .tree({ at: [8, 3], species: 'Ulmus americana', dbh_cm: 70 })
    .tree({ at: [11, -4], species: 'Acer saccharinum', dbh_cm: 60 })
    .drain({
      id: 'main',
      path: [
        [0, 0],
        [90, 0],
      ],
      material: 'pvc-sdr35',
      piece_m: 3,
      installed: 1990,
      flow: 'as-drawn',
    })
    .fitting({ id: 'W1', type: 'wye', at: [9.5, 0] });
  const { segments } = ranked(line);

  it('the fitting with several joints under the large trees comes first', () => {
    expect(segments[0]?.fittings.map((f) => f.id)).toEqual(['W1']);
    const plain = segments.filter((s) => s.fittings.length === 0);
    expect(segments[0]?.score).toBeGreaterThan(1.5 * Math.max(...plain.map((s) => s.score)));
  });

  it('the run away from all trees comes last', () => {
    // stations start at the outlet in the east: the trees stand at 79 to 82 m of them
    const away = segments.filter((s) => s.endM < 30);
    const near = segments.filter((s) => s.startM > 60);
    expect(away.length).toBeGreaterThan(5);
    for (const s of away) expect(s.score).toBe(0);
    expect(Math.min(...away.map((s) => s.rank))).toBeGreaterThan(Math.max(...near.map((s) => s.rank)));
    expect(segments[segments.length - 1]?.score).toBe(0);
  });

  // within 4 %: what happens along the pipe is summed by a two-point rule on parts of up to 3 m
  it('the chance on the whole line is the same however it is cut', () => {
    const crush = (segmentM: number): number =>
      entries(rank(line.site(), { asOf: AS_OF, segmentM }), 'crush');
    const joints = (segmentM: number): number =>
      entries(rank(line.site(), { asOf: AS_OF, segmentM }), 'joints');
    for (const segmentM of [0.5, 2, 10, 90]) {
      expect(Math.abs(crush(segmentM) / crush(3) - 1), `crushing, ${segmentM} m`).toBeLessThan(0.04);
      expect(joints(segmentM)).toBeCloseTo(joints(3), 9);
    }
  });
});

describe('common practice: a thicker wall delays roots and does not keep them out', () => {
  // the same gasketed joints and pieces throughout, so that nothing but the wall differs
  const WALLS = ['pvc-thin-wall', 'pvc-sdr35', 'pvc-sch40'] as const;

  it('each stouter wall has a lower chance, never none', () => {
    const scores = WALLS.map((material) =>
      scoreOfLine(besideAnOak({ material, joint: 'gasket', piece_m: 3, size_mm: 100 })),
    );
    const crush = WALLS.map((material) =>
      entries(ranked(besideAnOak({ material, joint: 'gasket', piece_m: 3, size_mm: 100 })), 'crush'),
    );
    console.info(`walls ${WALLS.join(', ')}: ${scores.map((s) => s.toFixed(1)).join(', ')} % in ten years`);
    for (let i = 1; i < WALLS.length; i++) {
      expect(scores[i]).toBeLessThan(scores[i - 1] as number);
      expect(crush[i]).toBeLessThan(crush[i - 1] as number);
      expect(crush[i]).toBeGreaterThan(0);
    }
  });

  it('given more years the stouter pipe comes to what the thin one had', () => {
    const of = (material: string, years: number): number =>
      scoreOfLine(besideAnOak({ material, joint: 'gasket', piece_m: 3, size_mm: 100 }), years);
    expect(of('pvc-sch40', 20)).toBeGreaterThan(of('pvc-thin-wall', 10));
  });
});

describe('common practice: one coil without joints beats jointed pipe', () => {
  it.each(['hdpe-corrugated', 'hdpe-corrugated-heavy', 'hdpe-welded'])('%s in one piece', (material) => {
    const coil = scoreOfLine(besideAnOak({ material, joint: 'none' }));
    const jointed = scoreOfLine(besideAnOak({ material: 'pvc-sdr35', joint: 'gasket' }));
    console.info(`${material} coil ${coil.toFixed(2)} %, gasketed pipe ${jointed.toFixed(2)} % in ten years`);
    expect(coil).toBeLessThan(jointed);
    expect(coil).toBeGreaterThan(0);
  });
});

describe('common practice: digging out starts the clock again, cutting inside buys a short time', () => {
  const old = { material: 'clay', joint: 'mortar', piece_m: 1 };
  const untouched = scoreOfLine(besideAnOak(old));
  const dug = scoreOfLine(besideAnOak({ ...old, dug: AS_OF }));
  const cut = scoreOfLine(besideAnOak({ ...old, cut: AS_OF }));

  it('over ten years a line dug out and cleared is better off than one cut, and that than one left', () => {
    console.info(
      `old clay in ten years: left ${untouched.toFixed(1)} %, cut ${cut.toFixed(1)} %, dug ${dug.toFixed(1)} %`,
    );
    expect(dug).toBeLessThan(cut);
    expect(cut).toBeLessThan(untouched);
  });

  it('in the first year both help a great deal', () => {
    const first = (line: Line): number => scoreOfLine(besideAnOak({ ...old, ...line }), 1);
    expect(first({ dug: AS_OF })).toBeLessThan(first({}) / 3);
    expect(first({ cut: AS_OF })).toBeLessThan(first({}) / 3);
  });

  // nearly gone: less than a twentieth of the yearly chance
  it('five years on, the cut is nearly forgotten and the digging is not', () => {
    const next = (line: Line): number => scoreOfLine(besideAnOak({ ...old, ...line }), 1);
    const left = next({});
    const cutThen = next({ cut: '2021-07-01' });
    const dugThen = next({ dug: '2021-07-01' });
    console.info(
      `the sixth year: left ${left.toFixed(2)} %, cut ${cutThen.toFixed(2)} %, dug ${dugThen.toFixed(2)} %`,
    );
    expect(cutThen).toBeLessThanOrEqual(left);
    expect(cutThen).toBeGreaterThan(0.95 * left);
    expect(dugThen).toBeLessThan(cutThen);
  });

  it('the further the tree, the longer a dug place stays clear', () => {
    const share = (north: number): number => {
      const line = (more: Line): Scene =>
        scene()
          .tree({ at: [12, north], species: 'Quercus rubra', dbh_cm: 50 })
          .drain({
            path: [
              [0, 0],
              [24, 0],
            ],
            ...old,
            installed: 1960,
            ...more,
          });
      return scoreOfLine(line({ dug: '2023-07-01' }), 1) / scoreOfLine(line({}), 1);
    };
    expect(share(6)).toBeLessThan(share(1));
  });
});
