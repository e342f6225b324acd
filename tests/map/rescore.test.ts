import { rank, readSite } from '@rootreach/core';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { engineInPlace } from '../../apps/map/src/engine.js';
import { asOfFor, type Question, supposed } from '../../apps/map/src/question.js';
import { followSketch } from '../../apps/map/src/rescore.js';
import { remove, replace, setProperties } from '../../apps/map/src/sketch/changes.js';
import { toGeoJson } from '../../apps/map/src/sketch/document.js';
import { readDocument } from '../../apps/map/src/sketch/read-document.js';
import * as sketch from '../../apps/map/src/sketch/sketch.js';
import * as state from '../../apps/map/src/state.js';
import type { Opened } from '../../apps/map/src/tasks.js';
import { today } from '../../apps/map/src/today.js';
import { siteText } from './site-text.js';

const plain = (): Question => ({ today: today(), yearsAhead: 0, clearedNow: false });

/** What reading and ranking the whole sketch anew comes to. */
function fromScratch(question = plain()) {
  const document = sketch.site.peek();
  if (!document) throw new Error('no sketch');
  const { site } = readSite([{ name: 'lot', text: toGeoJson(document) }]);
  return rank(supposed(site, question), { asOf: asOfFor(question) });
}

const moveTree = (east: number) =>
  replace({ kind: 'tree', id: 'elm' }, (tree) => {
    const [lon = 0, lat = 0] = (tree.geometry as GeoJSON.Point).coordinates;
    return { ...tree, geometry: { type: 'Point', coordinates: [lon + east * 1e-6, lat] } };
  });

const shown = () => (state.opened.value as Opened).result;
const told = ({ segments }: ReturnType<typeof shown>) =>
  segments.map(({ rank: place, id, score, band }) => [place, id, score, band]);

let stop = () => {};
let answers = 0;

/** Until nothing is on its way any more; the clock stands. */
const turnOver = () => vi.advanceTimersByTimeAsync(0);
const quietDown = () => vi.advanceTimersByTimeAsync(1000);

beforeEach(async () => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  const engine = engineInPlace();
  const input = siteText('corner-lot');
  const opened = (await engine.open([input], today())) as Opened;
  state.yearsAhead.value = 0;
  state.clearedNow.value = false;
  state.opened.value = opened;
  state.fileNames.value = [input.name];
  sketch.openDocument(readDocument('lot', [input]).document);
  stop = followSketch(engine);
  await quietDown();
  answers = 0;
  const unsubscribe = state.opened.subscribe(() => {
    answers += 1;
  });
  const stopFollowing = stop;
  stop = () => {
    stopFollowing();
    unsubscribe();
  };
  answers = 0;
});

afterEach(() => {
  stop();
  sketch.openDocument(null);
  vi.useRealTimers();
});

