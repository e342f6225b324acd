import { type Plane, planeFor, xOf, yOf } from '../geometry/plane.js';
import type { Drain, Level, LonLat, Site } from '../model/site.js';

/** Ground levels count for a line end within this distance, metres (judgement). */
const LEVEL_NEAR_M = 3;

/** A spot level beside a place. */
interface LevelBeside {
  readonly level: Level;
  readonly distanceM: number;
}

function levelBeside(levels: readonly Level[], plane: Plane, [lon, lat]: LonLat): LevelBeside | null {
  let best: LevelBeside | null = null;
  for (const level of levels) {
    const dx = xOf(plane, level.position[0]) - xOf(plane, lon);
    const dy = yOf(plane, level.position[1]) - yOf(plane, lat);
    const distanceM = Math.hypot(dx, dy);
    if (distanceM <= (best?.distanceM ?? LEVEL_NEAR_M)) best = { level, distanceM };
  }
  return best;
}

/** Height of the top of a pipe above datum, and the spot level it was taken from. */
export interface PipeTop extends LevelBeside {
  readonly topM: number;
}

/** Top of the pipe at an end of a line as drawn, where depth and a ground level near it are known. */
export function pipeTopAt(site: Site, drain: Drain, end: 'start' | 'end'): PipeTop | null {
  const depthM = end === 'start' ? drain.depthStartM : drain.depthEndM;
  if (depthM === null || site.levels.length === 0) return null;
  const at = drain.path[end === 'start' ? 0 : drain.path.length - 1] as LonLat;
  const beside = levelBeside(site.levels, planeFor(drain.path), at);
  return beside === null ? null : { ...beside, topM: beside.level.elevationM - depthM };
}
