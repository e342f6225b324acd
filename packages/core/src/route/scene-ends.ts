import type { Point } from '../geometry/disc-less-strip.js';
import { type Plane, xOf, yOf } from '../geometry/plane.js';
import type { RoutePlace } from '../model/route.js';
import type { LonLat, Site } from '../model/site.js';
import { holds, type Shape } from './shapes.js';

/**
 * Where a place is: a fitting, a level or the last point of a drain by its id, or a position.
 * @throws RangeError where the site has no such feature.
 */
export function positionOf(site: Site, place: RoutePlace): LonLat {
  if ('position' in place) {
    const [lon, lat] = place.position;
    if (!(Math.abs(lon) <= 180 && Math.abs(lat) <= 90))
      throw new RangeError(`no such position: ${lon},${lat}`);
    return place.position;
  }
  const { id } = place;
  const found =
    site.fittings.find((f) => f.id === id)?.position ??
    site.levels.find((l) => l.id === id)?.position ??
    site.drains.find((d) => d.id === id)?.path.at(-1);
  if (found === undefined)
    throw new RangeError(`no fitting, level or drain '${id}' to run a route from or to`);
  return found;
}

/** An end drawn this far inside a building is meant to stand at its wall, metres. */
const INSIDE_M = 0.6;
const OUT_M = 0.01;

/** An end drawn a little inside a building, set outside its wall. */
export function outOfWalls(buildings: readonly Shape[], at: Point): Point {
  for (const shape of buildings) {
    if (!holds(shape, at[0], at[1])) continue;
    let best: { d: number; x: number; y: number } | null = null;
    for (const { x, y } of shape.paths) {
      for (let i = 0; i + 1 < x.length; i++) {
        const [ax, ay] = [x[i] as number, y[i] as number];
        const [dx, dy] = [(x[i + 1] as number) - ax, (y[i + 1] as number) - ay];
        const length2 = dx * dx + dy * dy;
        const t =
          length2 === 0 ? 0 : Math.min(1, Math.max(0, ((at[0] - ax) * dx + (at[1] - ay) * dy) / length2));
        const d = Math.hypot(at[0] - ax - t * dx, at[1] - ay - t * dy);
        if (best === null || d < best.d) best = { d, x: ax + t * dx, y: ay + t * dy };
      }
    }
    if (best === null || best.d > INSIDE_M) continue;
    const scale = best.d > 0 ? (best.d + OUT_M) / best.d : 1;
    return [at[0] + (best.x - at[0]) * scale, at[1] + (best.y - at[1]) * scale];
  }
  return at;
}

export const pointOf = (plane: Plane, [lon, lat]: LonLat): Point => [xOf(plane, lon), yOf(plane, lat)];
