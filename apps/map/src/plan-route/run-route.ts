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
  route.answer.value = null;
  route.drawn.value = null;
  route.chosenId.value = null;
  route.problem.value = null;
}

/** Works the alternatives out; a wish that comes in between ends the one before. */
export async function planNow(): Promise<void> {
  const site = sketch.site.value;
  const request = route.request.value;
  if (!site || !request) return;
  if (route.share.value !== null) stopAll();
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
      route.answer.value = { result, request, site };
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
  stopAll();
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

/** A bend's last place that has not been worked out yet, while an earlier one is. */
let pulled: readonly LonLat[] | null = null;
let isReshaping = false;

/** Works out all figures of the chosen way with one of its bends elsewhere; the last wish wins. */
export async function reshape(path: readonly LonLat[]): Promise<void> {
  pulled = path;
  if (isReshaping) return;
  isReshaping = true;
  while (pulled !== null) {
    const site = sketch.site.value;
    const { request, chosenId } = route;
    const [question, way, wanted] = [request.value, chosenId.value, pulled];
    pulled = null;
    if (!site || !question) break;
    try {
      const job = { do: 'evaluate-route', site: toGeoJson(site), request: question, path: wanted } as const;
      const made = await runJob(job);
      if (way === chosenId.value && question === request.value) route.drawn.value = made;
    } catch (error) {
      route.problem.value = said(error);
    }
  }
  isReshaping = false;
}

/** Ends all that is under way, here and in the worker. */
function stopAll(): void {
  stopJobs();
  pulled = null;
  isReshaping = false;
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
  try {
    const made = await runJob(job);
    sketch.edit(adopted, add(...(made as readonly unknown[] as readonly SketchFeature[])));
    batch(() => {
      forgetRoute();
      state.sheetPlace.value = 'find';
    });
  } catch (error) {
    route.problem.value = said(error);
  }
}
