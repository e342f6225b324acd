import { describe, expect, it } from 'vitest';
import { learn } from '../../../packages/core/src/learn/learn.js';
import { readLearnedModel } from '../../../packages/core/src/learn/model-file.js';
import type { LearnedGroup, LearnedModel } from '../../../packages/core/src/model/learned.js';
import type { Observation } from '../../../packages/core/src/risk/observed.js';

const COUNTS = { sites: 1, lines: 4 };

function observation(line: string, group: string, entries: number, expected: number): Observation {
  const saw = entries > 0 ? 'count' : 'none';
  const where = { drainId: line, line, fromM: 0, toM: 10, year: 2020, sinceYear: 1980 };
  return { ...where, group, saw, entries, expected };
}

const rowOf = (rows: readonly LearnedGroup[], group: string): LearnedGroup => {
  const row = rows.find((r) => r.group === group);
  if (!row) throw new Error(`nothing learned of ${group}`);
  return row;
};

const SEEN = [
  observation('a', 'mortar/clay', 9, 2),
  observation('b', 'mortar/clay', 5, 2),
  observation('c', 'gasket/pvc-sdr35', 0, 4),
  observation('d', 'gasket/pvc-sdr35', 1, 5),
  observation('d', 'crush/pvc-sdr35', 0, 0.3),
];

/** Worked out anew in every test, so that a fault put into it is seen by each. */
const fromSeen = (): LearnedModel => learn(SEEN, COUNTS);

describe('what is learned', () => {
  it('has a row for each group seen, and one for each kind', () => {
    const learned = fromSeen();
    expect(learned.groups.map((g) => g.group)).toEqual([
      'crush/pvc-sdr35',
      'gasket/pvc-sdr35',
      'mortar/clay',
    ]);
    expect(learned.kinds.map((g) => g.group)).toEqual(['crush', 'gasket', 'mortar']);
    expect(rowOf(learned.groups, 'mortar/clay')).toMatchObject({
      entries: 14,
      expected: 4,
      someStretches: 0,
    });
    expect(learned.data).toMatchObject({ ...COUNTS, observations: 5 });
  });

  it('lies between the prior and what was seen', () => {
    const learned = fromSeen();
    const clay = rowOf(learned.groups, 'mortar/clay');
    expect(clay.multiplier.mean).toBeGreaterThan(1);
    expect(clay.multiplier.mean).toBeLessThan(14 / 4);
    const plastic = rowOf(learned.groups, 'gasket/pvc-sdr35');
    expect(plastic.multiplier.mean).toBeLessThan(1);
    expect(plastic.multiplier.mean).toBeGreaterThan(1 / 9);
  });

  it('moves a kind less than the group that was seen', () => {
    const learned = fromSeen();
    const { mean } = rowOf(learned.kinds, 'mortar').multiplier;
    expect(mean).toBeGreaterThan(1);
    expect(mean).toBeLessThan(rowOf(learned.groups, 'mortar/clay').multiplier.mean);
    expect(rowOf(learned.kinds, 'mortar').logSd).toBeGreaterThan(rowOf(learned.groups, 'mortar/clay').logSd);
  });

  it('has its mean and points in order, and a spread below that of the prior', () => {
    const learned = fromSeen();
    for (const { multiplier: m, logSd, priorLogSd } of learned.groups) {
      expect(m.low).toBeLessThan(m.mean);
      expect(m.mean).toBeLessThan(m.high);
      expect(logSd).toBeLessThan(priorLogSd);
    }
  });

  it('is empty of nothing', () => {
    const nothing = learn([], { sites: 0, lines: 0 });
    expect([nothing.groups, nothing.kinds]).toEqual([[], []]);
  });

  // counts of one Poisson rate add up
  it('takes two looks at one line for one look at both', () => {
    const two = learn(
      [observation('a', 'mortar/clay', 2, 1), observation('a', 'mortar/clay', 3, 0.5)],
      COUNTS,
    );
    const one = learn([observation('a', 'mortar/clay', 5, 1.5)], COUNTS);
    expect(two.groups).toEqual(one.groups);
    expect(rowOf(two.groups, 'mortar/clay')).toMatchObject({ entries: 5, expected: 1.5 });
  });

  it('counts the stretches where nobody counted the roots', () => {
    const some = { ...observation('a', 'mortar/clay', 0, 0.4), saw: 'some' as const };
    const { groups } = learn([some, { ...some, line: 'b' }, ...SEEN], COUNTS);
    expect(rowOf(groups, 'mortar/clay')).toMatchObject({ entries: 14, expected: 4, someStretches: 2 });
  });

  it('passes over stretches where nothing could be expected', () => {
    const learned = fromSeen();
    const empty = observation('e', 'open/brick', 2, 0);
    expect(learn([...SEEN, empty], COUNTS).groups).toEqual(learned.groups);
  });

  it('is surer from many lines than from one with as many roots', () => {
    const one = learn([observation('a', 'mortar/clay', 40, 20)], COUNTS);
    const many = learn(
      Array.from({ length: 20 }, (_, i) => observation(`${i}`, 'mortar/clay', 2, 1)),
      COUNTS,
    );
    expect(rowOf(many.groups, 'mortar/clay').logSd).toBeLessThan(
      0.6 * rowOf(one.groups, 'mortar/clay').logSd,
    );
  });

  it('tells findings apart by their fingerprint, and not their order', () => {
    const learned = fromSeen();
    expect(learn([...SEEN].reverse(), COUNTS)).toEqual(learned);
    expect(learn(SEEN.slice(1), COUNTS).data.fingerprint).not.toBe(learned.data.fingerprint);
    const [first, ...rest] = SEEN as [Observation, ...Observation[]];
    const changes = [
      { group: 'mortar/brick' },
      { saw: 'some' as const },
      { entries: 8 },
      { expected: 3 },
      { year: 2021 },
    ];
    const prints = changes.map(
      (change) => learn([{ ...first, ...change }, ...rest], COUNTS).data.fingerprint,
    );
    expect(new Set([...prints, learned.data.fingerprint]).size).toBe(1 + changes.length);
  });

  // sums of three and more in another order end on other digits
  it('has the same digits for several lines of several groups of a kind in any order', () => {
    const groups = ['mortar/clay', 'mortar/concrete', 'mortar/cast-iron'];
    const many = groups.flatMap((group, g) =>
      Array.from({ length: 7 }, (_, i) => observation(`line ${i}`, group, (g * i) % 4, 0.1 + 0.37 * i)),
    );
    const mixed = many.map((_, i) => many[(8 * i + 5) % many.length] as Observation);
    expect(new Set(mixed).size).toBe(many.length);
    expect(learn(mixed, COUNTS)).toEqual(learn(many, COUNTS));
  });
});

