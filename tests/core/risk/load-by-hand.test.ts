import { describe, expect, it } from 'vitest';
import type { SegmentResult } from '../../../packages/core/src/model/result.js';
import { rank } from '../../../packages/core/src/risk/rank.js';
import { pipeRow } from '../../../packages/core/src/tables/pipes.js';
import { toPsi } from '../../../packages/core/src/units/pressure.js';
import { scene } from '../../scenes/scene.js';

/*
 * Entries worked by hand where nothing changes with time: an alder (vigour class 3, weight 1; not in the survey of
 * genera) past its mature size, trunk 1.6 m, crown radius 5 m, so its roots reach (38 x 0.2 + 15 x 1.4 + 2.9 x 5) / 2
 * = 21.55 m; a line of 1900, whose joints have aged to the cap of 2 and whose trench has long grown in, 0.6 m deep.
 */
const REACH_M = 21.55;
const YEARS = 10;
/** Entries a year at an unsealed rigid joint where roots are densest (judgement). */
const RATE = 0.006;
const AGED = 2;

type Properties = Readonly<Record<string, unknown>>;
interface Given {
  readonly tree?: Properties;
  readonly drain?: Properties;
  readonly soil?: string;
  readonly paved?: boolean;
  /** Half length of a barrier midway between tree and joint. */
  readonly barrierM?: number;
  /** From the stem to the line. */
  readonly offM?: number;
}

/** A line in one piece with a single joint, at a coupling opposite the tree. */
function entriesOf({
  tree,
  drain,
  soil,
  paved,
  barrierM,
  offM = 6,
}: Given = {}): SegmentResult['expectedEntries'] {
  const made = scene()
    .tree({ at: [50, offM], species: 'Alnus glutinosa', dbh_cm: 160, canopy_radius_m: 5, ...tree })
    .drain({
      path: [
        [0, 0],
        [100, 0],
      ],
      material: 'clay',
      joint: 'none',
      installed: 1900,
      depth_start_m: 0.6,
      depth_end_m: 0.6,
      ...drain,
    })
    .fitting({ type: 'coupling', at: [50, 0] })
    .about(soil === undefined ? {} : { soil });
  if (paved) {
    made.obstacle({
      type: 'paving',
      path: [
        [40, 2],
        [60, 2],
        [60, 4],
        [40, 4],
        [40, 2],
      ],
    });
  }
  if (barrierM !== undefined) {
    made.barrier({
      path: [
        [50 - barrierM, offM / 2],
        [50 + barrierM, offM / 2],
      ],
    });
  }
  const { segments } = rank(made.site(), { asOf: '2026-07-01', horizonYears: YEARS });
  const sum = (way: keyof SegmentResult['expectedEntries']): number =>
    segments.reduce((all, s) => all + s.expectedEntries[way], 0);
  return { joints: sum('joints'), slots: sum('slots'), crush: sum('crush') };
}

/** Presence of roots at a distance along the root curve. */
const presence = (distanceM: number, reachM = REACH_M): number => Math.exp((-3 * distanceM) / reachM);
/** A joint at a fitting on a run in one piece is a push-fit one, 0.8. */
const atJoint = (roots: number): number => RATE * 0.8 * AGED * YEARS * roots;

