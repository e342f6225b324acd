import {
  type PipeForArea,
  pipesByRain,
  type RoutePlace,
  type RouteRequest,
  type Site,
} from '@rootreach/core';
import type { Args } from './args.js';
import { rainFrom } from './rain-from.js';
import { servedFrom } from './served-from.js';

/** Whether pipe was sized by the rain it has to carry, or why not. */
export type Sizing =
  | {
      readonly kind: 'sized';
      readonly rainMmPerHour: number;
      /** Rain as given with the call, or as the site file says. */
      readonly from: 'given' | 'site';
      /** All sources together. */
      readonly servesM2: number;
    }
  | { readonly kind: 'no-rain' }
  /** Sources whose area nobody gave, by id or by their place in the call. */
  | { readonly kind: 'no-area'; readonly sources: readonly string[] };

/** Areas of the sources, and the pipe for an area where it can be told. */
export interface Sized {
  readonly sizing: Sizing;
  /** 0 where not known. */
  readonly servesM2: readonly number[];
  readonly pipeFor: ((servesM2: number) => PipeForArea) | null;
}

/** Sizes pipe by rain and areas, of the call or of the site; neither is ever made up. */
export function sizedByRain(
  args: Args,
  site: Site,
  sources: readonly RoutePlace[],
  { pipe, limits }: RouteRequest,
): Sized {
  const areas = servedFrom(args, site, sources);
  const servesM2 = areas.map((area) => area ?? 0);
  const given = rainFrom(args);
  const rainMmPerHour = given ?? site.rainMmPerHour;
  const names = sources.map((place, i) => ('id' in place ? place.id : `source ${i + 1}`));
  const unknown = names.filter((_, i) => areas[i] === null);
  const without = (sizing: Sizing): Sized => ({ sizing, servesM2, pipeFor: null });
  if (rainMmPerHour === null) return without({ kind: 'no-rain' });
  if (unknown.length > 0) return without({ kind: 'no-area', sources: unknown });
  const total = servesM2.reduce((sum, area) => sum + area, 0);
  return {
    sizing: {
      kind: 'sized',
      rainMmPerHour,
      from: given === undefined ? 'site' : 'given',
      servesM2: total,
    },
    servesM2,
    pipeFor: pipesByRain({ rainMmPerHour }, pipe, limits),
  };
}
