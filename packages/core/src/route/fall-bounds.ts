import type { FallLimits } from '../model/fall.js';
import { fallLimits } from '../tables/fall-limits.js';
import { type Height, heightAt, highestLine } from './fall-envelope.js';

/** What an invert may not rise above and not sink below, along a line from its upper end. */
export interface FallBounds {
  readonly ground: readonly Height[];
  readonly over: readonly Height[];
  readonly under: readonly Height[];
  readonly lengthM: number;
  readonly minFall: number;
  readonly maxFall: number;
}

/** @throws RangeError where the limits make no sense. */
export function checkLimits({ minFall, maxFall, minCoverM, maxDepthM, pipeHeightM }: FallLimits): void {
  const given = { minFall, minCoverM, maxDepthM, pipeHeightM };
  for (const [name, value] of Object.entries(given)) {
    if (!(value >= 0)) throw new RangeError(`${name} must be 0 or more, got ${value}`);
  }
  if (maxFall !== undefined && !(maxFall >= minFall)) {
    throw new RangeError(`maxFall must be at least minFall (${minFall}), got ${maxFall}`);
  }
}

/** Highest inverts that cover allows; near the outlet, where none is asked for, the ground itself. */
function coverBounds(ground: readonly Height[], lengthM: number, limits: FallLimits): Height[] {
  const below = limits.minCoverM + limits.pipeHeightM;
  const bareFrom = Math.max(0, lengthM - (limits.bareBeforeOutletM ?? 0));
  const covered = ground.filter(({ s }) => s < bareFrom).map(({ s, z }) => ({ s, z: z - below }));
  const bare = ground.filter(({ s }) => s > bareFrom);
  const z = heightAt(ground, bareFrom);
  const turn = [{ s: bareFrom, z: z - below }];
  return [...covered, ...turn, ...(bareFrom < lengthM ? [{ s: bareFrom, z }, ...bare] : [])];
}

/** Bounds of a line over known ground. */
export function fallBounds(ground: readonly Height[], limits: FallLimits): FallBounds {
  const lengthM = (ground[ground.length - 1] as Height).s;
  const { source, outlet } = limits;
  const at = (s: number, z: number | undefined): Height[] => (z === undefined ? [] : [{ s, z }]);
  const deepest = ground.map(({ s, z }) => ({ s, z: z - limits.maxDepthM }));
  return {
    ground,
    over: [...at(0, source?.mostM), ...coverBounds(ground, lengthM, limits), ...at(lengthM, outlet?.mostM)],
    under: [...at(0, source?.leastM), ...deepest, ...at(lengthM, outlet?.leastM)],
    lengthM,
    minFall: limits.minFall,
    maxFall: limits.maxFall ?? Math.max(limits.minFall, fallLimits.maxFall.value),
  };
}

/** Where the highest line that falls lies furthest below what is allowed. */
export interface Shortfall {
  /** 0 or less where it is nowhere too low. */
  readonly byM: number;
  readonly atM: number;
  /** Number of the lower bound that is missed. */
  readonly bound: number;
}

export function shortfallOf({ under, over, minFall, maxFall }: FallBounds): Shortfall {
  const line = highestLine(over, minFall, maxFall);
  let worst: Shortfall = { byM: Number.NEGATIVE_INFINITY, atM: 0, bound: 0 };
  const look = (s: number, low: number, bound: number): void => {
    const byM = low - heightAt(line, s);
    if (byM > worst.byM) worst = { byM, atM: s, bound };
  };
  under.forEach(({ s, z }, i) => {
    look(s, z, i);
    const next = under[i + 1];
    if (next === undefined || next.s <= s) return;
    for (const corner of line) {
      if (corner.s <= s || corner.s >= next.s) continue;
      look(corner.s, z + ((corner.s - s) / (next.s - s)) * (next.z - z), i);
    }
  });
  return worst;
}
