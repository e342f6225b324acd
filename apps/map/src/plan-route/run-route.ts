import { batch } from '@preact/signals';
import type { LonLat } from '@rootreach/core';
import { runJob, stopJobs } from '../jobs/jobs.js';
import { add, freeId } from '../sketch/changes.js';
import { type SketchFeature, toGeoJson } from '../sketch/document.js';
import * as sketch from '../sketch/sketch.js';
import * as state from '../state.js';
import { words } from '../words/words.js';
import * as route from './route-state.js';

const said = (error: unknown): string => (error instanceof Error ? error.message : String(error));

function clearResult(): void {
  route.result.value = null;
  route.drawn.value = null;
  route.chosenId.value = null;
  route.problem.value = null;
}

/** Works the alternatives out; a wish that comes in between ends the one before. */
export async function planNow(): Promise<void> {
  const site = sketch.site.value;
  const request = route.request.value;
  if (!site || !request) return;
  if (route.share.value !== null) stopJobs();
  batch(() => {
    clearResult();
    route.picking.value = null;
    route.share.value = 0;
  });
  try {
    const result = await runJob({ do: 'plan-route', site: toGeoJson(site), request }, (share) => {
      route.share.value = share;
    });
    batch(() => {
      route.result.value = result;
      route.chosenId.value = result.alternatives[0]?.id ?? null;
      route.share.value = null;
    });
  } catch (error) {
    batch(() => {
      route.problem.value = said(error);
      route.share.value = null;
    });
  }
}

/** Gives up what is being worked out. */
export function cancelPlan(): void {
  stopJobs();
  route.share.value = null;
}

/** Starts over: nothing chosen, nothing drawn. */
export function forgetRoute(): void {
  batch(() => {
    clearResult();
    route.from.value = null;
    route.to.value = null;
    route.via.value = null;
    route.picking.value = null;
  });
}

let turn = 0;

/** Works out all figures of the chosen way with one of its bends elsewhere. */
export async function reshape(path: readonly LonLat[]): Promise<void> {
  const site = sketch.site.value;
  const request = route.request.value;
  if (!site || !request) return;
  turn += 1;
  const mine = turn;
  try {
    const made = await runJob({ do: 'evaluate-route', site: toGeoJson(site), request, path });
    if (mine === turn) route.drawn.value = made;
  } catch (error) {
    if (mine === turn) route.problem.value = said(error);
  }
}

/** Puts the chosen way on the sketch as a line with its bends; one step that can be undone. */
export async function adopt(): Promise<void> {
  const site = sketch.site.value;
  const request = route.request.value;
  const chosen = route.chosen.value;
  if (!site || !request || !chosen) return;
  const id = freeId(site, 'drain');
  const { newLine, adopted } = words.value.routes;
  const job = {
    do: 'adopt-route',
    site: toGeoJson(site),
    request,
    geometry: chosen.geometry,
    id,
    name: newLine,
  } as const;
  const made = await runJob(job);
  sketch.edit(adopted, add(...(made as readonly unknown[] as readonly SketchFeature[])));
  batch(() => {
    forgetRoute();
    state.sheetPlace.value = 'find';
  });
}
