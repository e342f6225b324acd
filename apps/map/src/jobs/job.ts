import {
  type AdoptedFeature,
  adoptRoute,
  adoptShared,
  type DecideOptions,
  type DecideResult,
  decide,
  evaluateRoute,
  type LonLat,
  type ProtectionSheet,
  pipesByRain,
  planRoute,
  planSharedRoute,
  type RouteAlternative,
  type RouteRequest,
  type RouteResult,
  readSite,
  type SeasonOptions,
  type SeasonResult,
  type SharedRouteRequest,
  type SharedRouteResult,
  type SharedWay,
  type Site,
  seasonOf,
  sharedProtectionSheet,
  workStretch,
} from '@rootreach/core';

import type { HandOut } from './hand-out.js';

/** Work that is asked for now and then, done apart from the ranking so that neither waits for the other. */
export type Job =
  | { readonly do: 'plan-route'; readonly site: string; readonly request: RouteRequest }
  | {
      readonly do: 'evaluate-route';
      readonly site: string;
      readonly request: RouteRequest;
      readonly path: readonly LonLat[];
    }
  | {
      readonly do: 'adopt-route';
      readonly site: string;
      readonly request: RouteRequest;
      readonly geometry: RouteAlternative['geometry'];
      readonly id: string;
      readonly name: string;
    }
  | {
      readonly do: 'plan-shared';
      readonly site: string;
      readonly request: SharedRouteRequest;
      /** Rain to size the pipes by; null leaves them as asked. */
      readonly rainMmPerHour: number | null;
    }
  | {
      readonly do: 'adopt-shared';
      readonly site: string;
      readonly request: SharedRouteRequest;
      readonly way: SharedWay;
      readonly id: string;
      readonly name: string;
    }
  | {
      readonly do: 'decide';
      readonly site: string;
      readonly segmentId: string;
      readonly options: DecideOptions;
    }
  | { readonly do: 'hand-out'; readonly site: string; readonly ask: HandOut }
  | {
      readonly do: 'season';
      readonly sites: readonly { readonly name: string; readonly text: string }[];
      readonly options: SeasonOptions;
    };

/** Lines from several starts, with what a crew minds of trees along each way. */
export interface SharedPlan {
  readonly result: SharedRouteResult;
  readonly sheets: Readonly<Partial<Record<SharedWay['shape'], ProtectionSheet>>>;
}

/** What each job comes to. */
export interface JobResults {
  readonly 'plan-route': RouteResult;
  readonly 'evaluate-route': RouteAlternative;
  readonly 'adopt-route': readonly AdoptedFeature[];
  readonly 'plan-shared': SharedPlan;
  readonly 'adopt-shared': readonly AdoptedFeature[];
  readonly decide: DecideResult;
  /** A page of HTML. */
  readonly 'hand-out': string;
  readonly season: SeasonResult;
}

const siteOf = (text: string): Site => readSite([{ name: 'sketch', text }]).site;

function planShared(
  site: Site,
  { request, rainMmPerHour }: Extract<Job, { readonly do: 'plan-shared' }>,
  onProgress: (share: number) => void,
): SharedPlan {
  const pipeFor = pipesByRain({ rainMmPerHour }, request.pipe, request.limits);
  const result = planSharedRoute(site, request, { onProgress, ...(pipeFor === null ? {} : { pipeFor }) });
  const { route } = result;
  const sheetOf = (way: SharedWay) => ({ [way.shape]: sharedProtectionSheet(site, request, way) });
  return { result, sheets: route === null ? {} : { ...sheetOf(route.separate), ...sheetOf(route) } };
}

/** Does one job. @param tell how much is done, 0 to 1. */
export async function doJob(job: Job, tell: (share: number) => void): Promise<JobResults[Job['do']]> {
  if (job.do === 'season') {
    const sites = job.sites.map(({ name, text }) => ({ name, site: siteOf(text) }));
    return seasonOf(sites, job.options);
  }
  const site = siteOf(job.site);
  switch (job.do) {
    case 'plan-route':
      return planRoute(site, job.request, { onProgress: tell });
    case 'evaluate-route':
      return evaluateRoute(site, job.request, job.path);
    case 'adopt-route': {
      const { request, geometry, id, name } = job;
      return adoptRoute(site, request, { geometry }, { id, name });
    }
    case 'plan-shared':
      return planShared(site, job, tell);
    case 'adopt-shared':
      return adoptShared(site, job.request, job.way, job);
    case 'decide':
      return decide(site, workStretch(site, job.segmentId, job.options), job.options);
    case 'hand-out':
      return (await import('./hand-out.js')).handOut(site, job.ask);
  }
}
