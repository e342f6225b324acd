import type { Chance } from '../model/result.js';
import { judgement } from '../tables/judgement.js';
import type { Draw } from './draws.js';
import { chanceOf } from './interval.js';
import { addLoad, Load, type LoadInputs } from './load.js';
import type { LineScale } from './rate-scale.js';
import { VIGOUR_CLASSES, WAY_CRUSH, WAY_JOINT, WAY_SLOT, WAYS } from './ways.js';

/**
 * Deviates at which reach and clock are worked out in full, beside the middle. The logarithm of the load is taken
 * as a parabola in each of them and as a sum of the two (held against full recomputation in a test).
 */
const REACH_Z = 2;
const CLOCK_Z = 1.75;
const SPLITS = WAYS * VIGOUR_CLASSES;

/** ln load of one segment, split by way and vigour, over the deviates of reach and clock. */
export interface SpreadSurface {
  /** Splits that hold anything. */
  readonly used: readonly number[];
  /** For each of those: value in the middle, then slope and bend in reach and in clock. */
  readonly middle: Float64Array;
  readonly reach: Float64Array;
  readonly clock: Float64Array;
}

/** Split load of a segment with every reach and clock scaled by a deviate. */
function loadAt(inputs: LoadInputs, from: number, to: number, reachZ: number, clockZ: number): Float64Array {
  const load = new Load(inputs.horizon.weights.length, inputs.near.count);
  const reachScale = Math.exp(judgement.reach.logSd * reachZ);
  const clockScale = Math.exp(judgement.regrowthMetresPerYear.logSd * clockZ);
  addLoad({ ...inputs, reachScale, clockScale }, from, to, load);
  return load.byWayAndVigour;
}

/** Slope and bend of the parabola through values at -h, 0 and h. */
function parabola(low: number, middle: number, high: number, h: number): [slope: number, bend: number] {
  return [(high - low) / (2 * h), (high - 2 * middle + low) / (2 * h * h)];
}

/** The split load of a segment over the knots. `steady`: all roots are back, so the clock changes nothing. */
export function surfaceOf(inputs: LoadInputs, from: number, to: number, steady: boolean): SpreadSurface {
  const at = (rz: number, cz: number): Float64Array => loadAt(inputs, from, to, rz, cz);
  const [centre, near, far] = [at(0, 0), at(-REACH_Z, 0), at(REACH_Z, 0)];
  const [fast, slow] = steady ? [centre, centre] : [at(0, -CLOCK_Z), at(0, CLOCK_Z)];
  const used: number[] = [];
  for (let split = 0; split < SPLITS; split++) {
    if ([centre, near, far, fast, slow].every((load) => (load[split] as number) > 0)) used.push(split);
  }
  const surface = {
    used,
    middle: new Float64Array(used.length),
    reach: new Float64Array(2 * used.length),
    clock: new Float64Array(2 * used.length),
  };
  used.forEach((split, u) => {
    const ln = (load: Float64Array): number => Math.log(load[split] as number);
    surface.middle[u] = ln(centre);
    surface.reach.set(parabola(ln(near), ln(centre), ln(far), REACH_Z), 2 * u);
    surface.clock.set(parabola(ln(fast), ln(centre), ln(slow), CLOCK_Z), 2 * u);
  });
  return surface;
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
  readonly reachZ: Float64Array;
  readonly clockZ: Float64Array;
}

export function drawTableOf(draws: readonly Draw[]): DrawTable {
  const count = draws.length;
  const table = {
    count,
    lnRate: new Float64Array(count * WAYS),
    lnVigour: new Float64Array(count * VIGOUR_CLASSES),
    reachZ: Float64Array.from(draws, (draw) => draw.reachZ),
    clockZ: Float64Array.from(draws, (draw) => draw.clockZ),
  };
  draws.forEach((draw, d) => {
    for (let way = 0; way < WAYS; way++) table.lnRate[d * WAYS + way] = lnRateOf(draw, way);
    table.lnVigour.set(draw.vigour.map(Math.log), d * VIGOUR_CLASSES);
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
  const { used, middle, reach, clock } = surface;
  const expected = new Float64Array(table.count);
  for (let d = 0; d < table.count; d++) {
    const rz = table.reachZ[d] as number;
    const cz = table.clockZ[d] as number;
    let sum = 0;
    for (let u = 0; u < used.length; u++) {
      const split = used[u] as number;
      const way = (split / VIGOUR_CLASSES) | 0;
      const narrow = way === WAY_CRUSH ? scale.crush.narrow : scale.entry.narrow;
      const ln =
        (middle[u] as number) +
        rz * ((reach[2 * u] as number) + rz * (reach[2 * u + 1] as number)) +
        cz * ((clock[2 * u] as number) + cz * (clock[2 * u + 1] as number)) +
        narrow * (table.lnRate[d * WAYS + way] as number) +
        (table.lnVigour[d * VIGOUR_CLASSES + (split % VIGOUR_CLASSES)] as number);
      sum += Math.exp(ln);
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
