import { describe, expect, it } from 'vitest';
import type { RankOptions } from '../../../packages/core/src/risk/context.js';
import { rank } from '../../../packages/core/src/risk/rank.js';
import { type Scene, scene } from '../../scenes/scene.js';

const lines = (made = scene()): Scene =>
  made
    .drain({
      id: 'b',
      path: [
        [0, 0],
        [12, 0],
      ],
      flow: 'as-drawn',
      material: 'clay',
      piece_m: 0.6,
      installed: 1980,
    })
    .drain({
      id: 'a',
      path: [
        [0, 30],
        [12, 30],
      ],
      flow: 'as-drawn',
      material: 'clay',
      piece_m: 0.6,
      installed: 1980,
    })
    .tree({ id: 't', at: [6, 3], species: 'Betula nigra', dbh_cm: 40 });

const ranked = (made: Scene, options: Partial<RankOptions> = {}) =>
  rank(made.site(), { asOf: '2026-11-25', segmentM: 3, ...options });

describe('the order of segments', () => {
  it('is by expected entries, worst first, ranks counted from one', () => {
    const { segments } = ranked(lines());
    const scores = segments.map((s) => s.score);
    expect(scores).toEqual([...scores].sort((a, b) => b - a));
    expect(segments.map((s) => s.rank)).toEqual(segments.map((_, i) => i + 1));
  });

  it('is by line and number where nothing tells them apart', () => {
    const { segments } = ranked(
      lines(
        scene().drain({
          id: 'c',
          path: [
            [0, 900],
            [6, 900],
          ],
          flow: 'as-drawn',
        }),
      ),
    );
    const untouched = segments.filter((s) => s.score === 0).map((s) => s.id);
    expect(untouched).toEqual([...untouched].sort());
    expect(untouched.length).toBeGreaterThan(1);
  });

  it('puts roots that fill the pipe before any score', () => {
    const made = lines().finding({ drain: 'a', from: 'start', at_m: 1, seen: 'full', date: 2026 });
    expect(ranked(made).segments[0]).toMatchObject({ drainId: 'a', band: 'act', known: { seen: 'full' } });
    expect(ranked(made, { top: 1 }).segments).toHaveLength(1);
    expect(ranked(made, { top: 1 }).segments[0]).toMatchObject({ drainId: 'a' });
  });

  it('gives as many as are asked for and still counts all', () => {
    const all = ranked(lines());
    const three = ranked(lines(), { top: 3 });
    expect(three.segments.map((s) => s.id)).toEqual(all.segments.slice(0, 3).map((s) => s.id));
    expect(three.totals.segments).toBe(8);
    expect(ranked(lines(), { top: 0 }).segments).toEqual([]);
    expect(ranked(lines(), { top: 999 }).segments).toHaveLength(8);
  });

  it('reports every segment however long the pieces it is scored on', () => {
    for (const segmentM of [0.3, 1, 3, 6, 20]) {
      const { segments, totals } = ranked(lines(), { segmentM });
      expect(segments).toHaveLength(totals.segments);
    }
  });
});

describe('options that make no sense', () => {
  const site = lines().site();
  it.each([
    [{ asOf: 'soon' }, "asOf must be an ISO date, got 'soon'"],
    [{ asOf: '2026-11-25', segmentM: 0.1 }, 'segmentM must be at least 0.3 m, got 0.1'],
    [{ asOf: '2026-11-25', segmentM: Number.NaN }, 'segmentM must be at least 0.3 m, got NaN'],
    [{ asOf: '2026-11-25', horizonYears: 0 }, 'horizonYears must be a positive number, got 0'],
  ])('are refused by name and value: %o', (options, message) => {
    expect(() => rank(site, options)).toThrow(new RangeError(message));
  });
});
