import type { Chance } from '../model/result.js';
import { judgement } from '../tables/judgement.js';
import type { Draw } from './draws.js';
import { chanceOf } from './interval.js';
import { addLoad, Load, type LoadInputs } from './load.js';
import type { LineScale } from './rate-scale.js';
import { VIGOUR_CLASSES, WAY_CRUSH, WAY_JOINT, WAY_SLOT, WAYS } from './ways.js';

/**
 * Deviates at which reach and clock are worked out in full; between them the logarithm of the load is taken
 * as straight (held against full recomputation in a test).
 */
const REACH_Z = [-2.5, -1.25, 0, 1.25, 2.5];
const CLOCK_Z = [-1.75, 0, 1.75];
const SPLITS = 3 * VIGOUR_CLASSES;
/** Stands for the logarithm of nothing. */
const LOG_NONE = -700;

/** Logarithms of the split load of one segment at each knot of reach and clock. */
export interface SpreadSurface {
  /** `[(reach knot * clock knots + clock knot) * splits + way * 5 + vigour]`. */
  readonly log: Float64Array;
  /** Splits that hold anything. */
  readonly used: readonly number[];
  readonly clockKnots: number;
}

/** The split load of a segment over the knots. `steady`: all roots are back, so the clock changes nothing. */
export function surfaceOf(inputs: LoadInputs, from: number, to: number, steady: boolean): SpreadSurface {
  const clockZ = steady ? [0] : CLOCK_Z;
  const log = new Float64Array(REACH_Z.length * clockZ.length * SPLITS);
  const used = new Set<number>();
  const load = new Load(inputs.horizon.weights.length, inputs.near.count);
  REACH_Z.forEach((rz, r) => {
    clockZ.forEach((cz, c) => {
      load.clear(inputs.near.count);
      const reachScale = Math.exp(judgement.reach.logSd * rz);
      const clockScale = Math.exp(judgement.regrowthMetresPerYear.logSd * cz);
      addLoad({ ...inputs, reachScale, clockScale }, from, to, load);
      load.byWayAndVigour.forEach((value, split) => {
        if (value > 0) used.add(split);
        log[(r * clockZ.length + c) * SPLITS + split] = value > 0 ? Math.log(value) : LOG_NONE;
      });
    });
  });
  return { log, used: [...used].sort((a, b) => a - b), clockKnots: clockZ.length };
}

/** Knot below a deviate and how far it lies towards the next, within the table's ends. */
function between(knots: readonly number[], z: number): [knot: number, share: number] {
  if (knots.length === 1) return [0, 0];
  const first = knots[0] as number;
  const step = (knots[1] as number) - first;
  const at = Math.min(knots.length - 1, Math.max(0, (z - first) / step));
  const knot = Math.min(knots.length - 2, Math.floor(at));
  return [knot, at - knot];
}

/** Logarithm of what a draw makes of the rate of one way of harm. */
function lnRateOf(draw: Draw, way: number): number {
  if (way === WAY_JOINT) return Math.log(draw.entry * draw.joints);
  if (way === WAY_SLOT) return Math.log(draw.entry * draw.slots);
  return Math.log(draw.crush);
}

/** What every segment needs of the draws, worked out once. */
export interface DrawTable {
  readonly count: number;
  /** `[draw * ways + way]` and `[draw * classes + class]`: logarithms of the factors on rates and vigour. */
  readonly lnRate: Float64Array;
  readonly lnVigour: Float64Array;
  /** Knot below the draw's reach and clock, and how far it lies towards the next. */
  readonly reachKnot: Uint8Array;
  readonly reachShare: Float64Array;
  readonly clockKnot: Uint8Array;
  readonly clockShare: Float64Array;
}

export function drawTableOf(draws: readonly Draw[]): DrawTable {
  const count = draws.length;
  const table = {
    count,
    lnRate: new Float64Array(count * WAYS),
    lnVigour: new Float64Array(count * VIGOUR_CLASSES),
    reachKnot: new Uint8Array(count),
    reachShare: new Float64Array(count),
    clockKnot: new Uint8Array(count),
    clockShare: new Float64Array(count),
  };
  draws.forEach((draw, d) => {
    for (let way = 0; way < WAYS; way++) table.lnRate[d * WAYS + way] = lnRateOf(draw, way);
    table.lnVigour.set(draw.vigour.map(Math.log), d * VIGOUR_CLASSES);
    [table.reachKnot[d], table.reachShare[d]] = between(REACH_Z, draw.reachZ);
    [table.clockKnot[d], table.clockShare[d]] = between(CLOCK_Z, draw.clockZ);
  });
  return table;
}

/**
 * Expected entries of a segment under each draw.
 * @param extra factor of the segment's own missing inputs, one a draw.
 * @param scale what findings have left of the spread of the rates.
 */
export function expectedUnder(
  surface: SpreadSurface,
  table: DrawTable,
  extra: Float64Array,
  scale: LineScale,
): Float64Array {
  const { log, used, clockKnots } = surface;
  const steady = clockKnots === 1;
  const nextReach = clockKnots * SPLITS;
  const nextClock = steady ? 0 : SPLITS;
  const expected = new Float64Array(table.count);
  for (let d = 0; d < table.count; d++) {
    const rs = table.reachShare[d] as number;
    const cs = steady ? 0 : (table.clockShare[d] as number);
    const clockKnot = steady ? 0 : (table.clockKnot[d] as number);
    const base = ((table.reachKnot[d] as number) * clockKnots + clockKnot) * SPLITS;
    let sum = 0;
    for (const split of used) {
      const at = base + split;
      const near = (log[at] as number) * (1 - cs) + (log[at + nextClock] as number) * cs;
      const up = at + nextReach;
      const far = (log[up] as number) * (1 - cs) + (log[up + nextClock] as number) * cs;
      const way = (split / VIGOUR_CLASSES) | 0;
      const narrow = way === WAY_CRUSH ? scale.crush.narrow : scale.entry.narrow;
      const ln =
        narrow * (table.lnRate[d * WAYS + way] as number) +
        (table.lnVigour[d * VIGOUR_CLASSES + (split % VIGOUR_CLASSES)] as number);
      sum += Math.exp(ln + near * (1 - rs) + far * rs);
    }
    expected[d] = sum * (extra[d] as number);
  }
  return expected;
}

/** 10 % and 90 % points of the draws as a chance about the likely one, which stays between them. */
export function sampledChance(expected: Float64Array, likely: number): Chance {
  const sorted = expected.slice().sort();
  const at = (q: number): number => sorted[Math.round(q * (sorted.length - 1))] as number;
  return {
    low: Math.min(chanceOf(at(0.1)), chanceOf(likely)),
    likely: chanceOf(likely),
    high: Math.max(chanceOf(at(0.9)), chanceOf(likely)),
  };
}
