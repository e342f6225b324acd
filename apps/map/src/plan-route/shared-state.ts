import { computed, signal } from '@preact/signals';
import type { SharedLine, SharedRouteRequest, SharedWay } from '@rootreach/core';
import type { SharedPlan } from '../jobs/job.js';
import * as sketch from '../sketch/sketch.js';
import * as route from './route-state.js';

export type Shape = SharedWay['shape'];

/** What was found for several starts, and the question and sketch that it answers. */
export const answer = signal<{
  readonly plan: SharedPlan;
  readonly request: SharedRouteRequest;
  readonly rainMmPerHour: number | null;
  readonly site: unknown;
} | null>(null);

/** What was found, as long as it answers the question that stands and the sketch as it is. */
export const plan = computed<SharedPlan | null>(() => {
  const found = answer.value;
  const stands =
    found?.request === route.sharedRequest.value &&
    found?.rainMmPerHour === route.sizingRain.value &&
    found?.site === sketch.site.value;
  return stands ? (found?.plan ?? null) : null;
});

/** Which of the two is looked at; what is better where nobody chose. */
export const shape = signal<Shape | null>(null);

/** Ways to choose from: lines that share a main where that is better, and a line for each start. */
export const ways = computed<readonly SharedWay[]>(() => {
  const found = plan.value?.result.route;
  if (!found) return [];
  return found.shape === 'shared' ? [found, found.separate] : [found];
});

export const way = computed<SharedWay | null>(
  () => ways.value.find((one) => one.shape === shape.value) ?? ways.value[0] ?? null,
);

/** True of a line that carries the water of others on. */
export const isMain = ({ from }: SharedLine, { lines }: SharedWay): boolean =>
  lines.some(({ to }) => to === from);
