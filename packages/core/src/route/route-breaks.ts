import type { Point } from '../geometry/disc-less-strip.js';
import type { FallResult } from '../model/fall.js';
import type { RouteBreak } from '../model/route.js';
import { roomLacking } from './bends.js';
import { enters, entersDisc } from './cost-field.js';
import { noDigDiscs } from './field-of-scene.js';
import type { RouteScene } from './scene.js';

/** Less is rounding, metres. */
const ROUNDING_M = 1e-4;

/** Limits that a path breaks: what it runs through, trees that it comes too near, fall, bends too tight. */
export function breaksOf(scene: RouteScene, points: readonly Point[], fall: FallResult | null): RouteBreak[] {
  const breaks: RouteBreak[] = [];
  const discs = noDigDiscs(scene).map((disc) => ({ ...disc, radiusM: disc.radiusM - ROUNDING_M }));
  const keepouts = scene.obstacles.keepouts.map((keepout) => ({
    ...keepout,
    clearanceM: Math.max(0, keepout.clearanceM - ROUNDING_M),
  }));
  let atM = 0;
  for (let i = 0; i + 1 < points.length; i++) {
    const [a, b] = [points[i], points[i + 1]] as [Point, Point];
    for (const disc of discs) {
      if (entersDisc(disc, ...a, ...b)) breaks.push({ kind: 'no-dig', tree: disc.id, atM });
    }
    for (const keepout of keepouts) {
      if (!enters(keepout, ...a, ...b)) continue;
      if (keepout.of === 'outside') breaks.push({ kind: 'outside-lot', atM });
      else breaks.push({ kind: 'obstacle', id: keepout.id, atM });
    }
    const c = points[i + 2];
    atM += Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (scene.bends.kind !== 'swept' || c === undefined) continue;
    const lack = roomLacking(scene.bends.radiusM, a, b, c, i === 0, i + 3 === points.length);
    if (lack > ROUNDING_M) breaks.push({ kind: 'tight-bend', atM });
  }
  if (fall?.kind === 'impossible') {
    breaks.push({ kind: 'fall', shortfallM: fall.shortfallM, atM: fall.atM });
  }
  return breaks;
}
