import type { Point } from './disc-less-strip.js';

/** Distance from (x, y) to the nearest point of a path; infinite where the path has no point. Plane metres. */
export function distanceToPath(path: readonly Point[], x: number, y: number): number {
  let best2 = Number.POSITIVE_INFINITY;
  path.forEach(([x0, y0], i) => {
    const [x1, y1] = path[i + 1] ?? [x0, y0];
    const dx = x1 - x0;
    const dy = y1 - y0;
    const length2 = dx * dx + dy * dy;
    const t = length2 === 0 ? 0 : Math.min(1, Math.max(0, ((x - x0) * dx + (y - y0) * dy) / length2));
    best2 = Math.min(best2, (x - x0 - t * dx) ** 2 + (y - y0 - t * dy) ** 2);
  });
  return Math.sqrt(best2);
}
