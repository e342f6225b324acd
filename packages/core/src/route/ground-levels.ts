import type { Point } from '../geometry/disc-less-strip.js';
import { distanceToPath } from '../geometry/distance-to-path.js';
import { hullOf, isInside } from '../geometry/hull.js';
import { groundLimits } from '../tables/fall-limits.js';
import { type GroundSurface, unknownGround } from './ground-surface.js';

/** A level in plane metres. */
export interface SpotLevel {
  readonly x: number;
  readonly y: number;
  readonly elevationM: number;
}

/** Levels nearer than this are of one place, metres. */
const ONE_PLACE_M = 0.01;

/** Levels of one place joined to their mean. */
function places(levels: readonly SpotLevel[]): SpotLevel[] {
  const groups: SpotLevel[][] = [];
  for (const level of levels) {
    const group = groups.find(([first]) => {
      return first !== undefined && Math.hypot(first.x - level.x, first.y - level.y) < ONE_PLACE_M;
    });
    if (group) group.push(level);
    else groups.push([level]);
  }
  return groups.map((group) => ({
    ...(group[0] as SpotLevel),
    elevationM: group.reduce((sum, { elevationM }) => sum + elevationM, 0) / group.length,
  }));
}

/** Middle of the levels, sums of squares about it, and the direction in which they spread most. */
interface Spread {
  readonly x: number;
  readonly y: number;
  readonly xx: number;
  readonly xy: number;
  readonly yy: number;
  readonly along: Point;
  /** Spread across that direction over the spread along it. */
  readonly acrossShare: number;
}

function spreadOf(levels: readonly SpotLevel[]): Spread {
  const n = levels.length;
  const x = levels.reduce((sum, level) => sum + level.x, 0) / n;
  const y = levels.reduce((sum, level) => sum + level.y, 0) / n;
  let xx = 0;
  let xy = 0;
  let yy = 0;
  for (const level of levels) {
    xx += (level.x - x) ** 2;
    xy += (level.x - x) * (level.y - y);
    yy += (level.y - y) ** 2;
  }
  const angle = 0.5 * Math.atan2(2 * xy, xx - yy);
  const middle = (xx + yy) / 2;
  const swing = Math.hypot((xx - yy) / 2, xy);
  return {
    x,
    y,
    xx,
    xy,
    yy,
    along: [Math.cos(angle), Math.sin(angle)],
    acrossShare: Math.sqrt(Math.max(0, middle - swing) / (middle + swing)),
  };
}

/** Straight from level to level in the direction in which they stand; no fall across. */
function alongLevels(levels: readonly SpotLevel[], { x, y, along }: Spread): GroundSurface {
  const shareAlong = (px: number, py: number): number => (px - x) * along[0] + (py - y) * along[1];
  const row = levels
    .map((level) => ({ t: shareAlong(level.x, level.y), elevationM: level.elevationM }))
    .sort((a, b) => a.t - b.t);
  const first = row[0] as { t: number; elevationM: number };
  const last = row[row.length - 1] as { t: number; elevationM: number };
  const length = last.t - first.t;
  const beyond = Math.max(groundLimits.besideM.value, groundLimits.beyondShare.value * length);
  const aside = Math.max(groundLimits.besideM.value, groundLimits.asideShare.value * length);
  const elevationAt = (px: number, py: number): number | null => {
    const t = shareAlong(px, py);
    const across = Math.abs((py - y) * along[0] - (px - x) * along[1]);
    if (t < first.t - beyond || t > last.t + beyond || across > aside) return null;
    const next = row.findIndex((level, i) => i > 0 && level.t >= t);
    const b = row[next === -1 ? row.length - 1 : next] as typeof first;
    const a = row[(next === -1 ? row.length - 1 : next) - 1] as typeof first;
    return b.t > a.t
      ? a.elevationM + ((t - a.t) / (b.t - a.t)) * (b.elevationM - a.elevationM)
      : a.elevationM;
  };
  return { basis: { kind: 'along-levels', levels: levels.length }, elevationAt };
}

/** Sloping plane by least squares, and what it misses the levels by, spread by inverse squared distance. */
function heightsOf(levels: readonly SpotLevel[]): (x: number, y: number) => number {
  const { x, y, xx, xy, yy } = spreadOf(levels);
  const mean = levels.reduce((sum, { elevationM }) => sum + elevationM, 0) / levels.length;
  let xz = 0;
  let yz = 0;
  for (const level of levels) {
    xz += (level.x - x) * (level.elevationM - mean);
    yz += (level.y - y) * (level.elevationM - mean);
  }
  const det = xx * yy - xy * xy;
  const east = (xz * yy - yz * xy) / det;
  const north = (yz * xx - xz * xy) / det;
  const plane = (px: number, py: number): number => mean + east * (px - x) + north * (py - y);
  const missed = levels.map((level) => ({ ...level, by: level.elevationM - plane(level.x, level.y) }));
  return (px, py) => {
    let weights = 0;
    let sum = 0;
    for (const level of missed) {
      const d2 = (level.x - px) ** 2 + (level.y - py) ** 2;
      if (d2 < ONE_PLACE_M ** 2 / 100) return level.elevationM;
      weights += 1 / d2;
      sum += level.by / d2;
    }
    return plane(px, py) + sum / weights;
  };
}

/** How far each level is missed by the others, root mean square; null where too few are left or they stand in line. */
function missedBy(levels: readonly SpotLevel[]): number | null {
  if (levels.length < 5) return null;
  let sum = 0;
  for (const level of levels) {
    const others = levels.filter((other) => other !== level);
    if (spreadOf(others).acrossShare < groundLimits.inLineShare.value) return null;
    sum += (heightsOf(others)(level.x, level.y) - level.elevationM) ** 2;
  }
  return Math.sqrt(sum / levels.length);
}

/**
 * Ground from spot levels. Two, or more in line: straight from one to the next. Others: the sloping plane that fits
 * them best, and what is left over by inverse distance: it passes through every level, and between them the ground
 * slopes on, where inverse distance alone would make a terrace round each level and so lose fall. Null further out
 * than a quarter of the levels' own spread, and everywhere with fewer than two.
 */
export function groundFromLevels(given: readonly SpotLevel[]): GroundSurface {
  const levels = places(given);
  if (levels.length === 0) return unknownGround;
  if (levels.length === 1) return { basis: { kind: 'one-level' }, elevationAt: () => null };
  const spread = spreadOf(levels);
  if (spread.acrossShare < groundLimits.inLineShare.value) return alongLevels(levels, spread);
  const outline = hullOf(levels.map(({ x, y }) => [x, y] as const));
  const across = Math.max(
    ...outline.map(([ax, ay]) => Math.max(...outline.map(([bx, by]) => Math.hypot(ax - bx, ay - by)))),
  );
  const beyond = Math.max(groundLimits.besideM.value, groundLimits.beyondShare.value * across);
  const ring = [...outline, outline[0] as Point];
  const height = heightsOf(levels);
  return {
    basis: { kind: 'plane-and-levels', levels: levels.length, missedByM: missedBy(levels) },
    elevationAt: (x, y) =>
      isInside(outline, x, y) || distanceToPath(ring, x, y) <= beyond ? height(x, y) : null,
  };
}
