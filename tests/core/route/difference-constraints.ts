import type { FallLimits } from '../../../packages/core/src/model/fall.js';

interface Constraint {
  readonly from: number;
  readonly to: number;
  /** Height of `to` at most that of `from` plus this. */
  readonly plus: number;
}

/** Height of straight ground between stations. */
function groundAt(stationM: readonly number[], groundM: readonly number[], s: number): number {
  const i = Math.max(
    1,
    stationM.findIndex((each) => each >= s),
  );
  const [a, b] = [stationM[i - 1] as number, stationM[i] as number];
  const [za, zb] = [groundM[i - 1] as number, groundM[i] as number];
  return za + ((s - a) / (b - a)) * (zb - za);
}

/**
 * The textbook way to settle a system of difference constraints: one node for each height, one edge for each rule,
 * shortest paths by Bellman and Ford; a negative ring means that no heights exist (Cormen and others, Introduction to
 * Algorithms, section 24.4). Every station of the ground is a node, and four between each two, so that it is exact for
 * straight ground. Upper rules first: the heights are then the highest there are; how far the worst lower rule is
 * missed is what all lower rules have to give.
 */
export function byDifferenceConstraints(
  { stationM: given, groundM }: { readonly stationM: readonly number[]; readonly groundM: readonly number[] },
  limits: FallLimits,
): { readonly stationM: number[]; readonly highest: number[]; readonly missedBy: number } {
  const lengthM = given[given.length - 1] as number;
  const bareFrom = Math.max(0, lengthM - (limits.bareBeforeOutletM ?? 0));
  const stops = new Set<number>([bareFrom]);
  given.slice(1).forEach((b, i) => {
    const a = given[i] as number;
    for (let k = 0; k <= 4; k++) stops.add(k === 4 ? b : a + ((b - a) * k) / 4);
  });
  const stationM = [...stops].sort((a, b) => a - b);
  const last = stationM.length - 1;
  const constraints: Constraint[] = [];
  const start = stationM.length;
  stationM.forEach((s, i) => {
    const ground = groundAt(given, groundM, s);
    const below = s > bareFrom ? 0 : limits.minCoverM + limits.pipeHeightM;
    constraints.push({ from: start, to: i, plus: ground - below });
    if (i === last) return;
    const run = (stationM[i + 1] as number) - s;
    constraints.push({ from: i, to: i + 1, plus: -limits.minFall * run });
    constraints.push({ from: i + 1, to: i, plus: (limits.maxFall ?? 1) * run });
  });
  if (limits.source?.mostM !== undefined) constraints.push({ from: start, to: 0, plus: limits.source.mostM });
  if (limits.outlet?.mostM !== undefined)
    constraints.push({ from: start, to: last, plus: limits.outlet.mostM });
  const highest = new Array<number>(stationM.length + 1).fill(Number.POSITIVE_INFINITY);
  highest[start] = 0;
  for (let changed = true; changed; ) {
    changed = false;
    for (const { from, to, plus } of constraints) {
      const z = (highest[from] as number) + plus;
      if (z < (highest[to] as number) - 1e-12) {
        highest[to] = z;
        changed = true;
      }
    }
  }
  const lower = stationM.map((s) => groundAt(given, groundM, s) - limits.maxDepthM);
  lower[0] = Math.max(lower[0] as number, limits.source?.leastM ?? Number.NEGATIVE_INFINITY);
  lower[last] = Math.max(lower[last] as number, limits.outlet?.leastM ?? Number.NEGATIVE_INFINITY);
  const missedBy = Math.max(...lower.map((z, i) => z - (highest[i] as number)));
  return { stationM, highest: highest.slice(0, -1), missedBy };
}
