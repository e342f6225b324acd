import type { PipeForArea } from '../model/pipe-for-area.js';
import type { RouteLimits, RoutePipe } from '../model/route.js';
import type { Site } from '../model/site.js';
import { waterJudgement } from '../tables/judgement.js';
import { pipeForArea } from './pipe-for-area.js';

/** Roofs: all rain runs off. */
const RUNOFF = 1;

/**
 * Pipes of a route by the rain that the site gives, at the least fall they may be laid with and not below the pipe
 * asked for.
 * @param site its rain counts.
 * @param pipe the one asked for.
 * @param limits the least fall is taken from them.
 * @returns pipe by area served, square metres; null where the site says nothing of rain, which is never made up.
 */
export function pipesByRain(
  site: Pick<Site, 'rainMmPerHour'>,
  pipe: RoutePipe,
  limits: RouteLimits = {},
): ((servesM2: number) => PipeForArea) | null {
  const { rainMmPerHour } = site;
  if (rainMmPerHour === null) return null;
  return (servesM2) =>
    pipeForArea(servesM2, {
      material: pipe.material,
      perforated: pipe.perforated === true,
      leastM: pipe.sizeM,
      rainMmPerHour,
      runoff: RUNOFF,
      fall: limits.minFall ?? waterJudgement.usualSlope.value,
    });
}
