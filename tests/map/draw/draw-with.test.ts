import { readSite } from '@rootreach/core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import {
  cancelDraft,
  finishDraft,
  layDown,
  pointAt,
  takeBack,
  takeTool,
} from '../../../apps/map/src/draw/draw-with.js';
import * as drawing from '../../../apps/map/src/draw/drawing-state.js';
import { deleteThing, moveThing, stepOf } from '../../../apps/map/src/draw/edit-chosen.js';
import { distanceM, shifted } from '../../../apps/map/src/draw/flat.js';
import { drawTools, fewest, tools } from '../../../apps/map/src/draw/tools.js';
import { refOf, toGeoJson } from '../../../apps/map/src/sketch/document.js';
import * as sketch from '../../../apps/map/src/sketch/sketch.js';
import * as state from '../../../apps/map/src/state.js';
import { wholeEnglish } from '../../../apps/map/src/words/words.js';
import { CORNER, documentOf } from './lot.js';

beforeAll(wholeEnglish);

const m = (x: number, y: number) => shifted(CORNER, x, y);
const ids = () => sketch.site.value?.features.map((one) => refOf(one).id) ?? [];
const placesOf = (index: number) => {
  const geometry = sketch.site.value?.features[index]?.geometry;
  return geometry?.type === 'LineString' ? geometry.coordinates.length : 0;
};

beforeEach(() => {
  drawing.draft.value = null;
  drawing.tool.value = 'pick';
  drawing.aiming.value = false;
  drawing.squared.value = true;
  state.metresPerPixel.value = 0.02;
  state.switchedUnits.value = 'metric';
  sketch.openDocument(documentOf());
});

afterAll(() => {
  sketch.openDocument(null);
  state.switchedUnits.value = null;
  state.metresPerPixel.value = 0;
});

describe('every tool', () => {
  it.each(drawTools)('makes a %s that the model reads without an issue', (tool) => {
    takeTool(tool);
    const { shape } = tools[tool];
    for (let i = 0; i < fewest[shape] + 1; i++) pointAt(m(i * 6, i % 2 === 0 ? 0 : 5));
    if (shape !== 'point') finishDraft();
    const { site, issues } = readSite([
      { name: 'sketch', text: toGeoJson(sketch.site.value ?? documentOf()) },
    ]);
    expect(issues.filter((issue) => issue.severity === 'error')).toEqual([]);
    const read = [site.trees, site.drains, site.fittings, site.obstacles, site.barriers, site.levels];
    expect(read.flat()).toHaveLength(shape === 'point' ? 2 : 1);
  });

  it.each(drawTools)('can be undone and done again: %s', (tool) => {
    takeTool(tool);
    const { shape } = tools[tool];
    const before = sketch.site.value;
    for (let i = 0; i < fewest[shape]; i++) pointAt(m(i * 6, i % 2 === 0 ? 0 : 5));
    finishDraft();
    const after = sketch.site.value;
    expect(after?.features).toHaveLength(1);
    sketch.undo();
    expect(sketch.site.value).toBe(before);
    expect(sketch.canUndo.value).toBe(false);
    sketch.redo();
    expect(sketch.site.value).toBe(after);
  });
});

