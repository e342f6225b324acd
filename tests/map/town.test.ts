import type { Band } from '@rootreach/core';
import { beforeAll, describe, expect, it } from 'vitest';
import { type OpenSite, openSite } from '../../apps/map/src/open-site.js';
import { type Question, supposed } from '../../apps/map/src/question.js';
import { Session } from '../../apps/map/src/session.js';
import { columnsOf, type Town } from '../../apps/map/src/town.js';
import { makeTown } from '../bench/town.mjs';

const AS_OF = '2026-11-25';
const made = makeTown({ trees: 2500, lines: 500, seed: 3 });
const inputs = Object.entries(made).map(([name, text]) => ({ name, text }));

let open: OpenSite;
let town: Town;

beforeAll(() => {
  open = openSite(inputs, AS_OF);
  town = open.town as Town;
});

const BANDS: readonly Band[] = ['act', 'inspect', 'watch', 'leave', 'cannot-say'];
const strokesIn = (view: ReturnType<Town['view']>) =>
  BANDS.reduce((sum, band) => sum + view.strokes[band].starts.length, 0);

/** A box about the middle of a stretch, so many degrees either way. */
function about(id: string, degrees: number): [number, number, number, number] {
  const row = open.opened.result.segments.find((one) => one.id === id);
  const [lon = 0, lat = 0] = row?.geometry.coordinates[0] ?? [];
  return [lon - degrees, lat - degrees, lon + degrees, lat + degrees];
}

describe('a site too large to hold', () => {
  it('gives the page the worst stretches and the sums, and no features', () => {
    const { site, result, large } = open.opened;
    expect(large?.bounds).toHaveLength(4);
    expect([site.trees, site.drains, site.fittings].every((rows) => rows.length === 0)).toBe(true);
    expect(result.segments).toHaveLength(300);
    expect(result.totals).toMatchObject({ trees: 2500, drains: 500 });
    const { byBand, segments } = result.totals;
    expect(segments).toBeGreaterThan(3000);
    expect(BANDS.reduce((sum, band) => sum + byBand[band].segments, 0)).toBe(segments);
  });

  it('is drawn line by line from afar and stretch by stretch from near, in the bands of the sums', () => {
    const { bounds } = town.large;
    const far = town.view(bounds, 8);
    expect(strokesIn(far)).toBe(500);
    expect(far.trees).toHaveLength(0);
    const near = town.view(bounds, 0.3);
    for (const band of BANDS) {
      expect(near.strokes[band].starts.length).toBe(open.opened.result.totals.byBand[band].segments);
    }
    expect(near.trees.length / 5).toBe(2500);
  });

  it('draws no more than lies in view', () => {
    const [worst] = open.opened.result.segments;
    const part = town.view(about(worst?.id ?? '', 5e-4), 0.1);
    expect(strokesIn(part)).toBeGreaterThan(0);
    expect(strokesIn(part)).toBeLessThan(400);
    const { points, starts } = part.strokes[worst?.band ?? 'act'];
    expect(starts.length).toBeGreaterThan(0);
    expect(points.length).toBeGreaterThanOrEqual(4 * starts.length);
  });

  it('hands its columns over whole', () => {
    const view = town.view(town.large.bounds, 0.3);
    const copy = structuredClone(view);
    const sent = structuredClone(view, { transfer: columnsOf(view) });
    expect(sent).toEqual(copy);
    expect(view.trees).toHaveLength(0);
  });

  it('finds the stretch at a place, and none where no line is near', () => {
    for (const row of open.opened.result.segments.slice(0, 20)) {
      const [[x0 = 0, y0 = 0] = [], [x1 = 0, y1 = 0] = []] = row.geometry.coordinates;
      const found = town.nearest((x0 + x1) / 2, (y0 + y1) / 2, 0.5);
      const there = town.around(found ?? '', 0)?.segments[0];
      // lines may cross: then the other one is as near
      expect(there?.geometry.coordinates.length).toBeGreaterThan(1);
      if (found?.startsWith(`${row.drainId}/`)) expect(found).toBe(row.id);
    }
    const [west, south] = town.large.bounds;
    expect(town.nearest(west - 0.1, south - 0.1, 20)).toBeNull();
  });

  it('tells a stretch in full as the list does, with its neighbours and their trees', () => {
    const row = open.opened.result.segments[4];
    const detail = town.around(row?.id ?? '', 3);
    const same = detail?.segments.find(({ id }) => id === row?.id);
    expect(same?.rank).toBe(5);
    expect(same?.score).toBe(row?.score);
    expect(same?.drivers).toEqual(row?.drivers);
    expect(detail?.line.segments).toContain(row?.id);
    expect((detail?.segments.length ?? 0) <= 7).toBe(true);
    const ids = new Set(detail?.trees.map(({ id }) => id));
    expect(same?.trees.every(({ id }) => ids.has(id))).toBe(true);
    expect(town.around('no-such-line/1', 3)).toBeNull();
    expect(town.around(`${row?.drainId}/999`, 3)).toBeNull();
  });
});

describe('the session', () => {
  it('asks a large site again as of later years, and keeps it when a file turns out to be empty', () => {
    const session = new Session();
    const opened = session.open(inputs, AS_OF);
    const empty = session.open(
      [{ name: 'empty', text: '{"type":"FeatureCollection","features":[]}' }],
      AS_OF,
    );
    expect(empty.result.totals.trees).toBe(0);
    const question: Question = { today: AS_OF, yearsAhead: 12, clearedNow: true };
    const asked = session.ask(question);
    expect(asked.result.asOf).toBe('2038-11-25');
    expect(asked.large).toEqual(opened.large);
    const again = session.ask({ ...question, yearsAhead: 0, clearedNow: false });
    expect(again.result.segments[0]).toEqual(opened.result.segments[0]);
    expect(supposed(open.site, question).drains.every(({ dugYear }) => (dugYear ?? 0) > 2026)).toBe(true);
  });

  it('holds a small site whole', () => {
    const small = Object.entries(makeTown({ trees: 20, lines: 6, seed: 3 })).map(([name, text]) => ({
      name,
      text,
    }));
    const { opened, town: none } = openSite(small, AS_OF);
    expect(none).toBeNull();
    expect(opened.large).toBeNull();
    expect(opened.site.trees).toHaveLength(20);
    expect(opened.result.segments).toHaveLength(opened.result.totals.segments);
  });
});