describe('ranking the sketch as it is edited', () => {
  it('has the scores and the order of the whole at once, and its ranges when it is quiet', async () => {
    sketch.edit('move', moveTree(40));
    await turnOver();
    const quick = shown();
    expect(told(quick)).toEqual(told(fromScratch()));
    expect(new Set(quick.segments.map((row) => row.interval))).toContain('closed-form');
    await quietDown();
    expect(shown().segments).toEqual(fromScratch().segments);
    expect(shown().totals).toEqual(fromScratch().totals);
    expect(answers).toBe(2);
  });

  it('answers only the last of many moves that come faster than the answers', async () => {
    const drag = sketch.startMove('drag');
    for (let step = 1; step <= 30; step++) drag.move(moveTree(step));
    await turnOver();
    expect(answers).toBeLessThanOrEqual(2);
    expect(told(shown())).toEqual(told(fromScratch()));
    drag.done();
    await quietDown();
    expect(shown().segments).toEqual(fromScratch().segments);
  });

  it('keeps rows, lines and trees that nothing has reached, object for object', async () => {
    const input = siteText('small-campus');
    sketch.openDocument(readDocument('campus', [input]).document);
    await quietDown();
    const before = state.opened.value as Opened;
    const tree = sketch.site.value?.features.find(({ properties }) => properties['kind'] === 'tree');
    const id = String(tree?.properties['id']);
    sketch.edit('measure', setProperties({ kind: 'tree', id }, { dbh_cm: 77 }));
    await turnOver();
    const after = state.opened.value as Opened;
    const kept = <T extends object>(a: readonly T[], b: readonly T[]) =>
      b.filter((row) => a.includes(row)).length;
    expect(kept(before.result.trees, after.result.trees)).toBe(before.result.trees.length - 1);
    const parts = ({ result }: Opened) => result.segments.map(({ trees }) => trees);
    // a row that only moved up or down has another rank and the same parts
    expect(kept(parts(before), parts(after))).toBeGreaterThan(400);
    expect(kept(before.result.lines, after.result.lines)).toBeGreaterThan(40);
    expect(after.site.fittings).toBe(before.site.fittings);
    expect(after.site.obstacles).toBe(before.site.obstacles);
  });

  it('follows what is taken away and brought back', async () => {
    const before = told(shown());
    sketch.edit('delete', remove({ kind: 'tree', id: 'elm' }));
    await quietDown();
    expect(shown().segments).toEqual(fromScratch().segments);
    expect(shown().trees.some(({ id }) => id === 'elm')).toBe(false);
    sketch.undo();
    await quietDown();
    expect(told(shown())).toEqual(before);
  });

  it('follows properties of lines', async () => {
    sketch.edit('seal', setProperties({ kind: 'drain', id: 'tail' }, { joint: 'welded', sealed: true }));
    await quietDown();
    expect(shown().segments).toEqual(fromScratch().segments);
  });

  it('speaks of later years, and of lines dug and cleared now', async () => {
    const now = fromScratch();
    state.yearsAhead.value = 15;
    await quietDown();
    const later = { ...plain(), yearsAhead: 15 };
    expect(shown().asOf).toBe(asOfFor(later));
    expect(shown().segments).toEqual(fromScratch(later).segments);
    expect(shown().totals.expectedEntries).toBeGreaterThan(now.totals.expectedEntries);
    state.yearsAhead.value = 0;
    state.clearedNow.value = true;
    await quietDown();
    expect(shown().segments).toEqual(fromScratch({ ...plain(), clearedNow: true }).segments);
    expect(shown().totals.expectedEntries).toBeLessThan(now.totals.expectedEntries);
  });

  it('keeps what was found wrong in the files until something is edited', async () => {
    const file = {
      code: 'not-json',
      severity: 'error',
      reason: 'cut off',
      place: { file: 'b.geojson', index: null, feature: null, path: '' },
    } as const;
    const open = state.opened.value as Opened;
    state.opened.value = { ...open, issues: [file] };
    state.yearsAhead.value = 5;
    await quietDown();
    expect(state.opened.value?.issues).toEqual([file]);
    sketch.edit('move', moveTree(1));
    await quietDown();
    expect(state.opened.value?.issues).not.toContain(file);
  });

  it('does not show the answer about a site that is no longer open', async () => {
    const before = state.opened.value;
    sketch.edit('move', moveTree(9));
    sketch.openDocument(null);
    await quietDown();
    expect(state.opened.value).toBe(before);
  });
});

describe('the question', () => {
  it('moves the date by whole years, and a leap day to the last of February', () => {
    expect(asOfFor({ today: '2026-11-25', yearsAhead: 25, clearedNow: false })).toBe('2051-11-25');
    expect(asOfFor({ today: '2028-02-29', yearsAhead: 1, clearedNow: false })).toBe('2029-02-28');
    expect(asOfFor({ today: '2028-02-29', yearsAhead: 0, clearedNow: false })).toBe('2028-02-29');
  });

  it('never takes a later digging back', () => {
    const { site } = readSite([siteText('corner-lot')]);
    const dug = { ...site, drains: site.drains.map((drain) => ({ ...drain, dugYear: 2030 })) };
    const asked = supposed(dug, { today: '2026-07-01', yearsAhead: 0, clearedNow: true });
    expect(asked.drains.map(({ dugYear }) => dugYear)).toEqual(dug.drains.map(() => 2030));
  });
});
