import { batch } from '@preact/signals';
import type { LonLat } from '@rootreach/core';
import { add, freeId } from '../sketch/changes.js';
import type { FeatureRef } from '../sketch/document.js';
import * as sketch from '../sketch/sketch.js';
import * as state from '../state.js';
import { words } from '../words/words.js';
import * as drawing from './drawing-state.js';
import { distanceM } from './flat.js';
import { pick } from './pick.js';
import { squareUp } from './square-up.js';
import { type DrawTool, fewest, isDrawTool, madeBy, type Tool, tools } from './tools.js';

/** The step of history that a shape being drawn will be. */
let move: ReturnType<typeof sketch.startMove> | null = null;

const choices = () => ({
  fitting: drawing.fittingType.value,
  elevation: drawing.elevation.value,
  units: state.units.value,
});

const toolWord = (tool: DrawTool): string => words.value.draw.tools[tool];

function show(ref: FeatureRef, places: readonly LonLat[], takenBack: readonly LonLat[]): void {
  const tool = drawing.tool.value as DrawTool;
  const enough = places.length >= fewest[tools[tool].shape];
  batch(() => {
    drawing.draft.value = { ref, places, takenBack };
    move?.move(enough ? add(madeBy(tool, ref.id, places, choices())) : (site) => site);
  });
}

/** Lets go of the shape that is being drawn: it is done, or the site it was drawn on is gone. */
export function forgetDraft(): void {
  move = null;
  drawing.draft.value = null;
  sketch.underWay.value = null;
}

/** Takes the last place back; the next undo after the first place leaves the shape altogether. */
export function takeBack(): void {
  const under = drawing.draft.value;
  const last = under?.places.at(-1);
  if (!under || !last) return;
  if (under.places.length === 1) cancelDraft();
  else show(under.ref, under.places.slice(0, -1), [last, ...under.takenBack]);
}

function putAgain(): void {
  const under = drawing.draft.value;
  const [next, ...rest] = under?.takenBack ?? [];
  if (under && next) show(under.ref, [...under.places, next], rest);
}

/** Leaves the shape that is being drawn; nothing of it stays. */
export function cancelDraft(): void {
  if (!drawing.draft.value) return;
  batch(() => {
    move?.cancel();
    forgetDraft();
  });
}

function startDraft(tool: DrawTool, at: LonLat): void {
  const site = sketch.site.value;
  if (!site) return;
  const ref = { kind: tools[tool].kind, id: freeId(site, tools[tool].kind) };
  move = sketch.startMove(words.value.draw.drew(toolWord(tool)));
  sketch.underWay.value = {
    undo: takeBack,
    redo: putAgain,
    canRedo: () => (drawing.draft.value?.takenBack.length ?? 0) > 0,
  };
  sketch.chosen.value = null;
  show(ref, [at], []);
}

/** Ends the shape that is being drawn and takes it up; one with too few places is left. */
export function finishDraft(): void {
  const under = drawing.draft.value;
  const tool = drawing.tool.value;
  if (!under || !isDrawTool(tool)) return;
  const { shape } = tools[tool];
  if (under.places.length < fewest[shape]) {
    cancelDraft();
    return;
  }
  const squared = shape === 'area' && drawing.squared.value ? squareUp(under.places) : null;
  batch(() => {
    if (squared) show(under.ref, squared, []);
    move?.done();
    forgetDraft();
    sketch.chosen.value = under.ref;
    drawing.tool.value = 'pick';
    drawing.note.value = words.value.draw.drew(toolWord(tool));
    if (state.sheetHeight.value === 'low') state.sheetHeight.value = 'half';
  });
}

function putPoint(tool: DrawTool, at: LonLat): void {
  const site = sketch.site.value;
  if (!site) return;
  const ref = { kind: tools[tool].kind, id: freeId(site, tools[tool].kind) };
  batch(() => {
    sketch.edit(words.value.draw.drew(toolWord(tool)), add(madeBy(tool, ref.id, [at], choices())));
    sketch.chosen.value = ref;
    drawing.note.value = words.value.draw.drew(toolWord(tool));
  });
}

/** A place for a line or an area. The last place again ends it, and so does the first place of an area. */
function putPlace(tool: DrawTool, at: LonLat): void {
  const under = drawing.draft.value;
  if (!under) {
    startDraft(tool, at);
    return;
  }
  const near = drawing.reachM() / 2;
  const [first, last] = [under.places[0] as LonLat, under.places.at(-1) as LonLat];
  const closes = under.places.length > 2 && distanceM(first, at) <= near;
  if (distanceM(last, at) <= near || (closes && tools[tool].shape === 'area')) {
    if (under.places.length >= fewest[tools[tool].shape]) finishDraft();
    return;
  }
  show(under.ref, [...under.places, at], []);
  if (closes) finishDraft();
}

/** What a tap at a place does with the tool that is on. */
export function pointAt(at: LonLat): void {
  const tool = drawing.tool.value;
  const site = sketch.site.value;
  if (!site) return;
  drawing.note.value = null;
  if (tool === 'pick') choose(pick(site, at, drawing.reachM()));
  else if (tool === 'scale') {
    const before = drawing.scalePlaces.value;
    drawing.scalePlaces.value = before.length < 2 ? [...before, at] : [at];
    const given = drawing.scalePlaces.value.length === 2;
    if (given && state.sheetHeight.value === 'low') state.sheetHeight.value = 'half';
  } else {
    const place = drawing.snapAt(at)?.at ?? at;
    if (tools[tool].shape === 'point') putPoint(tool, place);
    else putPlace(tool, place);
  }
}

/** Takes up a thing to edit, or puts down what was taken up. */
export function choose(ref: FeatureRef | null): void {
  batch(() => {
    sketch.chosen.value = ref;
    if (ref && state.sheetHeight.value === 'low') state.sheetHeight.value = 'half';
  });
}

/** Takes a tool in hand. What was being drawn with another is ended first. */
export function takeTool(tool: Tool): void {
  finishDraft();
  batch(() => {
    drawing.tool.value = tool;
    drawing.note.value = null;
    drawing.scalePlaces.value = [];
    if (tool === 'pick') {
      drawing.aiming.value = false;
      return;
    }
    sketch.chosen.value = null;
    if (!state.wide.value) state.sheetHeight.value = 'low';
  });
}

/** Lays the tool down. */
export function layDown(): void {
  const { chosen } = sketch;
  takeTool('pick');
  if (chosen.value && state.sheetHeight.value === 'low') state.sheetHeight.value = 'half';
}