describe('drawing a line', () => {
  it('is scored while it is drawn, from the second place on', () => {
    takeTool('drain');
    pointAt(m(0, 0));
    expect(ids()).toEqual([]);
    pointAt(m(8, 0));
    expect(ids()).toEqual(['line1']);
    pointAt(m(8, 8));
    expect(placesOf(0)).toBe(3);
  });

  it('ends where the last place is given again, as a double tap does', () => {
    takeTool('drain');
    for (const [x, y] of [
      [0, 0],
      [8, 0],
      [8, 0.05],
    ] as const)
      pointAt(m(x, y));
    expect(drawing.draft.value).toBeNull();
    expect(placesOf(0)).toBe(2);
    expect(sketch.chosen.value).toEqual({ kind: 'drain', id: 'line1' });
    expect(drawing.tool.value).toBe('pick');
  });

  it('takes places back and puts them again by the same undo and redo', () => {
    takeTool('drain');
    for (const x of [0, 5, 10]) pointAt(m(x, 0));
    sketch.undo();
    expect(placesOf(0)).toBe(2);
    expect(sketch.canRedo.value).toBe(true);
    sketch.redo();
    expect(placesOf(0)).toBe(3);
    takeBack();
    takeBack();
    expect(ids()).toEqual([]);
    sketch.undo();
    expect(drawing.draft.value).toBeNull();
    expect(sketch.canUndo.value).toBe(false);
  });

  it('leaves nothing behind when it is left off', () => {
    takeTool('wall');
    pointAt(m(0, 0));
    pointAt(m(4, 0));
    cancelDraft();
    expect(ids()).toEqual([]);
    expect(sketch.canUndo.value).toBe(false);
  });

  it('starts on the end of another line that is near', () => {
    takeTool('drain');
    pointAt(m(0, 0));
    pointAt(m(8, 0));
    finishDraft();
    takeTool('drain');
    pointAt(m(8.2, 0.2));
    pointAt(m(8, 9));
    finishDraft();
    const second = sketch.site.value?.features[1]?.geometry;
    const first = second?.type === 'LineString' ? second.coordinates[0] : undefined;
    expect(distanceM([first?.[0] ?? 0, first?.[1] ?? 0], m(8, 0))).toBeLessThan(1e-6);
  });

  it('is finished, not lost, when another tool is taken', () => {
    takeTool('utility');
    pointAt(m(0, 0));
    pointAt(m(8, 0));
    takeTool('tree');
    expect(ids()).toEqual(['o1']);
    expect(sketch.canUndo.value).toBe(true);
  });

  it('closes a lot line on its first place', () => {
    takeTool('boundary');
    for (const [x, y] of [
      [0, 0],
      [20, 0],
      [20, 15],
      [0, 15],
      [0.1, 0.1],
    ] as const)
      pointAt(m(x, y));
    expect(drawing.draft.value).toBeNull();
    const geometry = sketch.site.value?.features[0]?.geometry;
    expect(geometry?.type === 'LineString' && geometry.coordinates[0]).toEqual(
      geometry?.type === 'LineString' && geometry.coordinates.at(-1),
    );
  });
});

describe('a thing taken up', () => {
  it('is moved by arrow keys: a tenth of a metre, a foot, ten of them with Shift', () => {
    takeTool('tree');
    pointAt(m(0, 0));
    layDown();
    expect(sketch.chosen.value).toEqual({ kind: 'tree', id: 't1' });
    const step = stepOf({ key: 'ArrowRight', shiftKey: false });
    expect(step).toEqual([0.1, 0]);
    moveThing({ kind: 'tree', id: 't1' }, step ?? [0, 0]);
    const geometry = sketch.site.value?.features[0]?.geometry;
    const [lon = 0, lat = 0] = geometry?.type === 'Point' ? geometry.coordinates : [];
    expect(distanceM([lon, lat], m(0, 0))).toBeCloseTo(0.1, 4);
    state.switchedUnits.value = 'us';
    expect(stepOf({ key: 'ArrowUp', shiftKey: true })?.[1]).toBeCloseTo(3.048, 9);
    expect(stepOf({ key: 'a', shiftKey: false })).toBeNull();
  });

  it('is deleted with a word on it, and comes back by undo', () => {
    takeTool('tree');
    pointAt(m(0, 0));
    const before = sketch.site.value;
    deleteThing({ kind: 'tree', id: 't1' });
    expect(ids()).toEqual([]);
    expect(drawing.note.value).toMatch(/Deleted tree t1/);
    sketch.undo();
    expect(sketch.site.value).toBe(before);
  });
});
