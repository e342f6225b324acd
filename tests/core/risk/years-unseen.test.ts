import { describe, expect, it } from 'vitest';
import type { LineModel } from '../../../packages/core/src/line/line-model.js';
import type { RiskContext } from '../../../packages/core/src/risk/context.js';
import { rank } from '../../../packages/core/src/risk/rank.js';
import { yearsUnseen } from '../../../packages/core/src/risk/segment-result.js';
import { scene } from '../../scenes/scene.js';

describe('years since a stretch was last known to be clean', () => {
  const unseen = (installedYear: number | null, dugYear: number | null, seenClear: number | null): number =>
    yearsUnseen(
      { nowYear: 2026 } as RiskContext,
      { drain: { installedYear, dugYear } } as LineModel,
      seenClear,
    );

  it.each([
    [1990, null, null, 36],
    [1990, 2010, null, 16],
    [1990, 2010, 2020, 6],
    [1990, 2022, 2020, 4],
    [null, null, 2020, 6],
    [null, null, null, 0],
    [2030, null, null, 0],
  ])('laid %s, dug %s, seen clear %s: %d', (installed, dug, seen, years) => {
    expect(unseen(installed, dug, seen)).toBe(years);
  });
});

describe('where the joints of a segment come from', () => {
  const basis = (drain: Readonly<Record<string, unknown>>, wye = false): string | undefined => {
    const made = scene().drain({
      path: [
        [0, 0],
        [3, 0],
      ],
      material: 'clay',
      ...drain,
    });
    if (wye) made.fitting({ type: 'wye', at: [0, 0] });
    return rank(made.site(), { asOf: '2026-07-01' }).segments[0]?.joints.basis;
  };

  it('is told in words', () => {
    expect(basis({})).toBe('usual pieces');
    expect(basis({ piece_m: 1 })).toBe('pieces');
    expect(basis({ joint: 'none' })).toBe('no pipe joints');
    expect(basis({ piece_m: 1 }, true)).toBe('fittings and pieces');
  });
});
