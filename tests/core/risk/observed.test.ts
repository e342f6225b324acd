import { describe, expect, it } from 'vitest';
import { observe } from '../../../packages/core/src/learn/learn.js';
import type { Observation } from '../../../packages/core/src/risk/observed.js';
import { type Scene, scene } from '../../scenes/scene.js';

type Finding = Readonly<Record<string, unknown>>;

/** What is learned from findings on a clay line of 24 m with its outlet at reading 0. */
function observed(findings: readonly Finding[], drain: Finding = {}): Observation[] {
  const start: Scene = scene()
    .drain({
      id: 'main',
      path: [
        [24, 0],
        [0, 0],
      ],
      flow: 'as-drawn',
      material: 'clay',
      installed: 1980,
      ...drain,
    })
    .tree({ at: [3, 3], species: 'Acer rubrum', dbh_cm: 50 })
    .tree({ at: [17, -5], species: 'Betula nigra', dbh_cm: 30 });
  const made = findings.reduce<Scene>(
    (grown, f) => grown.finding({ drain: 'main', from: 'end', ...f }),
    start,
  );
  const { observations, issues } = observe(made.site(), { asOf: '2026-11-25' });
  expect(issues).toEqual([]);
  return observations;
}

const entriesOf = (findings: readonly Finding[], drain?: Finding): Observation[] =>
  observed(findings, drain).filter((o) => !o.group.startsWith('crush/'));

/** All that a likelihood asks of the observations. */
function told(observations: readonly Observation[]): { counted: number; expected: number; somes: number } {
  const counted = observations.filter((o) => o.saw !== 'some');
  return {
    counted: counted.reduce((sum, o) => sum + o.entries, 0),
    expected: counted.reduce((sum, o) => sum + o.expected, 0),
    somes: observations.filter((o) => o.saw === 'some').length,
  };
}

const DAY = { date: '2015-05-01' };
const clear = (from: number, to: number, more: Finding = DAY): Finding => ({
  at_m: from,
  to_m: to,
  seen: 'clear',
  ...more,
});
const roots = (from: number, to: number, more: Finding = {}): Finding => ({
  at_m: from,
  to_m: to,
  seen: 'mass',
  ...DAY,
  ...more,
});
const root = (at: number, more: Finding = {}): Finding => ({ at_m: at, seen: 'fine', ...DAY, ...more });

const ALL = told(entriesOf([clear(0, 24)])).expected;

describe('a count of roots', () => {
  const saw = (finding: Finding): string[] =>
    entriesOf([finding])
      .filter((o) => o.saw !== 'none')
      .map((o) => (o.saw === 'count' ? `${o.entries}` : o.saw));

  it('is believed up to four entries a metre, and four at one place', () => {
    expect(saw(roots(5, 10, { entries: 20 }))).toEqual(['20']);
    expect(saw(roots(5, 10, { entries: 21 }))).toEqual(['some']);
    expect(saw(roots(5, 5.4, { entries: 4 }))).toEqual(['4']);
    expect(saw(roots(5, 5.4, { entries: 5 }))).toEqual(['some']);
  });
});

