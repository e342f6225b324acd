import { type Plane, xOf, yOf } from '../geometry/plane.js';
import type { ElevationGrid } from '../model/ground.js';
import type { Level } from '../model/site.js';
import { groundFromGrid } from './ground-grid.js';
import { groundFromLevels } from './ground-levels.js';
import type { GroundSurface } from './ground-surface.js';

/**
 * Ground of a site in the plane of a route. A grid speaks alone where there is one: its heights and those of spot
 * levels are seldom counted from the same mark.
 */
export function groundOf(levels: readonly Level[], grid: ElevationGrid | null, plane: Plane): GroundSurface {
  if (grid !== null) return groundFromGrid(grid, plane);
  return groundFromLevels(
    levels.map(({ position, elevationM }) => ({
      x: xOf(plane, position[0]),
      y: yOf(plane, position[1]),
      elevationM,
    })),
  );
}
