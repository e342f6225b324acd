import { describe, expect, it } from 'vitest';
import { LINE_CV, shapeOf } from '../../../packages/core/src/infer/gamma-prior.js';
import { learn } from '../../../packages/core/src/learn/learn.js';
import type { LearnedGroup, LearnedModel } from '../../../packages/core/src/model/learned.js';
import { rank } from '../../../packages/core/src/risk/rank.js';
import { ownFactor } from '../../../packages/core/src/risk/rate-scale.js';
import { scene } from '../../scenes/scene.js';

const row = (group: string, mean: number): LearnedGroup => ({
  group,
  entries: 4,
  expected: 2,
  someStretches: 0,
  multiplier: { low: mean / 2, mean, high: 2 * mean },
  logSd: 0.3,
  priorLogSd: 0.7,
});
const model = (groups: LearnedGroup[], kinds: LearnedGroup[]): LearnedModel => ({
  ...learn([], { sites: 1, lines: 1 }),
  groups,
  kinds,
});

/** Entries expected of a line of this material and joint beside one oak, with what was learned. */
function entriesOf(material: string, joint: string, learned?: LearnedModel) {
  const made = scene()
    .tree({ id: 'oak', at: [6, 2], species: 'Quercus rubra', dbh_cm: 50 })
    .drain({
      path: [
        [0, 0],
        [12, 0],
      ],
      material,
      joint,
      installed: 1996,
    });
  const { segments } = rank(made.site(), {
    asOf: '2026-07-01',
    segmentM: 100,
    ...(learned ? { learned } : {}),
  });
  const { joints, crush } = segments[0]?.expectedEntries ?? { joints: 0, crush: 0 };
  return { joints, crush };
}

describe('what was learned', () => {
  it.each<[string, LearnedGroup[], LearnedGroup[], { joints: number; crush: number }]>([
    ['nothing of it', [row('gasket/clay', 3)], [row('gasket', 3)], { joints: 1, crush: 1 }],
    ['the group', [row('mortar/clay', 3)], [], { joints: 3, crush: 1 }],
    ['its kind in other materials', [row('mortar/concrete', 5)], [row('mortar', 2)], { joints: 2, crush: 1 }],
    ['the group before its kind', [row('mortar/clay', 3)], [row('mortar', 2)], { joints: 3, crush: 1 }],
    ['crushing', [row('crush/clay', 0.5)], [row('crush', 9)], { joints: 1, crush: 0.5 }],
  ])('multiplies the entries expected: %s', (_, groups, kinds, times) => {
    const plain = entriesOf('clay', 'mortar');
    const learned = entriesOf('clay', 'mortar', model(groups, kinds));
    expect(learned.joints / plain.joints).toBeCloseTo(times.joints, 9);
    expect(learned.crush / plain.crush).toBeCloseTo(times.crush, 9);
  });
});

describe('how a line differs from its kind', () => {
  const counted = (entries: number, expected: number) => ({ saw: 'count' as const, entries, expected });
  const a = shapeOf(LINE_CV);

  // the gamma prior is conjugate to Poisson counts: mean (a + n) / (a + E), Gelman et al., Bayesian Data Analysis, 2.6 (from memory)
  it.each([
    [0, 3, 1],
    [4, 1.5, 1],
    [4, 1.5, 2.5],
    [1, 0.2, 0.4],
  ])('is the mean of the gamma posterior: %d of %d, the kind at %d', (n, expected, kind) => {
    const factor = ownFactor([counted(n, expected)], kind);
    expect(factor).toBeCloseTo((a + n) / (a + expected * kind), 12);
  });

  it('is 1 where nothing was seen, or where nothing could be expected', () => {
    expect(ownFactor([], 2)).toBe(1);
    expect(ownFactor([counted(3, 0)], 2)).toBe(1);
  });

  // roots where hardly any were expected are one entry: (a + 1) / a
  it('takes roots that nobody counted for one at least', () => {
    const some = { saw: 'some' as const, entries: 0, expected: 1e-9 };
    expect(ownFactor([some], 1)).toBeCloseTo((a + 1) / a, 6);
    const both = ownFactor([some, counted(0, 2)], 1);
    expect(both).toBeCloseTo((a + 1) / (a + 2), 6);
  });
});
