import type { FallLimit, FallLimits, FallResult, GroundUnknown, LaidPipe, NoFall } from '../model/fall.js';
import type { GroundProfile } from '../model/ground.js';
import { checkLimits, type FallBounds, fallBounds, shortfallOf } from './fall-bounds.js';
import { type Height, heightAt, stationsOf } from './fall-envelope.js';
import { gradeLine } from './fall-grades.js';
import { remediesFor } from './fall-remedies.js';

/** Less than this is rounding, metres. */
const ROUNDING_M = 1e-9;

/** Stretches between known levels in which one is missing; null where none is. */
export function unknownStretches({ stationM, groundM }: GroundProfile): GroundUnknown | null {
  const unknown: [number, number][] = [];
  stationM.forEach((s, i) => {
    if (groundM[i] !== null) return;
    const from = stationM[Math.max(0, i - 1)] as number;
    const to = stationM[Math.min(stationM.length - 1, i + 1)] ?? s;
    const last = unknown[unknown.length - 1];
    if (last && from <= last[1]) last[1] = to;
    else unknown.push([from, to]);
  });
  return unknown.length === 0 ? null : { kind: 'unknown', unknown };
}

/** What holds the highest line down at a station, and where that is. */
function holderOf(bounds: FallBounds, limits: FallLimits, station: number): { by: FallLimit; atM: number } {
  const { over, minFall, maxFall, lengthM } = bounds;
  let least = Number.POSITIVE_INFINITY;
  let found = 0;
  over.forEach(({ s, z }, i) => {
    const held = s <= station ? z - minFall * (station - s) : z + maxFall * (s - station);
    if (held < least - ROUNDING_M) {
      least = held;
      found = i;
    }
  });
  const { s } = over[found] as Height;
  if (found === 0 && limits.source?.mostM !== undefined) return { by: 'source', atM: 0 };
  if (found === over.length - 1 && limits.outlet?.mostM !== undefined) return { by: 'outlet', atM: lengthM };
  return { by: 'cover', atM: s };
}

function impossible(bounds: FallBounds, limits: FallLimits): NoFall {
  const { byM, atM, bound } = shortfallOf(bounds);
  const isSource = bound === 0 && limits.source?.leastM !== undefined;
  const isOutlet = bound === bounds.under.length - 1 && limits.outlet?.leastM !== undefined;
  const holder = holderOf(bounds, limits, atM);
  return {
    kind: 'impossible',
    shortfallM: byM,
    atM,
    below: isSource ? 'source' : isOutlet ? 'outlet' : 'depth',
    heldDownBy: holder.by,
    heldDownAtM: holder.atM,
    remedies: remediesFor(bounds.ground, limits, byM),
  };
}

const rangeOf = (values: readonly number[]): { min: number; max: number } => ({
  min: values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY),
  max: values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY),
});

/** A line of heights as a laid pipe. */
export function laidPipe(ground: readonly Height[], line: readonly Height[], pipeHeightM: number): LaidPipe {
  const stationM = stationsOf(ground, line);
  const groundM = stationM.map((s) => heightAt(ground, s));
  const invertM = stationM.map((s) => heightAt(line, s));
  const depths = stationM.map((_, i) => (groundM[i] as number) - (invertM[i] as number));
  const grades = line.slice(1).map(({ s, z }, i) => {
    const from = line[i] as Height;
    return { fromM: from.s, toM: s, fall: (from.z - z) / (s - from.s) };
  });
  const depthM = rangeOf(depths);
  return {
    kind: 'laid',
    stationM,
    groundM,
    invertM,
    grades,
    depthM,
    coverM: { min: depthM.min - pipeHeightM, max: depthM.max - pipeHeightM },
    fall: rangeOf(grades.map(({ fall }) => fall)),
  };
}

/**
 * The shallowest pipe that falls all the way along a path from its upper end: under its cover, no deeper than
 * allowed, between what it takes from and what it empties into, without a drop. The highest line that falls is
 * found first; where that is too deep or ends too low, every other is too, and the answer says by how much, where,
 * and what would help. Then it is laid in straight grades, at most an inch lower.
 *
 * Stations in metres from the upper end, growing; elevations in metres over any one mark.
 * @throws RangeError where stations do not grow or a limit makes no sense.
 */
export function layInvert(profile: GroundProfile, limits: FallLimits): FallResult {
  const { stationM, groundM } = profile;
  checkLimits(limits);
  const odd = stationM.findIndex((s, i) => i > 0 && !(s > (stationM[i - 1] as number)));
  if (stationM.length < 2 || stationM.length !== groundM.length || stationM[0] !== 0 || odd !== -1) {
    throw new RangeError(
      `stationM must grow from 0 with a ground level each, got ${stationM.length} stations`,
    );
  }
  const unknown = unknownStretches(profile);
  if (unknown) return unknown;
  const ground = stationM.map((s, i) => ({ s, z: groundM[i] as number }));
  const bounds = fallBounds(ground, limits);
  if (shortfallOf(bounds).byM > ROUNDING_M) return impossible(bounds, limits);
  return laidPipe(ground, gradeLine(bounds), limits.pipeHeightM);
}