describe('one run of the camera', () => {
  it('tells of the whole line where it was clear, of roots and of breaks', () => {
    const observations = observed([clear(0, 24)]);
    expect(observations.map((o) => [o.group, o.saw])).toEqual([
      ['mortar/clay', 'none'],
      ['crush/clay', 'none'],
    ]);
    expect(ALL).toBeGreaterThan(0.2);
  });

  it('tells the same however the findings share out the line', () => {
    const shared = told(entriesOf([clear(0, 5), roots(5, 8, { entries: 2 }), root(11), clear(8, 24)]));
    expect(shared.counted).toBe(3);
    expect(shared.expected / ALL).toBeCloseTo(1, 12);
  });

  it('believes roots before it believes clear', () => {
    const both = told(entriesOf([clear(0, 24), roots(5, 8, { entries: 2 })]));
    expect(both.counted).toBe(2);
    expect(both.expected / ALL).toBeCloseTo(1, 12);
    expect(entriesOf([clear(0, 24), roots(0, 24, { seen: 'full' })]).map((o) => o.saw)).toEqual(['some']);
  });

  it.each([
    ['a clear stretch', [clear(0, 24)]],
    ['a counted stretch', [roots(5, 8, { entries: 2 })]],
    ['an uncounted stretch', [roots(5, 8)]],
    ['a point', [root(7)]],
  ])('counts what is told twice once: %s', (_, findings) => {
    expect(entriesOf([...findings, ...findings])).toEqual(entriesOf(findings));
  });

  it.each([
    ['clear', [clear(2, 20)], [clear(2, 9), clear(9, 20)]],
    ['counted', [roots(2, 20, { entries: 5 })], [roots(2, 9, { entries: 3 }), roots(9, 20, { entries: 2 })]],
    ['not counted', [roots(2, 20)], [roots(2, 9), roots(9, 20)]],
  ])('takes two stretches that touch for one: %s', (_, whole, parts) => {
    expect(entriesOf(parts)).toEqual(entriesOf(whole));
  });

  it('takes the greater count of one stretch within another, and the points within a counted one', () => {
    expect(told(entriesOf([roots(2, 12, { entries: 3 }), roots(4, 6, { entries: 2 })])).counted).toBe(3);
    expect(told(entriesOf([roots(2, 12, { entries: 1 }), root(3), root(5), root(9)])).counted).toBe(3);
  });

  it('takes a point within an uncounted stretch as part of it, wherever the point lies', () => {
    const plain = entriesOf([roots(4, 12)]);
    expect(entriesOf([roots(4, 12), root(5)])).toEqual(plain);
    expect(entriesOf([root(11.9), roots(4, 12)])).toEqual(plain);
  });

  it('keeps two points apart though their surroundings overlap, and loses neither on a short line', () => {
    expect(told(entriesOf([root(10), root(10.8)])).counted).toBe(2);
    const short = {
      path: [
        [2, 0],
        [0, 0],
      ],
    };
    expect(told(entriesOf([root(0.8), root(1.3)], short)).counted).toBe(2);
  });

  it('says nothing without a date, or before the line was laid', () => {
    expect(
      observed([
        { at_m: 0, to_m: 24, seen: 'clear' },
        { at_m: 5, seen: 'mass' },
      ]),
    ).toEqual([]);
    expect(observed([clear(0, 24, { date: 1975 }), roots(3, 5, { date: 1979 })])).toEqual([]);
  });

  it('learns of breaks and of roots apart', () => {
    const observations = observed([clear(0, 24), { at_m: 9, seen: 'crushed', ...DAY }]);
    expect(observations.filter((o) => o.saw === 'count')).toMatchObject([
      { group: 'crush/clay', entries: 1 },
    ]);
  });

  it('takes a count past belief as roots that were not counted', () => {
    expect(entriesOf([roots(5, 8, { entries: 500 })])).toEqual(entriesOf([roots(5, 8)]));
  });

  it('passes over sags and offsets', () => {
    expect(
      observed([
        { at_m: 9, seen: 'sag', ...DAY },
        { at_m: 12, to_m: 14, seen: 'offset', ...DAY },
      ]),
    ).toEqual([]);
  });

  it('gives the length that is new of a stretch, so that expected entries a metre are right', () => {
    const [first, second] = entriesOf([root(10), root(11)]);
    expect([first?.fromM, first?.toM]).toEqual([8.5, 11.5]);
    expect([second?.fromM, second?.toM]).toEqual([11.5, 12.5]);
  });
});

describe('several runs', () => {
  const LATER = { date: '2022-05-01' };

  it('count from when a stretch was last seen clean', () => {
    const [first, second] = entriesOf([clear(0, 24), clear(0, 24, LATER)]);
    expect(second?.sinceYear).toBe(first?.year);
    const late = entriesOf([clear(0, 24, LATER)])[0]?.expected ?? 0;
    expect(((first?.expected ?? 0) + (second?.expected ?? 0)) / late).toBeCloseTo(1, 3);
  });

  it('learn nothing from roots that were seen before and not taken out', () => {
    const once = entriesOf([roots(5, 8, { entries: 2 })]);
    expect(entriesOf([roots(5, 8, { entries: 2 }), roots(5, 8, { entries: 4, ...LATER })])).toEqual(once);
  });

  it('know a root again where the counter is a little off', () => {
    const once = entriesOf([root(7)]);
    expect(entriesOf([root(7), root(7.4, LATER)])).toEqual(once);
  });

  it('do not put a later count over a longer stretch down to its new part alone', () => {
    const again = entriesOf([roots(5, 8, { entries: 2 }), roots(5, 12, { entries: 3, ...LATER })]);
    expect(again.map((o) => o.saw)).toEqual(['count', 'some']);
    expect(again[1]).toMatchObject({ fromM: 8, toM: 12 });
  });

  it('start anew after roots were cut or dug out', () => {
    for (const done of ['cut', 'dug']) {
      const again = entriesOf([roots(5, 8, { entries: 2 }), roots(5, 8, { entries: 1, ...LATER })], {
        [done]: 2018,
      });
      expect(again.map((o) => o.entries)).toEqual([2, 1]);
      expect(again[1]?.sinceYear).toBe(2018.5);
    }
  });

  it('start anew after a stretch with roots was seen clean', () => {
    const again = entriesOf([roots(5, 8), clear(5, 8, { date: '2018-01-01' }), roots(5, 8, LATER)]);
    expect(again.map((o) => o.saw)).toEqual(['some', 'some']);
    expect(again[1]?.sinceYear).toBe(2018);
  });

  it('are the same in whatever order they are written down', () => {
    const findings = [
      clear(0, 5),
      roots(5, 8, { entries: 2 }),
      roots(7, 10),
      root(11),
      root(11.5, { entries: 3 }),
      root(11.5),
      clear(8, 24),
      clear(0, 24, LATER),
      { at_m: 9, seen: 'crushed', ...LATER },
    ];
    const forward = observed(findings);
    expect(observed([...findings].reverse())).toEqual(forward);
    expect(observed([...findings.slice(4), ...findings.slice(0, 4)])).toEqual(forward);
  });
});
