import { fallLimits } from '../tables/fall-limits.js';
import type { FallBounds } from './fall-bounds.js';
import { type Height, heightAt, highestLine, lowestLine, stationsOf } from './fall-envelope.js';

/** Heights between which a line may pass a station. */
interface Room {
  readonly s: number;
  readonly low: number;
  readonly high: number;
}

/** The straight grade from a place that passes the most stations, as flat as it may be. */
function longestGrade(
  room: readonly Room[],
  at: number,
  from: Height,
  steepest: number,
  flattest: number,
): { readonly slope: number; readonly reached: number } {
  let least = steepest;
  let slope = flattest;
  let reached = at;
  for (let next = at + 1; next < room.length; next++) {
    const { s, low, high } = room[next] as Room;
    const lowest = Math.max(least, (low - from.z) / (s - from.s));
    const highest = Math.min(slope, (high - from.z) / (s - from.s));
    // the next station can always be reached: a grade that seems not to is off by rounding
    if (lowest > highest && reached > at) break;
    least = lowest;
    slope = highest;
    reached = next;
  }
  return { slope, reached };
}

/**
 * A line in straight grades that runs as near under the highest one as a crew can trim a trench: each grade goes on
 * as long as it stays between the highest line and one a little lower, and so keeps to every bound.
 */
export function gradeLine(bounds: FallBounds): Height[] {
  const { minFall, maxFall } = bounds;
  const top = highestLine(bounds.over, minFall, maxFall);
  const floor = lowestLine(bounds.under, minFall, maxFall);
  const stations = stationsOf(top, floor);
  const room = stations.map((s) => {
    const high = heightAt(top, s);
    const low = Math.max(heightAt(floor, s), high - fallLimits.gradeSlackM.value);
    return { s, high, low };
  });
  const line: Height[] = [{ s: 0, z: heightAt(top, 0) }];
  let at = 0;
  while (at < room.length - 1) {
    const from = line[line.length - 1] as Height;
    const { slope, reached } = longestGrade(room, at, from, -maxFall, -minFall);
    const { s } = room[reached] as Room;
    line.push({ s, z: from.z + slope * (s - from.s) });
    at = reached;
  }
  return line;
}
