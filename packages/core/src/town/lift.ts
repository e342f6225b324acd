import type { ScoredSite } from '../risk/scored-site.js';

/** How the trouble of a town is spread over its metres, worst first. */
export interface TownLift {
  /** Points from (0, 0) to (1, 1): share of metres, share of expected entries. */
  readonly metres: readonly number[];
  readonly expected: readonly number[];
  /** Metres, and their share, that hold half of what is expected. */
  readonly halfM: number;
  readonly halfShare: number;
}

const POINTS = 200;
/** Stretches are put into so many steps of entries a metre: a step is then 0.05 % wide, far below any use. */
const STEPS = 65_536;

/** Metres and entries by steps of entries a metre, worst first; stretches without any come last. */
function stepsOf({
  count,
  lengthM,
  expected,
}: ScoredSite['columns']): [metres: Float64Array, entries: Float64Array] {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (let row = 0; row < count; row++) {
    const perM = (expected[row] as number) / (lengthM[row] as number);
    if (perM > 0) least = Math.min(least, perM);
    most = Math.max(most, perM);
  }
  const metres = new Float64Array(STEPS + 1);
  const entries = new Float64Array(STEPS + 1);
  const width = Math.log(most / least) / (STEPS - 1) || 1;
  for (let row = 0; row < count; row++) {
    const perM = (expected[row] as number) / (lengthM[row] as number);
    const step = perM > 0 ? Math.round(Math.log(most / perM) / width) : STEPS;
    metres[step] = (metres[step] as number) + (lengthM[row] as number);
    entries[step] = (entries[step] as number) + (expected[row] as number);
  }
  return [metres, entries];
}

/** Metres by entries a metre, worst first. */
export function townLift({ columns }: ScoredSite): TownLift {
  const [stepM, stepEntries] = stepsOf(columns);
  const allM = stepM.reduce((sum, m) => sum + m, 0);
  const all = stepEntries.reduce((sum, e) => sum + e, 0);
  const metres = [0];
  const share = [0];
  let m = 0;
  let e = 0;
  let halfM: number | null = null;
  stepM.forEach((length, step) => {
    if (length === 0) return;
    const more = stepEntries[step] as number;
    if (halfM === null && e + more >= all / 2) halfM = m + (more > 0 ? (length * (all / 2 - e)) / more : 0);
    m += length;
    e += more;
    if (m >= (metres.length * allM) / POINTS || step === STEPS) {
      metres.push(m / allM);
      share.push(all > 0 ? e / all : 0);
    }
  });
  if ((metres.at(-1) as number) < 1) {
    metres.push(1);
    share.push(1);
  }
  const half = all > 0 ? (halfM ?? allM) : allM;
  return { metres, expected: share, halfM: half, halfShare: allM > 0 ? half / allM : 0 };
}