describe('a model file', () => {
  const text = JSON.stringify(fromSeen());
  const changed = (change: (model: LearnedModel) => object): string => JSON.stringify(change(fromSeen()));

  it('comes back as it was written, to the last digit', () => {
    const model = fromSeen();
    expect(readLearnedModel(JSON.stringify(model))).toEqual({ ok: true, model });
  });

  it.each([
    ['no JSON', '{"schema": 1', 'the model file is not JSON'],
    ['another kind of file', '{"type": "FeatureCollection", "features": []}', 'not a learned model: schema'],
    ['an empty text', '', 'the model file is not JSON'],
    ['a number', '7', 'not a learned model'],
    [
      'a mean of nothing',
      text.replace(/"mean":[\d.]+/, '"mean":0'),
      'not a learned model: groups.0.multiplier.mean',
    ],
    ['a spread that is not a number', text.replace(/"logSd":[\d.]+/, '"logSd":null'), 'groups.0.logSd'],
  ])('is refused in plain words: %s', (_, bad, reason) => {
    const reading = readLearnedModel(bad);
    expect(reading.ok).toBe(false);
    expect(reading.ok ? '' : reading.reason).toContain(reason);
  });

  it('is refused where it was learned with other tables', () => {
    for (const one of [{ fingerprint: '00000000' }, { version: '0.0' }]) {
      const other = changed((m) => ({ ...m, model: { ...m.model, ...one } }));
      expect(readLearnedModel(other)).toMatchObject({
        ok: false,
        reason: expect.stringContaining('other tables'),
      });
    }
  });
});
