import type { RouteLimits, RoutePipe } from '../model/route.js';
import type { Site } from '../model/site.js';
import { waterJudgement } from '../tables/judgement.js';
import { sizeForArea } from './size-for-area.js';

/** Roofs: all rain runs off. */
const RUNOFF = 1;

/**
 * Sizes of a shared route's pipes by the rain that the site gives, at the least fall they may be laid with and not below
 * the pipe asked for.
 * @param site its rain counts.
 * @param pipe the one asked for.
 * @param limits the least fall is taken from them.
 * @returns nominal size, metres, by area served, square metres; null where the site says nothing of rain, which is
 * never made up.
 */
export function sizesByRain(
  site: Pick<Site, 'rainMmPerHour'>,
  pipe: RoutePipe,
  limits: RouteLimits = {},
): ((servesM2: number) => number) | null {
  const { rainMmPerHour } = site;
  if (rainMmPerHour === null) return null;
  return (servesM2) =>
    sizeForArea(servesM2, {
      material: pipe.material,
      perforated: pipe.perforated === true,
      leastM: pipe.sizeM,
      rainMmPerHour,
      runoff: RUNOFF,
      fall: limits.minFall ?? waterJudgement.usualSlope.value,
    });
}
