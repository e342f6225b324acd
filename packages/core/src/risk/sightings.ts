import type { Interval } from '../geometry/intervals.js';
import type { PlacedFinding } from '../line/find.js';
import type { LineModel } from '../line/line-model.js';

/** A root seen at a point stands for half a stick either side, metres (judgement). */
const POINT_HALF_M = 1.5;

export type Sight = 'clear' | 'roots' | 'crushed';

/** One thing seen on one day over one stretch. */
export interface Seen {
  readonly sight: Sight;
  readonly interval: Interval;
  /** Entries counted, or null for "some". */
  readonly entries: number | null;
  /** Station of a thing seen at a point, null where it was seen over a stretch. */
  readonly atM: number | null;
}

function sightOf(seen: PlacedFinding['finding']['seen']): Sight | null {
  if (seen === 'clear') return 'clear';
  if (seen === 'fine' || seen === 'mass' || seen === 'full') return 'roots';
  return seen === 'crushed' ? 'crushed' : null;
}

/** A finding as a sighting, or null for what says nothing of roots or breaks. */
export function seenOf(line: LineModel, placed: PlacedFinding): Seen | null {
  const { finding, fromM, toM } = placed;
  const sight = sightOf(finding.seen);
  if (sight === null) return null;
  const point = toM - fromM <= 0;
  const counted = finding.entries ?? (point ? 1 : null);
  const interval: Interval = point
    ? [Math.max(0, fromM - POINT_HALF_M), Math.min(line.lengthM, toM + POINT_HALF_M)]
    : [fromM, toM];
  return { sight, interval, entries: sight === 'clear' ? 0 : counted, atM: point ? fromM : null };
}

/** From the outlet up, the longer before the shorter, the counted before the uncounted, the most counted first. */
const inOrder = (a: Seen, b: Seen): number =>
  a.interval[0] - b.interval[0] || b.interval[1] - a.interval[1] || (b.entries ?? -1) - (a.entries ?? -1);

/** Entries of two stretches that meet, `next` not beginning before `last`; `apart`: both stand for themselves. */
function entriesTogether(last: Seen, next: Seen): number | null | 'apart' {
  const touching = next.interval[0] === last.interval[1];
  const same = last.interval[0] === next.interval[0] && last.interval[1] === next.interval[1];
  if (last.entries === null || next.entries === null) {
    if (same) return last.entries ?? next.entries;
    const inside = next.interval[1] <= last.interval[1];
    if (inside) return last.entries;
    return touching && last.entries !== next.entries ? 'apart' : null;
  }
  // one told within another, or told twice, is counted in it
  if (next.interval[1] <= last.interval[1]) return Math.max(last.entries, next.entries);
  return last.entries + next.entries;
}

/** Stretches that meet and were seen on one day are one sighting, however they were written down. */
function mergedStretches(stretches: readonly Seen[]): Seen[] {
  const merged: Seen[] = [];
  for (const next of [...stretches].sort(inOrder)) {
    const last = merged[merged.length - 1];
    const entries = last && next.interval[0] <= last.interval[1] ? entriesTogether(last, next) : 'apart';
    if (!last || entries === 'apart') merged.push(next);
    else {
      const to = Math.max(last.interval[1], next.interval[1]);
      merged[merged.length - 1] = { ...last, interval: [last.interval[0], to], entries };
    }
  }
  return merged;
}

/** Points told twice are one; those that stand for the same short line are taken together. */
function mergedPoints(points: readonly Seen[]): Seen[] {
  const byPlace = new Map<number, Seen>();
  for (const point of [...points].sort(inOrder)) {
    const place = point.atM as number;
    const known = byPlace.get(place);
    if (!known || (known.entries ?? 0) < (point.entries ?? 0)) byPlace.set(place, point);
  }
  const merged: Seen[] = [];
  for (const point of [...byPlace.values()].sort(inOrder)) {
    const last = merged[merged.length - 1];
    const same = last?.interval[0] === point.interval[0] && last.interval[1] === point.interval[1];
    if (last && same)
      merged[merged.length - 1] = { ...last, entries: (last.entries ?? 0) + (point.entries ?? 0) };
    else merged.push(point);
  }
  return merged;
}

const holds = ({ interval }: Seen, { atM }: Seen): boolean =>
  atM !== null && interval[0] <= atM && atM <= interval[1];

/**
 * Roots, or breaks, of one day's run, each thing once: stretches first, then the points that lie in none of them.
 * A stretch holds at least the entries of the points told within it.
 */
export function distinctOf(seen: readonly Seen[], sight: Sight): Seen[] {
  const ofSight = seen.filter((s) => s.sight === sight);
  const stretches = mergedStretches(ofSight.filter((s) => s.atM === null));
  const points = mergedPoints(ofSight.filter((s) => s.atM !== null));
  const counted = stretches.map((stretch) => {
    if (stretch.entries === null) return stretch;
    const within = points.filter((p) => holds(stretch, p)).reduce((sum, p) => sum + (p.entries ?? 0), 0);
    return { ...stretch, entries: Math.max(stretch.entries, within) };
  });
  return [...counted, ...points.filter((p) => !stretches.some((stretch) => holds(stretch, p)))];
}
