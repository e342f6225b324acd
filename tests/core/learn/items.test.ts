import { describe, expect, it } from 'vitest';
import { type Item, itemsOf } from '../../../packages/core/src/learn/items.js';
import { observe } from '../../../packages/core/src/learn/learn.js';
import type { Site } from '../../../packages/core/src/model/site.js';
import { pipeRow } from '../../../packages/core/src/tables/pipes.js';
import { scene } from '../../scenes/scene.js';

const OPTIONS = { asOf: '2026-01-01' };

/** A clay line of 24 m with its outlet at reading 0, and one tree 3 m from it, 5 m from the outlet. */
function seen(findings: readonly Readonly<Record<string, unknown>>[], drain: object = {}): Site {
  const start = scene()
    .drain({
      id: 'far',
      path: [
        [0, 500],
        [9, 500],
      ],
      material: 'clay',
    })
    .drain({
      id: 'main',
      path: [
        [24, 0],
        [0, 0],
      ],
      flow: 'as-drawn',
      material: 'clay',
      installed: '1980-01-01',
      ...drain,
    })
    .tree({ at: [5, 3], species: 'Acer rubrum', dbh_cm: 50 });
  return findings
    .reduce<typeof start>(
      (made, f) => made.finding({ drain: 'main', from: 'end', date: '2015-01-01', ...f }),
      start,
    )
    .site();
}

const round = (value: number): number => Math.round(value * 1e6) / 1e6;
const near = (items: readonly Item[]): number[] => items.map((i) => round(i.nearestTreeM));

describe('what a back-test sees of a camera run', () => {
  it('is clean pipe by sticks of 3 m, each with its own nearest tree, by Pythagoras', () => {
    const items = itemsOf(seen([{ at_m: 9, to_m: 24, seen: 'clear' }]), 'yard', OPTIONS);
    expect(items.map((i) => round(i.lengthM))).toEqual([3, 3, 3, 3, 3]);
    expect(near(items)).toEqual([4, 7, 10, 13, 16].map((east) => round(Math.hypot(east, 3))));
    expect(items.map(({ site, group, found }) => [site, group, found])).toEqual(
      items.map(() => ['yard', 'mortar/clay', false]),
    );
  });

  it('leaves a stretch with roots whole, for nobody said where in it they are', () => {
    const items = itemsOf(seen([{ at_m: 3, to_m: 11, seen: 'mass' }]), 'yard', OPTIONS);
    expect(items.map((i) => [round(i.lengthM), i.found, round(i.nearestTreeM)])).toEqual([[8, true, 3]]);
  });

  it('expects of the parts together what was expected of the whole, and nothing of breaks', () => {
    const site = seen([
      { at_m: 0, to_m: 15, seen: 'clear' },
      { at_m: 15, to_m: 24, seen: 'mass', entries: 2 },
      { at_m: 20, seen: 'crushed' },
    ]);
    const entries = observe(site, OPTIONS).observations.filter((o) => o.group === 'mortar/clay');
    const items = itemsOf(site, 'yard', OPTIONS);
    expect(new Set(items.map((i) => i.group))).toEqual(new Set(['mortar/clay']));
    for (const found of [false, true]) {
      const said = items.filter((i) => i.found === found).reduce((sum, i) => sum + i.expected, 0);
      const whole = entries.filter((o) => (o.saw !== 'none') === found);
      expect(whole.length).toBeGreaterThan(0);
      expect(said / whole.reduce((sum, o) => sum + o.expected, 0)).toBeCloseTo(1, 12);
    }
  });

  it('counts a second run from the first alone', () => {
    const runs = seen([
      { at_m: 0, to_m: 3, seen: 'clear', date: '2010-01-01' },
      { at_m: 0, to_m: 3, seen: 'clear', date: '2015-01-01' },
    ]);
    const once = itemsOf(seen([{ at_m: 0, to_m: 3, seen: 'clear' }]), 'yard', OPTIONS);
    const [first, second] = itemsOf(runs, 'yard', OPTIONS);
    expect([first?.year, second?.year]).toEqual([2010, 2015]);
    // both together are what one look in 2015 would have been held against
    const sum = (first?.expected ?? 0) + (second?.expected ?? 0);
    expect(first?.expected).toBeGreaterThan(0);
    expect(sum / (once[0]?.expected ?? 0)).toBeCloseTo(1, 2);
  });

  it('has the age of the line on the day, half its expected life before today where no year is known', () => {
    const clear = [{ at_m: 0, to_m: 3, seen: 'clear' }];
    expect(itemsOf(seen(clear), 'yard', OPTIONS)[0]?.ageYears).toBeCloseTo(35, 9);
    const [unknown] = itemsOf(seen(clear, { installed: null }), 'yard', OPTIONS);
    // half of 75 years, eleven of them since
    expect(pipeRow('clay').expectedLifeYears.value).toBe(75);
    expect(unknown?.ageYears).toBeCloseTo(37.5 - 11, 9);
  });
});
