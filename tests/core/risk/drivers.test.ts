import { describe, expect, it } from 'vitest';
import type { Driver, SegmentResult } from '../../../packages/core/src/model/result.js';
import { rank } from '../../../packages/core/src/risk/rank.js';
import { fromFeet } from '../../../packages/core/src/units/length.js';
import { type Scene, scene } from '../../scenes/scene.js';

const AS_OF = '2026-07-01';
type Properties = Readonly<Record<string, unknown>>;

interface Given {
  readonly oak?: boolean;
  readonly elm?: boolean;
  readonly drain?: Properties;
  readonly wye?: Properties;
}

/** A line of 12 m, one segment with a wye in it, between an oak and an elm. */
function site({ oak = true, elm = true, drain = {}, wye = {} }: Given = {}): Scene {
  const made = scene()
    .drain({
      id: 'main',
      path: [
        [12, 0],
        [0, 0],
      ],
      material: 'hdpe-corrugated',
      size_mm: 100,
      joint: 'snap',
      piece_m: 3,
      installed: 2000,
      flow: 'as-drawn',
      depth_start_m: 0.6,
      depth_end_m: 0.6,
      ...drain,
    })
    // at the outlet end, so that it cuts no segment off
    .fitting({ id: 'W', type: 'wye', at: [0, 0], ...wye });
  if (oak) made.tree({ id: 'oak', at: [5, 2], species: 'Quercus rubra', dbh_cm: 40 });
  if (elm) made.tree({ id: 'elm', at: [8, -4], species: 'Ulmus americana', dbh_cm: 70 });
  return made;
}

function segmentOf(made: Scene): SegmentResult {
  const { segments } = rank(made.site(), { asOf: AS_OF, horizonYears: 10, segmentM: 100 });
  expect(segments).toHaveLength(1);
  return segments[0] as SegmentResult;
}

const plain = segmentOf(site());
const of = (code: Driver['code'], tree: string | null = null): Driver => {
  const found = plain.drivers.find((driver) => driver.code === code && driver.tree === tree);
  if (!found) throw new Error(`no driver ${code}`);
  return found;
};

describe('what would change a score is what the ranking says of the changed site', () => {
  it('without a tree', () => {
    expect(of('tree-absent', 'oak').scoreWithout).toBeCloseTo(segmentOf(site({ oak: false })).score, 9);
    expect(of('tree-absent', 'elm').scoreWithout).toBeCloseTo(segmentOf(site({ elm: false })).score, 9);
  });

  it('with joints sealed', () => {
    expect(of('seal-joints').scoreWithout).toBeCloseTo(segmentOf(site({ drain: { sealed: true } })).score, 9);
  });

  it('with the joints of the wye alone sealed', () => {
    expect(of('basin-for-wye').scoreWithout).toBeCloseTo(segmentOf(site({ wye: { sealed: true } })).score, 9);
    expect(of('basin-for-wye').scoreWithout).toBeGreaterThan(of('seal-joints').scoreWithout);
  });

  it('a foot deeper', () => {
    const deeper = 0.6 + fromFeet(1);
    const changed = site({ drain: { depth_start_m: deeper, depth_end_m: deeper } });
    expect(of('deeper').scoreWithout).toBeCloseTo(segmentOf(changed).score, 9);
  });

  it('dug open now', () => {
    expect(of('dig-and-clear').scoreWithout).toBeCloseTo(segmentOf(site({ drain: { dug: AS_OF } })).score, 9);
  });

  it('with a stouter wall, and nothing else of that pipe', () => {
    // the next on the shelf with the same joints: only crushing is less
    const stout = segmentOf(site({ drain: { material: 'pvc-sdr35' } }));
    expect(of('stouter-pipe').scoreWithout).toBeCloseTo(stout.score, 9);
  });

  it('with a barrier that keeps three tenths', () => {
    // expected entries are -ln(1 - chance): what a barrier leaves of the tree's own part is 0.3
    const load = (score: number): number => -Math.log1p(-score / 100);
    const [all, without] = [load(plain.score), load(of('tree-absent', 'oak').scoreWithout)];
    const left = load(of('root-barrier', 'oak').scoreWithout) - without;
    expect(left / (all - without)).toBeCloseTo(0.3, 9);
  });

  it('comes the strongest first, and is left out where it is worth less than half a point', () => {
    const scores = plain.drivers.map(({ scoreWithout }) => scoreWithout);
    expect(scores).toEqual([...scores].sort((a, b) => a - b));
    for (const score of scores) expect(plain.score - score).toBeGreaterThanOrEqual(0.5);
    const far = scene()
      .tree({ at: [6, 30], species: 'Quercus rubra', dbh_cm: 20 })
      .drain({
        path: [
          [12, 0],
          [0, 0],
        ],
        material: 'pvc-sch40',
      });
    expect(segmentOf(far).drivers).toEqual([]);
  });
});
