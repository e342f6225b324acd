import { batch } from '@preact/signals';
import type { LonLat, RouteRequest, SharedRouteRequest } from '@rootreach/core';
import type { Job } from '../jobs/job.js';
import { runJob, stopJobs } from '../jobs/jobs.js';
import { add, freeId } from '../sketch/changes.js';
import { type SiteDocument, type SketchFeature, toGeoJson } from '../sketch/document.js';
import * as sketch from '../sketch/sketch.js';
import * as state from '../state.js';
import { words } from '../words/words.js';
import * as route from './route-state.js';
import * as shared from './shared-state.js';

type Tell = (share: number) => void;

const said = (error: unknown): string => (error instanceof Error ? error.message : String(error));

function clearResult(): void {
  route.answer.value = null;
  shared.answer.value = null;
  shared.shape.value = null;
  route.drawn.value = null;
  route.chosenId.value = null;
  route.problem.value = null;
}

/** Finds ways for one start. */
async function planOne(site: SiteDocument, request: RouteRequest, tell: Tell): Promise<void> {
  const result = await runJob({ do: 'plan-route', site: toGeoJson(site), request }, tell);
  batch(() => {
    route.answer.value = { result, request, site };
    route.chosenId.value = result.alternatives[0]?.id ?? null;
  });
}

/** Finds lines for several starts. */
async function planSeveral(site: SiteDocument, request: SharedRouteRequest, tell: Tell): Promise<void> {
  const rainMmPerHour = route.sizingRain.value;
  const job = { do: 'plan-shared', site: toGeoJson(site), request, rainMmPerHour } as const;
  const plan = await runJob(job, tell);
  shared.answer.value = { plan, request, rainMmPerHour, site };
}

/** Works the answer out; a wish that comes in between ends the one before. */
export async function planNow(): Promise<void> {
  const site = sketch.site.value;
  const [one, several] = [route.request.value, route.sharedRequest.value];
  if (!site || !(one || several)) return;
  if (route.share.value !== null) stopAll();
  batch(() => {
    clearResult();
    route.picking.value = null;
    route.share.value = 0;
  });
  const tell: Tell = (share) => {
    route.share.value = share;
  };
  try {
    if (several) await planSeveral(site, several, tell);
    else if (one) await planOne(site, one, tell);
  } catch (error) {
    route.problem.value = said(error);
  }
  route.share.value = null;
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
    route.forgetPlaces();
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

type Adopting = Extract<Job, { readonly do: 'adopt-route' | 'adopt-shared' }>;

/** The job that makes features of what is chosen; null where nothing is. */
function adopting(site: SiteDocument): Adopting | null {
  const common = { site: toGeoJson(site), id: freeId(site, 'drain'), name: words.value.routes.newLine };
  const { request, chosen, sharedRequest } = route;
  const way = shared.way.value;
  if (sharedRequest.value && way) return { do: 'adopt-shared', ...common, request: sharedRequest.value, way };
  if (!request.value || !chosen.value) return null;
  return { do: 'adopt-route', ...common, request: request.value, geometry: chosen.value.geometry };
}

/** Puts what is chosen on the sketch, lines with their fittings; one step that can be undone. */
export async function adopt(): Promise<void> {
  const site = sketch.site.value;
  const job = site && adopting(site);
  if (!job) return;
  try {
    const made = await runJob<Adopting['do']>(job);
    sketch.edit(words.value.routes.adopted, add(...(made as readonly unknown[] as readonly SketchFeature[])));
    batch(() => {
      forgetRoute();
      state.sheetPlace.value = 'find';
    });
  } catch (error) {
    route.problem.value = said(error);
  }
}