describe('entries at one joint beside one tree', () => {
  const plain = entriesOf();

  it('are rate, openness, age, years and presence of roots', () => {
    expect(plain.joints / atJoint(presence(6))).toBeCloseTo(1, 5);
    expect(entriesOf({ offM: 12 }).joints / atJoint(presence(12))).toBeCloseTo(1, 5);
    expect(plain.slots).toBe(0);
  });

  it('are none past 1.6 reaches, 34.5 m', () => {
    expect(entriesOf({ offM: 34 }).joints / atJoint(presence(34))).toBeCloseTo(1, 5);
    expect(entriesOf({ offM: 35 }).joints).toBe(0);
  });

  it('go with the soil', () => {
    expect(entriesOf({ soil: 'sand' }).joints / atJoint(presence(6, 1.1 * REACH_M))).toBeCloseTo(1, 5);
    expect(entriesOf({ soil: 'clay' }).joints / atJoint(presence(6, 0.9 * REACH_M))).toBeCloseTo(1, 5);
  });

  it('are fewer beyond paving: its ground is as if a quarter longer', () => {
    expect(entriesOf({ paved: true }).joints / atJoint(presence(6 / 0.8))).toBeCloseTo(1, 5);
  });

  it('are three tenths behind a barrier, or what comes round its end', () => {
    expect(entriesOf({ barrierM: 30 }).joints / atJoint(0.3 * presence(6))).toBeCloseTo(1, 5);
    // 4 m to either end and as much back: 5 m twice
    expect(entriesOf({ barrierM: 4 }).joints / atJoint(presence(10))).toBeCloseTo(1, 4);
  });

  it('fade over five years from a felled tree', () => {
    // felled in the middle of 2026: 1, 0.8, ... 0 over five years, 2.5 years' worth in all
    const fading = entriesOf({ tree: { felled: '2026-07-01' } }).joints / (atJoint(presence(6)) / YEARS);
    expect(fading).toBeGreaterThan(2.3);
    expect(fading).toBeLessThan(2.7);
    expect(entriesOf({ tree: { felled: '2015-07-01' } }).joints).toBe(0);
  });

  it('tell trees apart that are alike but for the year of felling', () => {
    const twin = (felled: string): Readonly<Record<string, unknown>> => ({
      felled,
      canopy_radius_m: undefined,
    });
    const bothOf = (first: string, second: string): number => {
      const made = scene();
      for (const [i, felled] of [first, second].entries()) {
        made.tree({ at: [50, 6 - 12 * i], species: 'Alnus glutinosa', dbh_cm: 160, ...twin(felled) });
      }
      made.drain({
        path: [
          [0, 0],
          [100, 0],
        ],
        material: 'clay',
        joint: 'none',
        installed: 1900,
      });
      made.fitting({ type: 'coupling', at: [50, 0] });
      const { segments } = rank(made.site(), { asOf: '2026-07-01', horizonYears: YEARS });
      return segments.reduce((sum, { expectedEntries }) => sum + expectedEntries.joints, 0);
    };
    const [gone, late] = ['2010-07-01', '2030-07-01'];
    expect(bothOf(gone, gone)).toBe(0);
    expect(bothOf(gone, late)).toBeCloseTo(bothOf(late, late) / 2, 12);
    expect(bothOf(late, gone)).toBeCloseTo(bothOf(late, late) / 2, 12);
  });

  it('begin when the tree is planted', () => {
    // moments of the horizon that lie before it count nothing: two of four, half of the years
    expect(entriesOf({ tree: { planted: '2031-07-01' } }).joints / plain.joints).toBeCloseTo(0.5, 9);
    expect(entriesOf({ tree: { planted: '2040-07-01' } }).joints).toBe(0);
    expect(entriesOf({ tree: { planted: '1950-07-01' } }).joints).toBeCloseTo(plain.joints, 12);
  });

  it('are held back by a dig and by cutting inside for some years', () => {
    // dug now: 13 m at 0.75 m a year is 17 years, at most 10; 1 - exp(-(t/10)^2) over ten years
    const share = (tau: number, from: number): number => {
      const steps = 10_000;
      let sum = 0;
      for (let i = 0; i < steps; i++)
        sum += 1 - Math.exp(-(((from + ((i + 0.5) / steps) * YEARS) / tau) ** 2));
      return sum / steps;
    };
    const far = atJoint(presence(13));
    expect(entriesOf({ offM: 13, drain: { dug: '2026-07-01' } }).joints / far).toBeCloseTo(share(10, 0), 3);
    // 6 m at 0.75 m a year: 8 years
    expect(entriesOf({ drain: { dug: '2026-07-01' } }).joints / plain.joints).toBeCloseTo(share(8, 0), 3);
    expect(entriesOf({ drain: { dug: '2022-07-01' } }).joints / plain.joints).toBeCloseTo(share(8, 4), 3);
    // cut inside: 2 years, wherever the tree stands
    expect(entriesOf({ drain: { cut: '2026-07-01' } }).joints / plain.joints).toBeCloseTo(share(2, 0), 2);
  });

  it('are held back by the slower clock where it was dug and cut', () => {
    const dug = (year: number): Properties => ({ dug: `${year}-07-01` });
    const cut = { cut: '2026-07-01' };
    // eight years after the dig most is back, and the cutter's two years are the slower; two years after it is not
    const long = entriesOf({ drain: dug(2018) });
    const both = entriesOf({ drain: { ...dug(2018), ...cut } });
    expect(both.joints).toBeLessThan(0.9 * long.joints);
    expect(both.joints).toBeLessThan(entriesOf({ drain: cut }).joints);
    // roots cut inside the pipe are still there outside
    expect(both.crush).toBeCloseTo(long.crush, 12);
    expect(entriesOf({ drain: { ...dug(2024), ...cut } }).joints).toBe(
      entriesOf({ drain: dug(2024) }).joints,
    );
  });
});

describe('crushing beside one tree', () => {
  // 0.64 x (50 x 1.6)^0.42 (AS 4970-2009)
  const structuralM = 0.64 * 80 ** 0.42;
  /** 0.0008 a metre and year at 35 psi (judgement); the bell curve over a long straight line is r sqrt(pi). */
  const along = (offM: number, psi: number): number =>
    ((0.0008 * 35) / psi) * YEARS * structuralM * Math.sqrt(Math.PI) * Math.exp(-((offM / structuralM) ** 2));
  const clay = toPsi(pipeRow('clay').stiffness.value as Parameters<typeof toPsi>[0]);

  it('is that of a bell curve over the structural radius', () => {
    for (const offM of [1, 3, 6]) {
      const { crush } = entriesOf({ offM });
      // two-point rule on parts of 3 m: within 1 % here
      expect(crush / along(offM, clay)).toBeGreaterThan(0.99);
      expect(crush / along(offM, clay)).toBeLessThan(1.01);
    }
  });

  it('does not ask for soil or paving, and is three tenths behind a barrier', () => {
    const plain = entriesOf().crush;
    expect(entriesOf({ soil: 'sand' }).crush).toBeCloseTo(plain, 12);
    expect(entriesOf({ paved: true }).crush).toBeCloseTo(plain, 12);
    expect(entriesOf({ barrierM: 48 }).crush / plain).toBeCloseTo(0.3, 6);
  });
});
