import type { Site } from '../model/site.js';
import { knownIn } from '../risk/known.js';
import { seenContextOf } from '../risk/seen-context.js';
import { fromFeet } from '../units/length.js';
import type { DecideOptions } from './options.js';
import { stretchOf, type WorkRequest } from './stretch.js';

/** What only digging mends is dug as far as it goes. */
const DUG_WHOLE = ['full', 'crushed', 'mass'];
/** A rest of old line no longer than a stick goes with it: nobody couples back to it (judgement). */
const LONGEST_REST_M = fromFeet(20);

/**
 * The stretch to decide on where one segment stands out: the segment, or, where it is full, crushed or holds a mass,
 * as far along its line as that goes, with a rest of old line no longer than a stick.
 * @param site as read.
 * @param segmentId `main/4`, as in a result.
 * @param options date and longest segment, as the ranking had them.
 * @throws RangeError where there is no such segment.
 */
export function workStretch(
  site: Site,
  segmentId: string,
  options: Pick<DecideOptions, 'asOf' | 'segmentM'>,
): WorkRequest {
  const seen = seenContextOf(site, options);
  const { line, number, fromM, toM } = stretchOf(seen.context.site, seen, { segment: segmentId });
  const bad = line.segments.map((segment) => {
    const trouble = knownIn(line, seen.known.get(number) ?? [], segment.fromM, segment.toM);
    return trouble !== null && DUG_WHOLE.includes(trouble.seen);
  });
  const at = line.segments.findIndex((segment) => segment.fromM === fromM);
  if (!bad[at]) return { drain: line.drain.id, fromM, toM };
  let [first, last] = [at, at];
  while (bad[first - 1]) first--;
  while (bad[last + 1]) last++;
  const low = line.segments[first]?.fromM ?? fromM;
  const high = line.segments[last]?.toM ?? toM;
  return {
    drain: line.drain.id,
    fromM: low <= LONGEST_REST_M ? 0 : low,
    toM: line.lengthM - high <= LONGEST_REST_M ? line.lengthM : high,
  };
}
