import type { LonLat } from '../model/site.js';
import { AT_END_M, geometryOf, type LineNet, type Near, nearOf } from './snap.js';

const ENDS = ['start', 'end'] as const;

/** Places where an end of one line lies on the other: where that is on the first, and on the second. */
export function touchesOf(net: LineNet, first: number, second: number): [Near, Near][] {
  const found: [Near, Near][] = [];
  for (const [own, other] of [
    [first, second],
    [second, first],
  ] as const) {
    const geometry = geometryOf(net, other);
    const path = net.drains[own]?.path as readonly LonLat[];
    for (const end of ENDS) {
      const near = nearOf(geometry, other, path[end === 'start' ? 0 : path.length - 1] as LonLat);
      if (near.distanceM > AT_END_M) continue;
      const here: Near = { line: own, stationM: 0, distanceM: 0, atEnd: end };
      found.push(own === first ? [here, near] : [near, here]);
    }
  }
  return found;
}
