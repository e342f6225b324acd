import { describe, expect, it } from 'vitest';
import { supposed } from '../../../apps/map/src/question.js';
import { rank } from '../../../packages/core/src/risk/rank.js';
import { scene } from '../../scenes/scene.js';

const today = '2026-11-25';

describe('a line supposed to be dug up and cleared now', () => {
  it.each([today, '2020', undefined])('has no known trouble left, seen in %s', (date) => {
    const site = scene()
      .drain({
        id: 'main',
        path: [
          [0, 0],
          [12, 0],
        ],
        material: 'clay',
        flow: 'as-drawn',
      })
      .tree({ id: 't', at: [6, 3], species: 'Ulmus americana', dbh_cm: 60 })
      .finding({ drain: 'main', from: 'start', at_m: 2, to_m: 8, seen: 'mass', ...(date ? { date } : {}) })
      .site();
    const knownIn = (cleared: boolean) =>
      rank(supposed(site, { today, yearsAhead: 0, clearedNow: cleared }), { asOf: today }).segments.filter(
        ({ known }) => known !== null,
      ).length;
    expect(knownIn(false)).toBeGreaterThan(0);
    expect(knownIn(true)).toBe(0);
  });
});
