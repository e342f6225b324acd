/** A stretch with its length, whether roots were found in it, and how it was ranked. */
export interface Ranked {
  readonly lengthM: number;
  readonly found: boolean;
  /** Higher is looked at first. */
  readonly score: number;
}

/** Share of found roots against share of metres looked at, worst first: points from (0, 0) to (1, 1). */
export interface Lift {
  readonly metres: readonly number[];
  readonly found: readonly number[];
  /** Area under the curve: 0.5 is no better than chance. */
  readonly area: number;
}

/** Stretches of one score are taken together, so that their order cannot flatter a method. */
function tiers(items: readonly Ranked[]): { metres: number; found: number }[] {
  const sorted = [...items].sort((a, b) => b.score - a.score);
  const steps: { score: number; metres: number; found: number }[] = [];
  for (const { score, lengthM, found } of sorted) {
    const last = steps[steps.length - 1];
    if (last && last.score === score) {
      last.metres += lengthM;
      last.found += found ? 1 : 0;
    } else steps.push({ score, metres: lengthM, found: found ? 1 : 0 });
  }
  return steps;
}

/** @returns null where nothing was found, or everything has no length: then there is no curve. */
export function liftOf(items: readonly Ranked[]): Lift | null {
  const metresAll = items.reduce((sum, i) => sum + i.lengthM, 0);
  const foundAll = items.filter((i) => i.found).length;
  if (foundAll === 0 || metresAll === 0) return null;
  const metres = [0];
  const found = [0];
  let area = 0;
  for (const step of tiers(items)) {
    const x0 = metres[metres.length - 1] as number;
    const y0 = found[found.length - 1] as number;
    const x1 = x0 + step.metres / metresAll;
    const y1 = y0 + step.found / foundAll;
    area += ((x1 - x0) * (y0 + y1)) / 2;
    metres.push(x1);
    found.push(y1);
  }
  return { metres, found, area };
}

/** Share of found roots within the worst share of metres, straight between the points. */
export function foundWithin(lift: Lift, share: number): number {
  const i = lift.metres.findIndex((m) => m >= share);
  if (i <= 0) return i === 0 ? 0 : 1;
  const [x0, x1] = [lift.metres[i - 1] as number, lift.metres[i] as number];
  const [y0, y1] = [lift.found[i - 1] as number, lift.found[i] as number];
  // the first point that reaches the share lies beyond the one before
  return y0 + ((share - x0) / (x1 - x0)) * (y1 - y0);
}
