import { describe, expect, it } from 'vitest';
import type { SegmentResult } from '../../../packages/core/src/model/result.js';
import { rank } from '../../../packages/core/src/risk/rank.js';
import { type Scene, scene } from '../../scenes/scene.js';

type Finding = Readonly<Record<string, unknown>>;

/** 12 m in four segments; readings count from the outlet end. */
function segments(findings: readonly Finding[], drain: Finding = {}): readonly SegmentResult[] {
  const start: Scene = scene()
    .drain({
      id: 'main',
      path: [
        [12, 0],
        [0, 0],
      ],
      flow: 'as-drawn',
      material: 'pvc-sdr35',
      installed: 1990,
      ...drain,
    })
    .tree({ id: 't', at: [6, 4], species: 'Betula nigra', dbh_cm: 30 });
  const made = findings.reduce<Scene>(
    (grown, finding) => grown.finding({ drain: 'main', from: 'end', ...finding }),
    start,
  );
  const { segments: found } = rank(made.site(), { asOf: '2026-11-25', segmentM: 3 });
  return [...found].sort((a, b) => a.startM - b.startM);
}

const seenIn = (findings: readonly Finding[], drain?: Finding) =>
  segments(findings, drain).map((s) => s.known?.seen ?? null);

describe('what is known of a segment', () => {
  it('is what was seen in any part of it', () => {
    expect(seenIn([{ at_m: 2.5, to_m: 3.5, seen: 'fine' }])).toEqual(['fine', 'fine', null, null]);
    expect(seenIn([{ at_m: 4, seen: 'mass' }])).toEqual([null, 'mass', null, null]);
  });

  it('at the very ends of the line is not lost', () => {
    expect(seenIn([{ at_m: 0, seen: 'mass' }])).toEqual(['mass', null, null, null]);
    expect(seenIn([{ at_m: 12, seen: 'mass' }])).toEqual([null, null, null, 'mass']);
    expect(seenIn([{ at_m: 12.3, seen: 'mass' }])).toEqual([null, null, null, 'mass']);
  });

  it('is the newest sight, for better or worse', () => {
    const old = { at_m: 0, to_m: 3, seen: 'mass', date: 2015 };
    expect(seenIn([old, { at_m: 0, to_m: 3, seen: 'clear', date: 2020 }])[0]).toBeNull();
    expect(seenIn([{ at_m: 0, to_m: 3, seen: 'clear', date: 2010 }, old])[0]).toBe('mass');
  });

  it('is the worst of one day', () => {
    const day = { at_m: 0, to_m: 3, date: '2025-03-02' };
    expect(
      seenIn([
        { ...day, seen: 'fine' },
        { ...day, seen: 'mass' },
        { ...day, seen: 'clear' },
      ])[0],
    ).toBe('mass');
  });

  it('is the worst of those without a date, in whatever order they come', () => {
    const fine = { at_m: 0, to_m: 3, seen: 'fine' };
    const mass = { at_m: 0, to_m: 3, seen: 'mass' };
    expect(seenIn([fine, mass])[0]).toBe('mass');
    expect(seenIn([mass, fine])[0]).toBe('mass');
    expect(seenIn([mass, { ...fine, date: 2024 }])[0]).toBe('fine');
  });

  it('is dealt with by a digging or a new pipe since', () => {
    const crushed = [{ at_m: 0, to_m: 3, seen: 'crushed', date: 2020 }];
    expect(seenIn(crushed)[0]).toBe('crushed');
    expect(seenIn(crushed, { dug: 2022 })[0]).toBeNull();
    expect(seenIn(crushed, { dug: 2018 })[0]).toBe('crushed');
    expect(seenIn(crushed, { installed: 2023 })[0]).toBeNull();
  });

  it('is dealt with by cutting inside only where it was roots', () => {
    const sight = (seen: string) => [{ at_m: 0, to_m: 3, seen, date: 2020 }];
    for (const roots of ['fine', 'mass', 'full']) expect(seenIn(sight(roots), { cut: 2022 })[0]).toBeNull();
    for (const fault of ['crushed', 'sag', 'offset'])
      expect(seenIn(sight(fault), { cut: 2022 })[0]).toBe(fault);
  });

  it('without a date stands whatever was done', () => {
    expect(seenIn([{ at_m: 0, to_m: 3, seen: 'mass' }], { dug: 2022 })[0]).toBe('mass');
  });

  it('puts severe trouble first and into the band to act', () => {
    const ranked = segments([{ at_m: 10, seen: 'full', blocked_pct: 100, date: 2025 }]);
    expect(ranked[3]).toMatchObject({ rank: 1, band: 'act', known: { seen: 'full', blockedShare: 1 } });
  });

  it('is reported where it names no line', () => {
    const made = scene()
      .drain({
        id: 'main',
        path: [
          [12, 0],
          [0, 0],
        ],
        flow: 'as-drawn',
      })
      .finding({ id: 'seen', drain: 'mian', at_m: 1, seen: 'fine' });
    const { issues } = rank(made.site(), { asOf: '2026-11-25' });
    expect(issues).toMatchObject([
      { code: 'finding-misplaced', severity: 'error', reason: "there is no line 'mian'" },
    ]);
  });
});
