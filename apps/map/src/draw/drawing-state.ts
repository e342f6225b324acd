import { computed, signal } from '@preact/signals';
import type { FittingType, LonLat } from '@rootreach/core';
import type { FeatureRef } from '../sketch/document.js';
import * as sketch from '../sketch/sketch.js';
import * as state from '../state.js';
import { distanceM } from './flat.js';
import { readUnderlay } from './picture.js';
import { type Snap, snapTo } from './snap.js';
import { isDrawTool, type Tool, tools } from './tools.js';

/** A finger hits within this, and new places are drawn to others from as far, pixels. */
export const REACH_PIXELS = 22;

/** Places given so far to a line or an area that is being drawn. */
export interface Draft {
  readonly ref: FeatureRef;
  readonly places: readonly LonLat[];
  /** Places taken back, the last one first to come again. */
  readonly takenBack: readonly LonLat[];
}

export interface View {
  readonly centre: LonLat;
  /** Metres that should be seen across. */
  readonly acrossM: number;
}

export const tool = signal<Tool>('pick');
export const draft = signal<Draft | null>(null);
export const fittingType = signal<FittingType>('basin');
/** Height of the ground that the next spot level gets, in the unit that is on. */
export const elevation = signal(0);
/** Corners of buildings, paving and pools are made right angles. */
export const squared = signal(true);
/** A fixed cross is aimed by moving the plan under it, instead of a tap. */
export const aiming = signal(false);
/** The place under the cross. */
export const aim = signal<LonLat | null>(null);
/** The place under the mouse. */
export const hover = signal<LonLat | null>(null);
/** What was just done, with an undo beside it. */
export const note = signal<string | null>(null);
/** A part of the ground that the plan should turn to. */
export const wantedView = signal<View | null>(null);
/** Two places on the picture whose distance is known. */
export const scalePlaces = signal<readonly LonLat[]>([]);
/** Middle of the plan as it is looked at. */
export const planMiddle = signal<LonLat>([0, 0]);
/** Number of the place of the thing taken up that was tapped last. */
export const heldPlace = signal<number | null>(null);
/** The part of the sheet about the picture is open: then it can be moved. */
export const pictureOpen = signal(false);
/** Where the device says it is. */
export const position = signal<{ readonly at: LonLat; readonly withinM: number } | null>(null);

export const underlay = computed(() => (sketch.site.value ? readUnderlay(sketch.site.value.info) : null));

/** Metres that a finger may be off. */
export const reachM = (): number => REACH_PIXELS * state.metresPerPixel.value;

/** What a place is drawn to with the tool that is on; a line being drawn closes on its own first place. */
export function snapAt(at: LonLat): Snap | null {
  const site = sketch.site.value;
  if (!site || !isDrawTool(tool.value)) return null;
  const under = draft.value;
  const first = under?.places[0];
  if (under && first && under.places.length > 2 && distanceM(first, at) <= reachM()) {
    return { at: first, onto: 'end', ref: under.ref };
  }
  return snapTo(site, at, tools[tool.value].snap, reachM(), under?.ref ?? null);
}

/** Where the next place would go. */
export const pointer = computed<LonLat | null>(() => (aiming.value ? aim.value : hover.value));

export const snapped = computed<Snap | null>(() => (pointer.value ? snapAt(pointer.value) : null));
