import type { Interval } from '../geometry/intervals.js';
import { stretchesInside } from '../geometry/overlap.js';
import type { Polyline } from '../geometry/polyline.js';
import { drainClearance } from '../tables/drain-clearance.js';

/**
 * Stretches of a line, by station, within 50 ft of a stem: there the same guidance that keeps perforated drains away
 * from trees asks for pipe without holes.
 * @param stems in plane metres.
 */
export function solidStretches(
  line: Polyline,
  stems: readonly { readonly x: number; readonly y: number }[],
): Interval[] {
  const radiusM = drainClearance.solidWithinM.value;
  return stretchesInside(
    line,
    stems.map(({ x, y }) => ({ x, y, radiusM })),
  );
}
